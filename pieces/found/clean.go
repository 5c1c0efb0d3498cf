package found

import (
	"fmt"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// Crossing is the refusal of an outline that crosses itself.
type Crossing struct{ At orb.Point }

// Error says where, in mm.
func (c *Crossing) Error() string {
	return fmt.Sprintf("the outline crosses itself at (%.1f, %.1f) mm", c.At[0], c.At[1])
}

// Gap is the refusal of an outline that is not closed.
type Gap struct {
	At   orb.Point
	Size float64
}

// Error says where, in mm.
func (g *Gap) Error() string {
	return fmt.Sprintf("the outline is open at (%.1f, %.1f) mm: its ends are %.2f mm apart", g.At[0], g.At[1], g.Size)
}

// NoArea is the refusal of an outline that encloses nothing.
type NoArea struct{}

// Error says so.
func (*NoArea) Error() string { return "the outline encloses no area" }

// leastArea, mm2, of an outline [source.OwnChoice].
const leastArea = 1

// Clean repairs the outline of a piece, so that it runs counter-clockwise, closed,
// without points on each other, and touches itself nowhere, and tells what was
// repaired. Everything else of the piece stays. The errors are *Gap, *NoArea,
// *Crossing, *TooLong and *TooLarge.
func Clean(p Piece, o Options) (Piece, []Note, error) {
	if p.Whole != nil { // it was checked as such
		return p, nil, nil
	}
	c := cleaning{steps: slices.Clone(p.Outline)}
	if err := bounded(c.steps); err != nil {
		return p, nil, err
	}
	c.dropEmpty()
	if err := c.close(o.gap()); err != nil {
		return p, c.notes, err
	}
	c.dropEmpty()
	c.dropSpikes()
	if err := c.turn(); err != nil {
		return p, c.notes, err
	}
	if err := c.part(); err != nil {
		return p, c.notes, err
	}
	p.Outline = c.steps
	return p, c.notes, nil
}

// cleaning is an outline on its way.
type cleaning struct {
	steps []Step
	notes []Note
}

func (c *cleaning) note(kind NoteKind, count int, size float64, at orb.Point) {
	if count > 0 {
		c.notes = append(c.notes, Note{Kind: kind, Count: count, Size: size, At: at})
	}
}

// dropEmpty leaves out steps without length. A corner that begins one begins the next.
func (c *cleaning) dropEmpty() {
	var out []Step
	var first orb.Point
	dropped, corner := 0, false
	for _, s := range c.steps {
		if isEmpty(s.Curve) {
			if dropped == 0 {
				first = s.Start()
			}
			dropped++
			corner = corner || s.Begins == Corner
			continue
		}
		if corner {
			s.Begins, corner = Corner, false
		}
		out = append(out, s)
	}
	if corner && len(out) > 0 {
		out[0].Begins = Corner
	}
	c.note(RepeatedPoint, dropped, 0, first)
	c.steps = out
}

func (c *cleaning) close(gap float64) error {
	if len(c.steps) == 0 {
		return &NoArea{}
	}
	for i, s := range c.steps {
		next := c.steps[(i+1)%len(c.steps)]
		if d := geometry.Distance(s.End(), next.Start()); !(d <= gap) {
			return &Gap{At: s.End(), Size: d}
		}
	}
	path, count, size := weld(pathOf(c.steps), true)
	at := orb.Point{}
	for i := range c.steps {
		if geometry.Distance(c.steps[i].End(), c.steps[(i+1)%len(c.steps)].Start()) == size {
			at = c.steps[i].End()
		}
	}
	for i := range path {
		c.steps[i].Curve = path[i]
	}
	c.note(ClosedGap, count, size, at)
	return nil
}

// dropSpikes leaves out lines that run back on the one before.
func (c *cleaning) dropSpikes() {
	count, at := 0, orb.Point{}
	for changed := true; changed && len(c.steps) > 2; {
		changed = false
		for i := range c.steps {
			k := (i + 1) % len(c.steps)
			a, isA := c.steps[i].Curve.(pieces.Line)
			b, isB := c.steps[k].Curve.(pieces.Line)
			if !isA || !isB || !runsBack(a, b) {
				continue
			}
			count, at, changed = count+1, a.To, true
			c.steps[i].Curve = pieces.Line{From: a.From, To: b.To}
			c.steps = slices.Delete(c.steps, k, k+1)
			if at := slices.IndexFunc(c.steps, func(s Step) bool { return isEmpty(s.Curve) }); at >= 0 {
				c.steps = slices.Delete(c.steps, at, at+1)
			}
			break
		}
	}
	c.note(SpikeRemoved, count, 0, at)
}

func runsBack(a, b pieces.Line) bool {
	u, v := geometry.Sub(a.To, a.From), geometry.Sub(b.To, b.From)
	return geometry.Dot(u, v) < 0 &&
		math.Min(geometry.LineDistance(b.To, a.From, a.To), geometry.LineDistance(a.From, b.From, b.To)) <= touch
}

// turn makes the outline run counter-clockwise.
func (c *cleaning) turn() error {
	area := geometry.Area(ring(pathOf(c.steps)))
	switch {
	case !(math.Abs(area) >= leastArea):
		points, _ := c.chords()
		if found := intersections(points); len(found) > 0 && found[0].crosses {
			return &Crossing{At: found[0].at}
		}
		return &NoArea{}
	case area > 0:
		return nil
	}
	c.steps = reversed(c.steps)
	c.note(TurnedRound, 1, 0, orb.Point{})
	return nil
}

// reversed steps from the same point; each point keeps its bend.
func reversed(steps []Step) []Step {
	n := len(steps)
	out := make([]Step, n)
	for i := range out {
		out[i] = Step{Curve: steps[n-1-i].Reverse(), Begins: steps[(n-i)%n].Begins}
	}
	return out
}

// parted, mm, is how far apart touching parts are moved [source.OwnChoice].
const parted = 0.01

// part moves points off the parts of the outline that they touch.
func (c *cleaning) part() error {
	const rounds = 8 // [source.OwnChoice]
	count, first := 0, orb.Point{}
	for range rounds {
		points, of := c.chords()
		found := intersections(points)
		if len(found) == 0 {
			c.note(TouchParted, count, parted, first)
			return nil
		}
		if found[0].crosses {
			return &Crossing{At: found[0].at}
		}
		if count == 0 {
			first = found[0].at
		}
		places := map[orb.Point]bool{} // a corner touches with both of its segments
		for _, m := range found {
			places[m.at] = true
		}
		count += len(places)
		if !c.partAll(points, of, found) {
			return &Crossing{At: found[0].at}
		}
	}
	points, _ := c.chords()
	return &Crossing{At: append(intersections(points), intersection{at: first})[0].at}
}

// chords of the outline, and for each of its points the step that begins there, or -1
// of a point within one.
func (c *cleaning) chords() (orb.Ring, []int) {
	var points orb.Ring
	var of []int
	for i, s := range c.steps {
		line := s.Flatten(Flattening / 2)
		for k, p := range line[:len(line)-1] {
			points = append(points, p)
			if k == 0 {
				of = append(of, i)
			} else {
				of = append(of, -1)
			}
		}
	}
	return append(points, points[0]), append(of, 0)
}

// partAll moves, of each touching, the point that touches towards its neighbours.
func (c *cleaning) partAll(points orb.Ring, of []int, found []intersection) bool {
	n := len(points) - 1
	done := map[int]bool{}
	for _, m := range found {
		for _, k := range []int{m.a, (m.a + 1) % n, m.b, (m.b + 1) % n} {
			if of[k] < 0 || geometry.Distance(points[k], m.at) > touch {
				continue
			}
			if done[k] {
				break
			}
			before, after := points[(k+n-1)%n], points[(k+1)%n]
			u := geometry.Add(geometry.Unit(geometry.Sub(before, points[k])), geometry.Unit(geometry.Sub(after, points[k])))
			if geometry.Norm(u) < same { // straight on: to the inside
				u = geometry.Left(geometry.Unit(geometry.Sub(after, points[k])))
			}
			c.movePoint(of[k], geometry.Add(points[k], geometry.Times(geometry.Unit(u), parted)))
			done[k] = true
			break
		}
	}
	return len(done) > 0
}

// movePoint moves the point where a step begins.
func (c *cleaning) movePoint(step int, to orb.Point) {
	before := (step + len(c.steps) - 1) % len(c.steps)
	c.steps[before].Curve = moved(c.steps[before].Curve, c.steps[before].Start(), to)
	c.steps[step].Curve = moved(c.steps[step].Curve, to, c.steps[step].End())
}
