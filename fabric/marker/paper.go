package marker

// Paper is a sheet that printers have.
type Paper int

const (
	// A4 is 210 x 297 mm.
	A4 Paper = iota
	// Letter is 8 1/2 x 11 in.
	Letter
)

// sheet is the width and height of a page, mm.
type sheet struct{ width, height float64 }

// onItsSide is the sheet with its long side across.
func (p Paper) onItsSide() sheet {
	if p == Letter {
		return sheet{11 * 25.4, 8.5 * 25.4}
	}
	return sheet{297, 210}
}

// upright is the sheet with its short side across.
func (p Paper) upright() sheet {
	s := p.onItsSide()
	return sheet{s.height, s.width}
}

// Upright gives the width and height of the sheet with its short side across,
// mm.
func (p Paper) Upright() (width, height float64) {
	s := p.upright()
	return s.width, s.height
}

// margin is what printers leave white, mm.
const margin = 12

// scales are the denominators that a reader can reckon with.
var scales = []float64{2, 2.5, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100}

// spread is how a lay goes onto paper.
type spread struct {
	sheet
	denominator float64 // of the scale
	pages       int
}

// spreadFor picks the way of the sheet that takes fewer pages, then the one
// that shows the lay larger. Both lengths in mm of cloth.
func (p Paper) spreadFor(across, along float64) spread {
	best := p.onItsSide().spreadFor(across, along)
	if other := p.upright().spreadFor(across, along); other.pages < best.pages ||
		other.pages == best.pages && other.denominator < best.denominator {
		best = other
	}
	return best
}

func (s sheet) spreadFor(across, along float64) spread {
	roomAcross, roomAlong := s.room()
	denominator := scaleFor(across, along, roomAcross, roomAlong)
	return spread{s, denominator, pagesAt(denominator, along, roomAlong)}
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

// room on the page for the drawing itself. The facts of an upright sheet take
// two rows.
func (s sheet) room() (across, along float64) {
	head := titleHeight + factsHeight + 3
	if s.height > s.width {
		head += factsHeight
	}
	return s.height - 2*margin - head - roomAbove - roomBelow - footHeight, s.width - 2*margin - roomLeft - roomRight
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
