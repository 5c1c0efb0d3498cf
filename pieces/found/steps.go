package found

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// Where two allowances meet, the cutting line may step from one to the other; the sew line
// has a corner there alone [source.OwnChoice].
const (
	longestStep = 60   // mm
	stepLeft    = 0.02 // mm off the corner that the step keeps, so that an edge is left of it
	leastStep   = 0.1  // mm that it lies from the corner at least
	mostSteps   = 5    // of a piece
)

// step is an edge between two of known allowance, and how far it lies from the corner of the
// sew line behind it.
type step struct {
	edge int
	away float64
}

// allowSteps gives every step what lies between it and its corner, a little more or a little
// less, as leaves an edge of it. Where that cannot be, nothing is changed.
func allowSteps(p *pieces.Piece, line orb.Ring) {
	steps := stepsOf(p, line)
	if len(steps) == 0 || len(steps) > mostSteps {
		return
	}
	for signs := range 1 << len(steps) {
		for k, s := range steps {
			off := stepLeft
			if signs>>k&1 == 1 {
				off = -stepLeft
			}
			e := &p.Edges[s.edge]
			e.Included, e.Unknown = math.Round((s.away+off)*100)/100, false
		}
		seam, err := p.AtSeam()
		off := func(s step) bool { return !liesOn(seam, p.Edges[s.edge].Name, line) }
		if err == nil && !slices.ContainsFunc(steps, off) {
			return
		}
	}
	for _, s := range steps {
		p.Edges[s.edge].Included, p.Edges[s.edge].Unknown = 0, true
	}
}

func stepsOf(p *pieces.Piece, line orb.Ring) []step {
	var out []step
	n := len(p.Edges)
	for i, e := range p.Edges {
		before, after := p.Edges[(i+n-1)%n], p.Edges[(i+1)%n]
		if !e.Unknown || e.Path.Length() > longestStep || before.Included == 0 || after.Included == 0 {
			continue
		}
		corner, ok := seamCorner(before, after)
		if !ok || distanceTo(line, corner) > sewOff {
			continue
		}
		from, to := e.Path.Start(), e.Path.End()
		away := geometry.Cross(geometry.Unit(geometry.Sub(to, from)), geometry.Sub(corner, from))
		if away >= leastStep {
			out = append(out, step{i, away})
		}
	}
	return out
}

// seamCorner is where the seam lines of two edges meet that have a step between them: those
// of their ends.
func seamCorner(before, after pieces.Edge) (orb.Point, bool) {
	last, first := before.Path[len(before.Path)-1], after.Path[0]
	u, v := geometry.Unit(last.Tangent(1)), geometry.Unit(first.Tangent(0))
	a := geometry.Add(last.End(), geometry.Times(geometry.Left(u), before.Included))
	b := geometry.Add(first.Start(), geometry.Times(geometry.Left(v), after.Included))
	across := geometry.Cross(u, v)
	const least = 0.02 // sine of the turn: flatter ones meet nowhere near [source.OwnChoice]
	if math.Abs(across) < least {
		return orb.Point{}, false
	}
	return geometry.Add(a, geometry.Times(u, geometry.Cross(geometry.Sub(b, a), v)/across)), true
}

// isFold says that an edge lies on the fold.
func isFold(p *pieces.Piece, e *pieces.Edge) bool { return p.Fold != seams.None && e.Name == p.Fold }
