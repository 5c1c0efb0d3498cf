package tidy

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/linework"
)

// The strokes of dashed lines are often drawn one by one [source.OwnChoice].
const (
	longestDash = 25.0 // mm
	widestGap   = 12.0 // mm
	fewest      = 3    // strokes of a line
	shortest    = 15.0 // mm, of a line of strokes
)

// end of a stroke: where it is, and the way out of it.
type end struct {
	stroke int
	last   bool // the end of the stroke, not its start
	at     orb.Point
	out    orb.Point
}

// dashes joins strokes that are drawn alike and go on from each other, and counts the
// lines that come of it. All else stays as it is.
func dashes(lines []linework.Line) (out []linework.Line, joined int) {
	var order []kind
	strokes := map[kind][]linework.Line{}
	for _, line := range lines {
		if line.Closed || line.Pen.Colour == "" || line.Path.Length() > longestDash {
			out = append(out, line)
			continue
		}
		k := kindOf(line)
		if strokes[k] == nil {
			order = append(order, k)
		}
		strokes[k] = append(strokes[k], line)
	}
	for _, k := range order {
		made, rest := joinedStrokes(strokes[k])
		out = append(append(out, made...), rest...)
		joined += len(made)
	}
	return out, joined
}

// joinedStrokes of one kind: the lines that they make, and those that make none.
func joinedStrokes(all []linework.Line) (made, rest []linework.Line) {
	next := links(all)
	seen := make([]bool, len(all))
	walk := func(from end) {
		var chain []end // the ends at which strokes are entered
		for e := from; ; {
			seen[e.stroke] = true
			chain = append(chain, e)
			on, ok := next[key(other(all, e))]
			if !ok || seen[on.stroke] {
				break
			}
			e = on
		}
		line, ok := strung(all, chain, next)
		if !ok {
			for _, e := range chain {
				rest = append(rest, all[e.stroke])
			}
			return
		}
		made = append(made, line)
	}
	for i := range all { // chains that end, from their ends
		for _, e := range endsOf(all, i) {
			if _, goesOn := next[key(e)]; !goesOn && !seen[i] {
				walk(e)
			}
		}
	}
	for i := range all { // rings
		if !seen[i] {
			walk(endsOf(all, i)[0])
		}
	}
	return made, rest
}

func key(e end) [2]int {
	if e.last {
		return [2]int{e.stroke, 1}
	}
	return [2]int{e.stroke, 0}
}

func endsOf(all []linework.Line, i int) [2]end {
	path := all[i].Path
	first, last := path[0], path[len(path)-1]
	return [2]end{{i, false, first.Start(), geometry.Times(first.Tangent(0), -1)}, {i, true, last.End(), last.Tangent(1)}}
}

// other end of the stroke.
func other(all []linework.Line, e end) end {
	ends := endsOf(all, e.stroke)
	if e.last {
		return ends[0]
	}
	return ends[1]
}

// links from the end of a stroke to that of the next, both ways: the nearest ones
// first, each end once. Gaps that are much wider than most are none.
func links(all []linework.Line) map[[2]int]end {
	var ends []end
	for i := range all {
		e := endsOf(all, i)
		ends = append(ends, e[0], e[1])
	}
	type pair struct {
		a, b end
		cost float64
		gap  float64
	}
	var pairs []pair
	near := newGrid(widestGap)
	for i, e := range ends {
		for _, j := range near.about(e.at) {
			if o := ends[j]; o.stroke != e.stroke {
				if cost, ok := cost(e, o); ok {
					pairs = append(pairs, pair{e, o, cost, geometry.Distance(e.at, o.at)})
				}
			}
		}
		near.add(e.at, i)
	}
	slices.SortStableFunc(pairs, func(a, b pair) int { return cmp.Compare(a.cost, b.cost) })
	out := map[[2]int]end{}
	var gaps []float64
	var taken []pair
	for _, p := range pairs {
		_, a := out[key(p.a)]
		_, b := out[key(p.b)]
		if a || b {
			continue
		}
		out[key(p.a)], out[key(p.b)] = p.b, p.a
		gaps, taken = append(gaps, p.gap), append(taken, p)
	}
	if len(gaps) == 0 {
		return out
	}
	slices.Sort(gaps)
	widest := 2.2*gaps[len(gaps)/2] + 0.5
	for _, p := range taken {
		if p.gap > widest {
			delete(out, key(p.a))
			delete(out, key(p.b))
		}
	}
	return out
}

