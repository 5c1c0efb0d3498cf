// Package sheet prints pieces full size, on as many sheets of paper as they
// need, to be joined by their marks.
//
// Lengths are millimetres. Everything lies on one large plane, x to the
// right, y down; the plane is cut into tiles, each of which is a sheet.
package sheet

import (
	"fmt"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
)

// Figure is a piece as it is drawn full size, in one size or in several that
// are nested in each other.
type Figure struct {
	// Sizes of the piece, at least one, the smallest first.
	Sizes []Drawn
	// Label is written on the piece, its first line bold.
	Label []string
	// Inches gives widths of allowances in inches instead of cm.
	Inches bool
}

// Drawn is a piece with its cutting line, both in the same frame.
type Drawn struct {
	Piece   pieces.Piece
	Cutting orb.Ring // closed
}

// tolerance of the cutting line against the true one, mm.
const tolerance = 0.03

// NewFigure draws a piece as it stands, in its own frame; several must be the
// same piece in several sizes, the smallest first, and lie on each other as
// they were drafted. Of a piece cut on the fold it is the half. The error is
// that of a piece that is not sound (see pieces.Piece.Check).
func NewFigure(sizes ...pieces.Piece) (Figure, error) {
	if len(sizes) == 0 {
		return Figure{}, fmt.Errorf("there is no piece to print")
	}
	var f Figure
	for _, p := range sizes {
		if err := p.Check(); err != nil {
			return Figure{}, err
		}
		ring, err := p.CuttingOutline(tolerance)
		if err != nil {
			return Figure{}, err
		}
		f.Sizes = append(f.Sizes, Drawn{p, ring})
	}
	smallest := sizes[0]
	if len(sizes) > 1 {
		smallest.Size = ""
	}
	f.Label = drawing.LabelLines(smallest)
	return f, nil
}

// Map moves the figure with everything on it.
func (f Figure) Map(m pieces.Motion) Figure {
	out := f
	out.Sizes = nil
	for _, d := range f.Sizes {
		ring := make(orb.Ring, len(d.Cutting))
		for i, p := range d.Cutting {
			ring[i] = m.Apply(p)
		}
		out.Sizes = append(out.Sizes, Drawn{d.Piece.Map(m), ring})
	}
	return out
}

// outlines are the cutting lines of all sizes.
func (f Figure) outlines() []orb.Ring {
	var out []orb.Ring
	for _, d := range f.Sizes {
		out = append(out, d.Cutting)
	}
	return out
}

// Draw puts the figure on the plane. It must have been brought there by a
// motion that turns y down; otherwise the piece comes out mirrored. Several
// sizes differ in the dashes of their cutting lines and darts; instead of
// their seam lines, which would cross each other, the widths of the allowances
// are given.
func (f Figure) Draw(on *drawing.Picture) {
	single := len(f.Sizes) == 1
	for i, d := range f.Sizes {
		one := figure{on, d.Piece, d.Cutting}
		one.cutting(LineOf(i), i == 0)
		if single {
			one.seam()
		} else {
			one.sizeNames(i)
		}
		one.notches()
		dart := dartLine
		if !single {
			dart.Dashes = LineOf(i).Dashes
		}
		one.darts(dart, single)
		if i == 0 {
			one.marks()
			one.grain()
			if !single {
				one.allowances(f.Inches)
			}
		}
	}
	smallest := figure{on, f.Sizes[0].Piece, f.Sizes[0].Cutting}
	smallest.label(f.Label, f.key())
}

// key lists the sizes of a nested figure in the order of their lines.
func (f Figure) key() []string {
	if len(f.Sizes) == 1 {
		return nil
	}
	var out []string
	for _, d := range f.Sizes {
		out = append(out, d.Piece.Size)
	}
	return out
}

// Around is an outline that holds every size: the cutting line of a single
// one, and of several that of their union or, where they do not hang together,
// their convex hull.
func (f Figure) Around() orb.Ring {
	if len(f.Sizes) == 1 {
		return f.Sizes[0].Cutting
	}
	return around(f.outlines())
}
