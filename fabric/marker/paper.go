package marker

import "ellwand/pieces/paper"

// margin is what printers leave white, mm.
const margin = 12

// scales are the denominators that a reader can reckon with.
var scales = []float64{2, 2.5, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100}

// paging is how a lay goes onto paper.
type paging struct {
	paper.Paper
	denominator float64 // of the scale
	pages       int
}

// pagingFor picks the way of the sheet that takes fewer pages, then the one
// that shows the lay larger. Both lengths in mm of cloth.
func pagingFor(of paper.Paper, across, along float64) paging {
	best := pagingOn(of.OnItsSide(), across, along)
	if other := pagingOn(of.Upright(), across, along); other.pages < best.pages ||
		other.pages == best.pages && other.denominator < best.denominator {
		best = other
	}
	return best
}

func pagingOn(of paper.Paper, across, along float64) paging {
	roomAcross, roomAlong := roomOn(of)
	denominator := scaleFor(across, along, roomAcross, roomAlong)
	return paging{of, denominator, pagesAt(denominator, along, roomAlong)}
}

// Room around the drawing, mm of paper.
const (
	titleHeight = 15.0
	factsHeight = 10.5
	roomLeft    = 9.0
	roomRight   = 6.0
	roomAbove   = 8.0
	roomBelow   = 11.0
	footHeight  = 14.0 // scale bar and ruler
)

// roomOn is the room on a page for the drawing itself. The facts of an upright sheet take
// two rows.
func roomOn(of paper.Paper) (across, along float64) {
	head := titleHeight + factsHeight + 3
	if of.Height > of.Width {
		head += factsHeight
	}
	return of.Height - 2*margin - head - roomAbove - roomBelow - footHeight, of.Width - 2*margin - roomLeft - roomRight
}

// readable is a scale at which every label of a garment is still easy to read.
const readable = 8.0

// scaleFor picks the largest scale at which the cloth is no taller than the
// room, unless a smaller one that still reads well saves pages.
func scaleFor(across, along, roomAcross, roomAlong float64) float64 {
	best := 0.0
	for _, scale := range scales {
		if across/scale > roomAcross {
			continue
		}
		if best == 0 {
			best = scale
		}
		if scale <= max(1.5*best, readable) && pagesAt(scale, along, roomAlong) < pagesAt(best, along, roomAlong) {
			return scale
		}
	}
	if best == 0 {
		return across / roomAcross
	}
	return best
}

// pagesAt is the number of pages that the length takes.
func pagesAt(scale, along, roomAlong float64) int {
	pages := 1
	for along > float64(pages)*roomAlong*scale+1e-6 {
		pages++
	}
	return pages
}
