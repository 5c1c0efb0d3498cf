package quote

import (
	"sort"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// silhouette is a piece in the small picture: its seam line, laid whole, with
// its lower left corner at (0, 0). mm.
type silhouette struct {
	ring          orb.Ring
	width, height float64
}

// placed is a silhouette at a place of the picture, not yet scaled.
type placed struct {
	silhouette
	x, y float64 // y downwards, of its upper edge
}

// pictureTolerance, mm, is far below what the scale of the picture shows
// [source.OwnChoice].
const pictureTolerance = 2.0

// pictureOf arranges one of each piece in rows, tall ones first, in a frame of
// the given proportions; it returns the scale that fits the frame. Pieces of
// the same garment for other wearers differ too little to be shown again.
func pictureOf(garments []Garment, width, height float64) ([]placed, float64) {
	var all []silhouette
	seen := map[string]bool{}
	for _, garment := range garments {
		for _, piece := range garment.Pieces {
			key := garment.Name + "\x00" + piece.Name
			if !seen[key] {
				seen[key] = true
				all = append(all, silhouetteOf(piece))
			}
		}
	}
	sort.SliceStable(all, func(i, j int) bool { return all[i].height > all[j].height })
	if len(all) == 0 {
		return nil, 0
	}
	// The widest frame that still fits is found by trying: rows break where
	// the frame ends, so that the fit is not even.
	best, bestScale := []placed(nil), 0.0
	for rowWidth := widest(all); rowWidth <= 64*widest(all); rowWidth *= 1.05 {
		row, w, h := inRows(all, rowWidth)
		if scale := min(width/w, height/h); scale > bestScale {
			best, bestScale = row, scale
		}
	}
	return best, bestScale
}

func silhouetteOf(piece pieces.Piece) silhouette {
	ring := piece.Unfolded().SeamOutline(pictureTolerance)
	bound := ring.Bound()
	out := silhouette{width: bound.Max[0] - bound.Min[0], height: bound.Max[1] - bound.Min[1]}
	for _, p := range ring {
		out.ring = append(out.ring, orb.Point{p[0] - bound.Min[0], p[1] - bound.Min[1]})
	}
	return out
}

func widest(all []silhouette) float64 {
	out := 0.0
	for _, s := range all {
		out = max(out, s.width)
	}
	return out
}

// inRows fills rows no wider than given, and returns the size of the whole.
func inRows(all []silhouette, rowWidth float64) (out []placed, width, height float64) {
	gap := 0.04 * rowWidth
	x, y, rowHeight := 0.0, 0.0, 0.0
	for _, s := range all {
		if x > 0 && x+s.width > rowWidth {
			x, y, rowHeight = 0, y+rowHeight+gap, 0
		}
		out = append(out, placed{s, x, y})
		rowHeight = max(rowHeight, s.height)
		width, height = max(width, x+s.width), max(height, y+rowHeight)
		x += s.width + gap
	}
	return out, width, height
}
