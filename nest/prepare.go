package nest

import (
	"fmt"
	"maps"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/nest/internal/model"
	"ellwand/nest/layout"
)

// touchShare is the depth up to which outlines only touch, as a share of the strip width:
// a tenth of what Verify allows, so that what the search accepts verifies, and a million
// times the rounding of a coordinate.
const touchShare = 1e-8

func prepare(p layout.Problem, start *layout.Layout, locked []bool, tables *Tables) (*prepared, error) {
	q := &prepared{problem: p, model: model.New(p.Width, p.Length, p.Gap)}
	if err := q.addSheets(); err != nil {
		return nil, err
	}
	q.scale = tables.scaleFor(q.model.Width)
	q.model.Touch = float64(touchShare * q.scale)
	if tables != nil {
		q.model.Share(&tables.made)
	}
	if p.Gap < q.model.Touch {
		q.model.Gap = 0
	}
	q.model.ClearLow, q.model.ClearHigh = p.ClearLow, p.ClearHigh
	for _, zone := range p.Zones {
		q.addObstacle(zone)
	}
	kept := q.lockedPlacements(start, locked)
	for i := range p.Items {
		shapes := q.addShapes(i)
		for copy := range p.Items[i].Copies {
			if at, ok := kept[[2]int{i, copy}]; ok {
				q.addLocked(at, shapes)
				continue
			}
			q.model.Pieces = append(q.model.Pieces, model.Piece{
				Item: i, Copy: copy, Shapes: shapes, Group: p.Items[i].Group,
				PeriodX: p.Items[i].PeriodX, PeriodY: p.Items[i].PeriodY,
			})
		}
	}
	return q, q.shareDirections()
}

// shareDirections leaves each piece of a group the shapes whose direction all
// of the group can take.
func (q *prepared) shareDirections() error {
	common := map[int]map[int]bool{}
	for _, at := range q.locked {
		if item := q.problem.Items[at.Item]; item.Group != 0 {
			common[item.Group] = map[int]bool{item.Turns[at.Turn].Direction: true}
		}
	}
	for _, piece := range q.model.Pieces {
		if piece.Group == 0 {
			continue
		}
		mine := map[int]bool{}
		for _, k := range piece.Shapes {
			mine[q.model.Shapes[k].Direction] = true
		}
		if common[piece.Group] == nil {
			common[piece.Group] = mine
		}
		maps.DeleteFunc(common[piece.Group], func(direction int, _ bool) bool { return !mine[direction] })
	}
	for i := range q.model.Pieces {
		piece := &q.model.Pieces[i]
		if piece.Group == 0 {
			continue
		}
		piece.Shapes = slices.DeleteFunc(slices.Clone(piece.Shapes), func(k int) bool {
			return !common[piece.Group][q.model.Shapes[k].Direction]
		})
		if len(piece.Shapes) == 0 {
			return fmt.Errorf(
				"%s has no turn that points the same way as the rest of its group; allow it another",
				q.problem.ItemName(piece.Item),
			)
		}
	}
	return nil
}

// addShapes adds the shapes that item i may take and returns their indices.
// Turns in which it is wider than the strip are left out.
func (q *prepared) addShapes(i int) []int {
	item := q.problem.Items[i]
	bases := map[float64]placedBase{}
	var shapes []int
	for t, turn := range item.Turns {
		for _, tilt := range tilts(item.Tilt) {
			s, ok := q.shape(item, turn, tilt, bases)
			if !ok || q.isDuplicate(shapes, s, item) {
				continue
			}
			s.Turn = t
			shapes = append(shapes, q.model.AddShape(s))
		}
	}
	return shapes
}

// tilts are the tilts that the search tries.
func tilts(most float64) []float64 {
	if most == 0 {
		return []float64{0}
	}
	return []float64{0, -most, most, -most / 2, most / 2}
}

type placedBase struct {
	index  int
	centre orb.Point
}

func (q *prepared) shape(
	item layout.Item,
	turn layout.Turn,
	tilt float64,
	bases map[float64]placedBase,
) (model.Shape, bool) {
	angle, flipX, flipY := turn.Reduced(tilt)
	base, ok := bases[angle]
	if !ok {
		base.index, base.centre = q.model.AddBase(q.ringOf(item, angle), false)
		bases[angle] = base
	}
	s := shapeOf(&q.model.Bases[base.index], base.index, base.centre, flipX, flipY)
	s.Tilt, s.Direction = tilt, turn.Direction
	s.Low, s.High = turn.Pin == layout.PinLow, turn.Pin == layout.PinHigh
	s.OffsetX, s.OffsetY = turn.OffsetX+s.CentreX, turn.OffsetY+s.CentreY
	room := q.model.Width
	if turn.Pin == layout.PinNone && len(q.problem.Sheets) == 0 {
		room -= q.problem.ClearLow + q.problem.ClearHigh
	}
	return s, 2*s.HalfY <= room+float64(q.model.Width*touchShare)
}

// isDuplicate reports whether a shape equals one that the item has already, as a
// rectangle does when turned by 180 degrees.
func (q *prepared) isDuplicate(shapes []int, s model.Shape, item layout.Item) bool {
	for _, k := range shapes {
		o := q.model.Shapes[k]
		if o.Base != s.Base || o.Low != s.Low || o.High != s.High || o.Direction != s.Direction {
			continue
		}
		if item.PeriodX > 0 && math.Abs(math.Remainder(o.OffsetX-s.OffsetX, item.PeriodX)) > q.model.Touch ||
			item.PeriodY > 0 && math.Abs(math.Remainder(o.OffsetY-s.OffsetY, item.PeriodY)) > q.model.Touch {
			continue
		}
		if sameImage(q.model.Bases[s.Base].Points, o.FlipX*s.FlipX, o.FlipY*s.FlipY, q.model.Touch) {
			return true
		}
	}
	return false
}

// sameImage reports whether mirroring leaves the outline as it is.
func sameImage(points []orb.Point, flipX, flipY, tolerance float64) bool {
	for _, p := range points {
		x, y := float64(flipX*p[0]), float64(flipY*p[1])
		found := false
		for _, o := range points {
			if math.Abs(o[0]-x) <= tolerance && math.Abs(o[1]-y) <= tolerance {
				found = true
				break
			}
		}
		if !found {
			return false
		}
	}
	return true
}
