package part

import (
	"slices"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
)

// Where a patch pocket lies [source.OwnChoice]: on the front bodice its upper edge 3 cm
// above the bust line, its middle as far from the centre front as the bust point; on the
// front of a skirt its upper edge halfway from the waist to the hip line, in the middle
// of that line.
const (
	patchAbove = 30 // the bust line
	patchInset = 10 // at the least, within the seams of the piece
)

// placedOn is the line of a piece that a patch pocket is placed by.
var placedOn = map[role.Role]marks.Name{role.FrontBodice: marks.BustLine, role.FrontSkirt: marks.HipLine}

// PlacePocket marks where the upper edge of a patch pocket lies on a front, with the step
// that says so. False on another piece, on one that has a pocket already, and where the
// pocket would lie over a seam.
func (o Options) PlacePocket(front, pocket pieces.Piece) (marked pieces.Piece, step string, ok bool) {
	by, isFront := placedOn[front.Role]
	at := slices.IndexFunc(front.Marks, func(m pieces.Mark) bool { return m.Name == by && len(m.Path) > 0 })
	if !isFront || at < 0 || slices.ContainsFunc(front.Marks, isPocketLine) {
		return front, "", false
	}
	line, box := front.Marks[at].Path, pocket.Boundary(1).Bound()
	width, height := box.Max[0], box.Max[1]
	middle := orb.Point{line.End()[0], line.End()[1] + patchAbove}
	step = "mark the upper edge of the patch pocket, {} long, 3 cm above the bust line, its middle as far from the " +
		"centre front as the bust point"
	if by == marks.HipLine {
		middle = orb.Point{(line.Start()[0] + line.End()[0]) / 2, line.Start()[1] / 2}
		step = "mark the upper edge of the patch pocket, {} long, halfway between the waist and the hip line, above " +
			"the middle of that line"
	}
	if middle[0] < width/2+patchInset {
		return front, "", false // over the centre
	}
	seam := front.Boundary(1)
	for _, x := range []float64{-width/2 - patchInset, width/2 + patchInset} {
		for _, y := range []float64{patchInset, -height - patchInset} {
			if !geometry.Inside(seam, orb.Point{middle[0] + x, middle[1] + y}) {
				return front, "", false
			}
		}
	}
	front.Marks = append(front.Marks[:len(front.Marks):len(front.Marks)], pieces.Mark{Name: marks.PatchPocket,
		Path: construct.Line(orb.Point{middle[0] - width/2, middle[1]}, orb.Point{middle[0] + width/2, middle[1]})})
	return front, step, true
}

func isPocketLine(m pieces.Mark) bool { return m.Name == marks.PatchPocket }
