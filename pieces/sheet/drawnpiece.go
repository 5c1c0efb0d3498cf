// Package sheet prints pieces full size, on as many sheets of paper as they
// need, to be joined by their marks.
//
// Lengths are millimetres. Everything lies on one large plane, x to the
// right, y down; the plane is cut into tiles, each of which is a sheet.
package sheet

import (
	"fmt"
	"reflect"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
)

// DrawnPiece is a piece as it is drawn full size, in one size or in several that
// are nested in each other.
type DrawnPiece struct {
	// Sizes of the piece, at least one, the smallest first.
	Sizes []Drawn
	// Label is written on the piece, its first line bold.
	Label []string
	// Inches gives widths of allowances in inches instead of cm.
	Inches bool
	// Seams is the index of the size whose seam lines are drawn.
	Seams int
	// Beneath are lines that are drawn under the figure, and that its label
	// keeps off where it has the room.
	Beneath [][2]orb.Point
}

// Drawn is a piece with its cutting line, both in the same frame.
type Drawn struct {
	Piece   pieces.Piece
	Cutting orb.Ring // closed
}

// tolerance of the cutting line against the true one, mm.
const tolerance = 0.03

// NewDrawnPiece draws a piece as it stands, in its own frame; several must be the
// same piece in several sizes, the smallest first, and lie on each other as
// they were drafted. One that is the same in every size is drawn once. Of a
// piece cut on the fold it is the half. The error is that of a piece that is
// not sound (see pieces.Piece.Check).
func NewDrawnPiece(sizes ...pieces.Piece) (DrawnPiece, error) {
	if len(sizes) == 0 {
		return DrawnPiece{}, fmt.Errorf("there is no piece to print")
	}
	var f DrawnPiece
	for _, p := range sizes {
		if err := p.Check(); err != nil {
			return DrawnPiece{}, err
		}
		ring, err := p.CuttingOutline(tolerance)
		if err != nil {
			return DrawnPiece{}, err
		}
		f.Sizes = append(f.Sizes, Drawn{p.Seam(), ring}) // so that a kept cutting line has its seam line
	}
	smallest := sizes[0]
	if len(sizes) > 1 {
		smallest.Size = ""
		if isSame(sizes) {
			f.Sizes = f.Sizes[:1]
			smallest.Garment = allSizes(smallest.Garment)
		}
	}
	f.Label = drawing.LabelLines(smallest)
	return f, nil
}

// isSame reports whether pieces differ in the name of their size alone.
func isSame(sizes []pieces.Piece) bool {
	for _, p := range sizes {
		p.Size = sizes[0].Size
		if !reflect.DeepEqual(p, sizes[0]) {
			return false
		}
	}
	return true
}

// Map moves the figure with everything on it.
func (f DrawnPiece) Map(m pieces.Motion) DrawnPiece {
	out := f
	out.Sizes, out.Beneath = nil, nil
	for _, d := range f.Sizes {
		ring := make(orb.Ring, len(d.Cutting))
		for i, p := range d.Cutting {
			ring[i] = m.Apply(p)
		}
		out.Sizes = append(out.Sizes, Drawn{d.Piece.Map(m), ring})
	}
	for _, line := range f.Beneath {
		out.Beneath = append(out.Beneath, [2]orb.Point{m.Apply(line[0]), m.Apply(line[1])})
	}
	return out
}

// outlines are the cutting lines of all sizes.
func (f DrawnPiece) outlines() []orb.Ring {
	var out []orb.Ring
	for _, d := range f.Sizes {
		out = append(out, d.Cutting)
	}
	return out
}

// keyLine is a line of the key: a sample and what it is.
type keyLine struct {
	pen   drawing.Pen
	words string
}

// key lists the sizes of a nested figure in the order of their lines, and the
// seam line.
func (f DrawnPiece) key() []keyLine {
	var out []keyLine
	for i, d := range f.Sizes {
		out = append(out, keyLine{LineOf(i), d.Piece.Size})
	}
	return append(out, keyLine{nestedSeamLine, "seam line of " + f.Sizes[f.Seams].Piece.Size})
}

// Around is an outline that holds every size: the cutting line of a single
// one, and of several that of their union or, where they do not hang together,
// their convex hull.
func (f DrawnPiece) Around() orb.Ring {
	if len(f.Sizes) == 1 {
		return f.Sizes[0].Cutting
	}
	return around(f.outlines())
}

// allSizes names a garment that is the same in all its sizes.
func allSizes(garment string) string {
	if garment == "" {
		return "all sizes"
	}
	return garment + ", all sizes"
}
