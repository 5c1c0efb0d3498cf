package nest

import (
	"ellwand/nest/internal/model"
	"ellwand/nest/internal/search"
)

const (
	// stretchPieces is about the number of pieces on a stretch of a long strip.
	stretchPieces = 80
	// shortenLeast and shortenMost are between what a stretch is made shorter, as shares
	// of its length.
	shortenLeast = 0.001
	shortenMost  = 0.01
)

// stretch is a part of the strip between two lines: the pieces between them may move,
// those that cross a line hold their place at it.
type stretch struct {
	from, length float64
	inside       []int         // indices of spots
	crossing     []search.Spot // those across the lines, with x from the first line on
	late         int           // of crossing, those from here on cross the second line
}

// stretchOf the spots of a strip; false where a piece crosses both lines, or where
// hardly any lie between.
func stretchOf(m *model.Model, spots []search.Spot, from, to float64) (s stretch, ok bool) {
	s.from, s.length = from, to-from
	var late []search.Spot
	for i, at := range spots {
		half := m.Shapes[at.Shape].HalfX
		low, high := at.X-half-from, at.X+half-to
		at.X -= from
		edge := float64(1e-9 * m.Width)
		switch {
		case low < -edge && high > edge:
			return s, false
		case high > edge && low < s.length-edge:
			late = append(late, at)
		case low < -edge && at.X+half > edge:
			s.crossing = append(s.crossing, at)
		case low >= -edge && high <= edge:
			s.inside = append(s.inside, i)
		}
	}
	s.late = len(s.crossing)
	s.crossing = append(s.crossing, late...)
	return s, len(s.inside) >= 2
}

// shortened lays the stretch on a length shorter by a share, from its pieces of the
// model. It returns the spots of those inside, from the first line on.
func (s stretch) shortened(
	m *model.Model, pieces []int, spots []search.Spot, f *search.Fitter, stop func() bool,
) (found []search.Spot, by float64, passes int, ok bool) {
	by = float64(s.length * f.Drawn(shortenLeast, shortenMost))
	cut := float64(s.length * f.Share())
	chosen := make([]int, len(s.inside))
	from := make([]search.Spot, len(s.inside))
	for k, i := range s.inside {
		chosen[k] = pieces[i]
		from[k] = spots[i]
		from[k].X -= s.from
		if from[k].X > cut {
			from[k].X -= by
		}
	}
	only := m.Only(chosen)
	for k := range only.Pieces {
		keepDirection(only, &only.Pieces[k], from[k].Shape)
	}
	only.Length = s.length - by
	only.Fixed = append([]search.Spot(nil), s.crossing...)
	for k := s.late; k < len(only.Fixed); k++ {
		only.Fixed[k].X -= by
	}
	found, passes, ok = f.Fit(only, from, stop)
	return found, by, passes, ok
}

// keepDirection leaves a piece of a group only the shapes that point as it does.
func keepDirection(m *model.Model, piece *model.Piece, shape int) {
	if piece.Group == 0 {
		return
	}
	var kept []int
	for _, k := range piece.Shapes {
		if m.Shapes[k].Direction == m.Shapes[shape].Direction {
			kept = append(kept, k)
		}
	}
	piece.Shapes = kept
}
