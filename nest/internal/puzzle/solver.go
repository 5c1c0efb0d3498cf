package puzzle

import (
	"context"

	"github.com/paulmach/orb"

	"ellwand/nest/internal/model"
)

// solver is one search.
type solver struct {
	ctx       context.Context
	problem   Problem
	tolerance float64
	nodes     int
	// model tells whether two shapes overlap by more than the tolerance.
	model    *model.Model
	shapes   []shape
	order    []int // of the pieces, the largest first
	left     []int // copies of each piece
	sharpest float64
	placed   []Placed
}

func (s *solver) area(piece int) float64 { return s.shapes[s.problem.Pieces[piece].Shapes[0]].area }

// isWithin reports whether a shape with its first corner there lies on the rectangle.
func (s *solver) isWithin(k int, at orb.Point) bool {
	box, t := moved(s.shapes[k].box, at), s.tolerance
	return box.Min[0] >= -t && box.Min[1] >= -t && box.Max[0] <= s.problem.Length+t && box.Max[1] <= s.problem.Width+t
}

// isFree reports whether the shape that was laid last, with its first corner there,
// overlaps nothing.
func (s *solver) isFree(k int, at orb.Point) bool {
	sh := &s.shapes[k]
	box := moved(sh.box, at)
	for _, other := range s.placed[:len(s.placed)-1] {
		o := &s.shapes[other.Shape]
		by := orb.Point{other.X + o.first[0], other.Y + o.first[1]}
		if !moved(o.box, by).Pad(-s.tolerance).Intersects(box) {
			continue
		}
		from, to := o.middle(by), sh.middle(at)
		if s.model.DirectOverlap(s.modelled(other.Shape), s.modelled(k), to[0]-from[0], to[1]-from[1]) {
			return false
		}
	}
	return true
}

// modelled is the shape in the model, made when first asked for.
func (s *solver) modelled(k int) int {
	sh := &s.shapes[k]
	if sh.modelled < 0 {
		base, _ := s.model.AddBase(sh.points, false)
		sh.modelled = s.model.AddShape(model.Shape{Base: base, FlipX: 1, FlipY: 1})
	}
	return sh.modelled
}
