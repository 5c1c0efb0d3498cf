package sheet

import "ellwand/pieces/drawing"

// cuttingWidth of a cutting line, mm.
const cuttingWidth = 0.5

// dashes tell the sizes apart in black and white, strokes and gaps in mm.
var dashes = [][]float64{
	nil,
	{7, 2.5},
	{2.5, 1.8},
	{9, 2, 1, 2},
	{0.6, 1.7},
	{9, 2, 1, 2, 1, 2},
	{16, 3},
	{5, 1.5, 2, 1.5},
	{9, 1.8, 1, 1.8, 1, 1.8, 1, 1.8},
	{3, 5},
}

// LineOf is the cutting line of the size with that index in a nest, from 0.
// After ten sizes the same dashes come again, twice as heavy.
func LineOf(index int) drawing.Pen {
	width := cuttingWidth
	if index/len(dashes)%2 == 1 {
		width *= 2
	}
	return drawing.Pen{Width: width, Dashes: dashes[index%len(dashes)]}
}

// The other lines.
var (
	seamLine = drawing.Pen{Width: 0.3, Dashes: []float64{4, 2}}
	// The seam line of one size among the cutting lines of many is fine and
	// grey, and has no dashes.
	nestedSeamLine = drawing.Pen{Width: 0.25, Grey: 120}
	foldLine       = drawing.Pen{Width: 0.9, Dashes: []float64{12, 2.5, 1.5, 2.5}}
	notchLine      = drawing.Pen{Width: 0.5}
	dartLine       = drawing.Pen{Width: 0.35, Dashes: []float64{2.5, 1.5}}
	markLine       = drawing.Pen{Width: 0.25, Dashes: []float64{0.8, 1.6}}
	grainLine      = drawing.Pen{Width: 0.45}
	fineLine       = drawing.Pen{Width: 0.3}
	// What is not of the pieces is grey, so that their lines stand out.
	markRim  = drawing.Pen{Width: 0.3, Grey: 90}
	trimLine = drawing.Pen{Width: 0.2, Grey: 90, Dashes: []float64{2, 1.5}, Blunt: true}
)
