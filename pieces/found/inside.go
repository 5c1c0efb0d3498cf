package found

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// nest finds for every outline the smallest that holds it.
func nest(all []closedLine) {
	order := make([]int, len(all))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(i, j int) int { return cmp.Compare(all[i].area, all[j].area) })
	for k, i := range order {
		for _, j := range order[k+1:] {
			if all[j].area > all[i].area && all[j].holds(all[i].ring) {
				all[i].outer = j
				break
			}
		}
	}
}

// addPieces makes a piece of every outline that lies in no other, and tells which.
func (d *Drawing) addPieces(all []closedLine) []int {
	at := make([]int, len(all))
	small := 0
	for i, c := range all {
		at[i] = -1
		switch {
		case c.outer >= 0:
		case c.area < leastArea:
			small++
		default:
			at[i] = len(d.Pieces)
			d.Pieces = append(d.Pieces, Piece{Name: c.name, Outline: steps(c.path)})
		}
	}
	d.note(SmallOutline, small, 0)
	return at
}

func steps(path pieces.Path) []Step {
	out := make([]Step, len(path))
	for i, c := range path {
		out[i] = Step{Curve: c}
	}
	return out
}

// smallestHolding is the number of the piece that holds points; -1 for none.
func smallestHolding(all []closedLine, at []int, points []orb.Point) int {
	best := -1
	for i, c := range all {
		if at[i] >= 0 && (best < 0 || c.area < all[best].area) && c.holds(points) {
			best = i
		}
	}
	if best < 0 {
		return -1
	}
	return at[best]
}

const (
	// widestHole, mm, of a circle that is a drill hole; widestAllowance of a line
	// inside that is the sew line [source.OwnChoice].
	widestHole      = 12.0
	widestAllowance = 60.0 // [source.OwnChoice]
)

// addInner gives each piece the closed lines inside it.
func (d *Drawing) addInner(all []closedLine, at []int) {
	for i, c := range all {
		top := i
		for all[top].outer >= 0 {
			top = all[top].outer
		}
		if top == i || at[top] < 0 {
			continue
		}
		p := &d.Pieces[at[top]]
		_, round := c.path[0].(pieces.Arc)
		switch {
		case round && len(c.path) <= 2 && c.box.Max[0]-c.box.Min[0] <= widestHole:
			p.Inner = append(p.Inner, Inner{Kind: DrillHole, Name: c.name, At: c.box.Center()})
		case c.outer == top && p.Sew == nil && isInset(all[top], c):
			p.Sew, p.Line = c.path, CuttingLine
		default:
			p.Inner = append(p.Inner, Inner{Kind: Cutout, Name: c.name, Path: c.path})
		}
	}
}

// isInset says that a line runs along inside an outline all round, as a sew line does.
func isInset(outer, inner closedLine) bool {
	for k := range 2 {
		low, high := inner.box.Min[k]-outer.box.Min[k], outer.box.Max[k]-inner.box.Max[k]
		if low > widestAllowance || high > widestAllowance {
			return false
		}
	}
	for i := 0; i < len(outer.ring); i += max(1, len(outer.ring)/200) {
		if distanceTo(inner.ring, outer.ring[i]) > 2*widestAllowance {
			return false
		}
	}
	return inner.area > outer.area/2
}

// grainNames are what a line is called that is the grainline.
var grainNames = []string{"grain", "grainline", "grain line"}

func (d *Drawing) addOpen(all []closedLine, at []int, open []Stroke) {
	lost := 0
	for _, s := range open {
		first, last := s.Path[0], s.Path[len(s.Path)-1]
		i := smallestHolding(all, at, []orb.Point{s.Path[len(s.Path)/2].At(0.5), first.At(0.25), last.At(0.75)})
		if i < 0 {
			lost++
			continue
		}
		p := &d.Pieces[i]
		if slices.Contains(grainNames, strings.ToLower(s.Name)) || slices.Contains(grainNames, strings.ToLower(s.Group)) {
			if p.Grain == nil || geometry.Distance(first.Start(), last.End()) > geometry.Distance(p.Grain.From, p.Grain.To) {
				p.Grain = &Straight{From: s.Path.Start(), To: s.Path.End()}
			}
			continue
		}
		if sew, side, ok := openSew(all[slices.Index(at, i)], s.Path); ok && p.Sew == nil {
			p.Sew, p.Line, p.OpenSide = sew, CuttingLine, &side
			continue
		}
		p.Inner = append(p.Inner, Inner{Kind: InternalLine, Name: s.Name, Path: s.Path})
	}
	d.note(OpenLine, lost, 0)
}

// openSew is a line that begins and ends on one straight side of an outline and runs along
// inside all the rest of it, as the sew line of a half does: closed along that side.
func openSew(outer closedLine, path pieces.Path) (sew pieces.Path, side Straight, ok bool) {
	const on = 0.5 // mm that an end may lie off the side [source.OwnChoice]
	from, to := path.Start(), path.End()
	for _, c := range outer.path {
		line, straight := c.(pieces.Line)
		if !straight || geometry.SegmentDistance(from, line.From, line.To) > on ||
			geometry.SegmentDistance(to, line.From, line.To) > on {
			continue
		}
		sew = append(slices.Clone(path), pieces.Line{From: to, To: from})
		closed := closedLine{path: sew}
		closed.measure()
		return sew, Straight{From: line.From, To: line.To}, isInset(outer, closed)
	}
	return nil, side, false
}

func (d *Drawing) addPoints(all []closedLine, at []int, points []Spot) {
	for _, spot := range points {
		if i := smallestHolding(all, at, []orb.Point{spot.At}); i >= 0 {
			d.Pieces[i].Inner = append(d.Pieces[i].Inner, Inner{Kind: DrillHole, At: spot.At})
		}
	}
}

// addTexts gives each piece the words in it; the largest name it, where nothing else
// does.
func (d *Drawing) addTexts(all []closedLine, at []int, texts []Text) {
	named := make([]float64, len(d.Pieces))
	for _, text := range texts {
		i := smallestHolding(all, at, []orb.Point{text.At})
		if i < 0 {
			continue
		}
		p := &d.Pieces[i]
		p.Texts = append(p.Texts, text)
		if p.Name == "" || named[i] > 0 && text.Height > named[i] {
			p.Name, named[i] = strings.TrimSpace(text.Words), math.Max(text.Height, same)
		}
	}
}
