package illustration

import (
	"io"
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/geometry"
)

// The picture of a job, mm: its size and the room between pieces
// [source.OwnChoice].
const (
	jobWide, jobHigh = 90.0, 60.0
	jobGap           = 2.5
	jobPieces        = 12 // more would be too small to see
)

// Job writes the pieces of a job small beside each other; those that are cut on a
// fold as their half. The error is that of a piece without a cutting outline, or
// that of w.
func Job(w io.Writer, title string, all []pieces.Piece) error {
	page := drawing.Page{Width: jobWide, Height: jobHigh}
	var rings []orb.Ring
	for _, p := range all[:min(len(all), jobPieces)] {
		ring, err := p.CuttingOutline(flatness)
		if err != nil {
			return err
		}
		rings = append(rings, ring)
	}
	scale, places := arranged(rings)
	for i, ring := range rings {
		box := ring.Bound()
		line := make([]orb.Point, len(ring))
		for k, p := range ring {
			line[k] = geometry.Add(places[i], orb.Point{(p[0] - box.Min[0]) * scale, (box.Max[1] - p[1]) * scale})
		}
		page.Area(clothGrey, line...)
		page.Line(seamPen, line...)
	}
	return drawing.WriteSVG(w, title, page)
}

// arranged is the largest scale at which rows of the rings fill the picture, and
// the upper left corner of each.
func arranged(rings []orb.Ring) (scale float64, places []orb.Point) {
	if len(rings) == 0 {
		return 1, nil
	}
	for scale = 0.5; scale > 0.002; scale *= 0.95 {
		var deep float64
		var fits bool
		if places, deep, fits = inRows(rings, scale); fits && deep <= jobHigh {
			break
		}
	}
	return scale, places
}

func inRows(rings []orb.Ring, scale float64) (places []orb.Point, deep float64, fits bool) {
	x, y, tallest := jobGap, jobGap, 0.0
	fits = true
	for _, ring := range rings {
		box := ring.Bound()
		across, down := (box.Max[0]-box.Min[0])*scale, (box.Max[1]-box.Min[1])*scale
		if x > jobGap && x+across > jobWide-jobGap {
			x, y, tallest = jobGap, y+tallest+jobGap, 0
		}
		fits = fits && x+across <= jobWide-jobGap
		places = append(places, orb.Point{x, y})
		tallest = math.Max(tallest, down)
		x += across + jobGap
	}
	return places, y + tallest + jobGap, fits
}
