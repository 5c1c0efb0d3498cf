package tracing

import (
	"errors"

	"github.com/paulmach/orb"

	"ellwand/pieces/tracing/raster"
	"ellwand/pieces/tracing/reference"
	"ellwand/pieces/tracing/region"
)

// Known is what is known in the photo; one of its fields is given.
type Known struct {
	// Square is the side of a square of the ground, mm.
	Square float64
	// Sheet is the size of the sheets, mm.
	Sheet reference.Known
	// Distances between pixels of the upright photo.
	Distances *[2]reference.Distance
}

// leastBlob is the least shape that is looked at, small pixels [source.OwnChoice].
const leastBlob = 60

// refer finds the reference, and the shapes on the ground; sheets are among them.
func (s *scene) refer(known Known) ([]region.Blob, reference.Found, error) {
	switch {
	case known.Square > 0:
		return s.squares(known.Square)
	case known.Distances != nil:
		return s.distances(*known.Distances)
	}
	return s.sheets(known.Sheet)
}

// squares of the ground are looked for first: it ends where they do, whatever lies
// about it.
func (s *scene) squares(side float64) ([]region.Blob, reference.Found, error) {
	s.grey = s.photo.Channel(raster.Mixes[0])
	found, err := reference.OfSquares(s.grey, side)
	if err != nil {
		return nil, found, plain(NoSquares)
	}
	within := func(p orb.Point) bool { return found.Box.Contains(found.Camera.ToPlane(p)) }
	hide := func(g *raster.Grey) *raster.Grey { return found.WithoutLines(g, side) }
	if err := s.part(within, hide); err != nil {
		return nil, found, err
	}
	return s.classes.Blobs(!s.bright(found.Marks), leastBlob).All, found, nil
}

func (s *scene) distances(d [2]reference.Distance) ([]region.Blob, reference.Found, error) {
	if err := s.part(nil, nil); err != nil {
		return nil, reference.Found{}, err
	}
	for i := range d {
		d[i].From, d[i].To = s.shrunk(d[i].From), s.shrunk(d[i].To)
	}
	found, err := reference.OfDistances(s.grey.Width, s.grey.Height, d)
	switch {
	case errors.Is(err, reference.ErrNotSquareOn):
		return nil, found, plain(NotSquareOn)
	case err != nil:
		return nil, found, plain(BadDistances)
	}
	return s.classes.Blobs(!s.brightRim(), leastBlob).All, found, nil
}

// sheets among the shapes.
func (s *scene) sheets(size reference.Known) ([]region.Blob, reference.Found, error) {
	if err := s.part(nil, nil); err != nil {
		return nil, reference.Found{}, err
	}
	blobs := s.classes.Blobs(!s.brightRim(), leastBlob).All
	rims := make([][]orb.Point, len(blobs))
	for i, b := range blobs {
		if b.Rim == 0 {
			rims[i], _ = s.rim(b) // a shape that is not seen clearly is no sheet
		}
	}
	found, err := reference.OfSheets(s.grey.Width, s.grey.Height, rims, size, s.look())
	switch {
	case errors.Is(err, reference.ErrSheetBulged):
		return nil, found, plain(SheetBulged)
	case err != nil:
		return nil, found, plain(NoSheet)
	}
	return blobs, found, nil
}
