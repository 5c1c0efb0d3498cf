package nest

import (
	"context"
	"math"

	"ellwand/nest/internal/model"
	"ellwand/nest/internal/search"
	"ellwand/nest/internal/tiling"
)

// tileNodes bounds the search for a perfect tiling: a second or two. A budget of
// passes bounds it further, so that few passes take little time: on the machine
// of 2 cores a node takes 0.3 us, and a pass over ten pieces some milliseconds.
const (
	tileNodes    = 4_000_000
	nodesOfAPass = 10_000
)

// mostSpare is the share of a sheet that may be to spare when its pieces are
// laid without any waste: with more, the search soon finds a layout.
const mostSpare = 0.05

// tile lays rectangles without any waste, where the problem is nothing but
// rectangles and they can be so laid. The search that lets pieces overlap
// comes near such layouts but seldom hits them.
func (q *prepared) tile(ctx context.Context, passes int) ([]search.Spot, float64, bool) {
	m := q.model
	rects, area, ok := q.rectangles()
	if !ok {
		return nil, 0, false
	}
	length := area / m.Width
	if m.Length > 0 && (length > m.Length*(1+tiling.Accuracy) || length < m.Length*(1-mostSpare)) {
		return nil, 0, false
	}
	nodes := tileNodes
	if passes > 0 {
		nodes = min(nodes, passes*nodesOfAPass)
	}
	at, outcome := tiling.Tile(ctx, m.Width, length, rects, nodes)
	if outcome != tiling.Tiled {
		return nil, 0, false
	}
	spots := make([]search.Spot, len(at))
	for i, p := range at {
		shape := q.lying(i, p.Quarter)
		s := &m.Shapes[shape]
		spots[i] = search.Spot{Shape: shape, X: p.X + s.HalfX, Y: p.Y + s.HalfY}
	}
	return spots, length, true
}

// rectangles turns the pieces into rectangles, each as its first shape lies;
// false when anything else is asked.
func (q *prepared) rectangles() (rects []tiling.Rect, area float64, ok bool) {
	m := q.model
	if m.Gap > 0 || m.ClearLow > 0 || m.ClearHigh > 0 || len(m.Fixed) > 0 || len(q.sheetX) > 0 {
		return nil, 0, false
	}
	for _, piece := range m.Pieces {
		if piece.Group != 0 || piece.PeriodX > 0 || piece.PeriodY > 0 {
			return nil, 0, false
		}
		first := &m.Shapes[piece.Shapes[0]]
		r := tiling.Rect{X: 2 * first.HalfX, Y: 2 * first.HalfY}
		for _, k := range piece.Shapes {
			s := &m.Shapes[k]
			if !isRectangle(&m.Bases[s.Base], s) || s.Low || s.High {
				return nil, 0, false
			}
			if !sameSides(first, s) {
				r.Turns = tiling.Both
			}
		}
		rects = append(rects, r)
		area += float64(r.X * r.Y)
	}
	return rects, area, true
}

// isRectangle reports whether the four corners of the outline are those of
// its bounding box.
func isRectangle(base *model.Base, s *model.Shape) bool {
	if len(base.Points) != 4 {
		return false
	}
	small := tiling.Accuracy * (s.HalfX + s.HalfY)
	for _, p := range base.Points {
		if math.Abs(math.Abs(p[0])-s.HalfX) > small || math.Abs(math.Abs(p[1])-s.HalfY) > small {
			return false
		}
	}
	return true
}

func sameSides(a, b *model.Shape) bool {
	return math.Abs(a.HalfX-b.HalfX) <= tiling.Accuracy*(a.HalfX+a.HalfY)
}

// lying returns the shape of piece i that lies as its first shape, or turned
// by a quarter.
func (q *prepared) lying(i int, quarter bool) int {
	shapes := q.model.Pieces[i].Shapes
	first := &q.model.Shapes[shapes[0]]
	for _, k := range shapes {
		if sameSides(first, &q.model.Shapes[k]) != quarter {
			return k
		}
	}
	return shapes[0]
}
