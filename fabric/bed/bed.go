// Package bed is the geometry of beds: the rectangles of a lay in which the cloth
// lies alike throughout, where their folds are, and where each ply lies on the open
// cloth. What proves a lay opens it out by code of its own.
//
// Lengths are millimetres.
package bed

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/nest/layout"
)

// Bed is a rectangle of a lay in which the cloth lies alike throughout: one
// problem of plain geometry. Most lays are a single bed; one with a selvedge
// folded in has two side by side, one in stretches two after each other. This
// file is the one place where the way of folding becomes geometry.
type Bed struct {
	Kind  lay.Kind // Open, FoldedAlong, FoldedAcross, CutAcross or BothSelvedgesIn
	Width float64  // usable: y runs from 0 to width
	// at is where the bed begins in the frame of the whole lay.
	At orb.Point
	// v is where its y = 0 lies on the open cloth, across, from the inner
	// edge of the selvedge nearest to the cutter.
	V float64
	// before is the length of cloth that the stretches before it take.
	Before float64
	// lost is what flaws take of the width, below y = 0 and above the width,
	// for the whole length.
	LostLow, LostHigh float64
	// Shared says that the lay has another bed, solved by itself, whose pieces must
	// point the same way.
	Shared bool
	// PointBack says that what goes one way points to the cut end here, and not away
	// from it.
	PointBack bool
}

// Plies of the bed: one or two.
func (b Bed) Plies() int { return b.Kind.Plies() }

// Room is the width across that one piece may take.
func (b Bed) Room(c cloth.Cloth) float64 {
	if b.Kind == lay.BothSelvedgesIn {
		return b.Width/2 - MiddleStrip(c)
	}
	return b.Width
}

// MiddleStrip is what is kept off, on either side, where two edges of the
// cloth meet: the selvedge, or of a cloth that may be used to its very edge
// the width of a chalk line.
func MiddleStrip(c cloth.Cloth) float64 { return math.Max(c.Selvedge, 0.5) }

// FoldPins are the edges of the bed that are folds.
func (b Bed) FoldPins() []layout.Pin {
	switch b.Kind {
	case lay.FoldedAlong:
		return []layout.Pin{layout.PinLow}
	case lay.BothSelvedgesIn:
		return []layout.Pin{layout.PinLow, layout.PinHigh}
	}
	return nil
}

// FoldClear is how far from y = 0 and from the width of the bed everything lies that
// is not on a fold there: half of the gap, as the ply beyond the fold does.
func (b Bed) FoldClear(c cloth.Cloth) (low, high float64) {
	for _, pin := range b.FoldPins() {
		switch pin {
		case layout.PinLow:
			low = c.Gap / 2
		case layout.PinHigh:
			high = c.Gap / 2
		}
	}
	return low, high
}

// SecondLength is where, along the cloth, the upper length of a cloth cut
// across begins: behind the gap, at a whole number of repeats, so that both plies
// match.
func SecondLength(c cloth.Cloth, length float64) float64 {
	begin := length + c.Gap
	if c.Repeat.Along == 0 {
		return begin
	}
	return float64(math.Ceil(begin/c.Repeat.Along-1e-9) * c.Repeat.Along)
}

// Taken is the length of cloth that a bed of that length takes.
func (b Bed) Taken(c cloth.Cloth, length float64) float64 {
	switch b.Kind {
	case lay.FoldedAcross:
		return 2*length + c.Gap
	case lay.CutAcross:
		return length + SecondLength(c, length)
	}
	return length
}

// LengthWithin is the greatest length of a bed of that kind, alone in its lay, that
// takes no more than a length of cloth. Negative when there is none.
func LengthWithin(c cloth.Cloth, kind lay.Kind, taken float64) float64 {
	r := c.Repeat.Along
	switch {
	case !kind.IsAcross():
		return taken
	case kind == lay.FoldedAcross || r == 0:
		return (taken - c.Gap) / 2
	}
	repeats := math.Floor((taken + c.Gap) / 2 / r)
	return math.Max(float64(repeats*r)-c.Gap, taken-float64((repeats+1)*r))
}

// AcrossPlies is how many times the length on the table is taken.
func AcrossPlies(kind lay.Kind) float64 {
	if kind.IsAcross() {
		return 2
	}
	return 1
}

// MirrorsAcross reports whether the upper ply has the lower one mirrored
// across. Folded across the weft it is mirrored along: both plies have a place
// across at the same distance from their selvedge.
func (b Bed) MirrorsAcross() bool { return b.Plies() == 2 && b.Kind != lay.FoldedAcross }

// MirrorLine is the y of the bed about which the upper ply mirrors the lower
// across.
func (b Bed) MirrorLine() float64 {
	if b.Kind == lay.CutAcross {
		return b.Width / 2
	}
	return 0
}

// UsableWidth of the cloth in this lay, in mm, as it is when it is laid: the
// width less both selvedges; folded along, half of the width less one
// selvedge (the fold needs none); with both selvedges to the middle, half of
// the width. With one selvedge folded in it depends on how far, and is that
// of the open cloth here.
func UsableWidth(l lay.Kind, c cloth.Cloth) float64 {
	width := c.WidthLaid()
	switch l {
	case lay.FoldedAlong:
		return width/2 - c.Selvedge
	case lay.BothSelvedgesIn:
		return width / 2
	}
	return width - 2*c.Selvedge
}