// cost of going on from one end to another: how wide the gap is, and how much the line
// bends in it.
func cost(a, b end) (float64, bool) {
	v := geometry.Sub(b.at, a.at)
	gap := geometry.Norm(v)
	bend := 1 + geometry.Dot(a.out, b.out) // 0 straight on, 1 a right angle, 2 back
	if gap > widestGap {
		return 0, false
	}
	if gap < 0.05 {
		return gap + bend, bend < 1.7
	}
	u := geometry.Times(v, 1/gap)
	ahead, back := geometry.Dot(a.out, u), -geometry.Dot(b.out, u)
	if ahead > 0.9 && back > 0.9 {
		return gap * (1 + 4*(2-ahead-back)), true
	}
	if _, ok := corner(a, b); ok {
		return gap*1.5 + 1, true
	}
	return 0, false
}

// corner in the gap, where both ends lead to it.
func corner(a, b end) (orb.Point, bool) {
	turn := geometry.Cross(a.out, b.out)
	if math.Abs(turn) < 0.2 {
		return orb.Point{}, false
	}
	v := geometry.Sub(b.at, a.at)
	s, t := geometry.Cross(v, b.out)/turn, geometry.Cross(v, a.out)/turn
	if s < -0.05 || t < -0.05 || s > widestGap || t > widestGap {
		return orb.Point{}, false
	}
	return geometry.Add(a.at, geometry.Times(a.out, s)), true
}

// strung strokes make a line, with the gaps filled as the line goes on in them. Not ok
// where they are too few, or too short in all.
func strung(all []linework.Line, chain []end, next map[[2]int]end) (linework.Line, bool) {
	line := all[chain[0].stroke]
	line.Path = nil
	var strokes, gaps []float64
	for i, e := range chain {
		path := all[e.stroke].Path
		if e.last {
			path = path.Reverse()
		}
		if i > 0 {
			leaves := other(all, chain[i-1])
			gaps = append(gaps, geometry.Distance(leaves.at, e.at))
			line.Path = append(line.Path, bridge(leaves, e)...)
		}
		strokes = append(strokes, path.Length())
		line.Path = append(line.Path, path...)
	}
	if len(chain) < fewest || line.Path.Length() < shortest {
		return line, false
	}
	leaves := other(all, chain[len(chain)-1])
	if on, ok := next[key(leaves)]; ok && on.stroke == chain[0].stroke && on.last == chain[0].last {
		line.Path = append(line.Path, bridge(leaves, chain[0])...)
		line.Closed = true
	}
	line.Pen.Dashes = pattern(strokes, gaps)
	return line, true
}

// bridge over a gap: straight, smooth, or round the corner that both ends lead to.
func bridge(a, b end) pieces.Path {
	gap := geometry.Distance(a.at, b.at)
	if gap < 1e-6 {
		return nil
	}
	if at, ok := corner(a, b); ok && geometry.Dot(a.out, b.out) > -0.8 {
		var out pieces.Path
		for _, l := range []pieces.Line{{From: a.at, To: at}, {From: at, To: b.at}} {
			if l.From != l.To {
				out = append(out, l)
			}
		}
		return out
	}
	if geometry.Dot(a.out, b.out) < -0.9999 || gap < 0.05 {
		return pieces.Path{pieces.Line{From: a.at, To: b.at}}
	}
	return pieces.Path{pieces.Bezier{P0: a.at, P1: geometry.Add(a.at, geometry.Times(a.out, gap/3)),
		P2: geometry.Add(b.at, geometry.Times(b.out, gap/3)), P3: b.at}}
}

// pattern of the strokes: one stroke and gap, or a long and a short stroke; none where
// there are no gaps.
func pattern(strokes, gaps []float64) []float64 {
	slices.Sort(strokes)
	slices.Sort(gaps)
	at := func(all []float64, share float64) float64 {
		return math.Round(all[int(share*float64(len(all)-1))]*2) / 2
	}
	gap := at(gaps, 0.5)
	if gap < 0.2 {
		return nil
	}
	long, short := at(strokes, 0.85), at(strokes, 0.2)
	if long > 2.5*short {
		return []float64{long, gap, short, gap}
	}
	return []float64{at(strokes, 0.5), gap}
}
