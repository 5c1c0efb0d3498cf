// Package cloth holds what is known of a cloth: its width and nap, its flaws, the
// repeat of its pattern, what it loses in the wash, and how it is sold.
//
// Lengths are millimetres.
package cloth

import (
	"slices"

	"ellwand/pieces/language"
	"ellwand/pieces/measure"
)

// Cloth is one cloth as the shop sells it.
type Cloth struct {
	Name string // "shell", "lining"
	// Width from edge to edge, selvedges included. Positive.
	Width float64
	// Selvedge is the strip along each edge that is not cut into. Not
	// negative; 10 mm is usual [source.CommonPractice].
	Selvedge float64
	Nap      Nap
	// PurchaseStep is what the shop rounds a purchase up to: 100 or 250 mm, 1/8 or
	// 1/4 yd. 0 leaves the length to buy as it is.
	PurchaseStep float64
	// Straighten is added to the length to buy for straightening both cut
	// ends, before rounding. 0 adds nothing; 20 to 50 mm in all is usual
	// [source.CommonPractice].
	Straighten float64
	// HandLaying is added to the length that the pieces take, since a hand lays
	// and chalks them less closely than they are reckoned. The zero value adds
	// nothing.
	HandLaying Addition
	// Safety is what the maker adds to the length to buy so as to be sure,
	// before rounding. The zero value adds nothing.
	Safety Addition
	// Minimum is the shortest length that the shop cuts, mm. 0 is none.
	Minimum float64
	// Gap is the least distance between two pieces, mm, for the blade or the
	// hand. Not negative. It is not kept from the edges, nor along a fold.
	Gap float64
	// Tilt is how far a grainline may deviate from where it should lie, as a
	// share: 0.02 is 2 cm on a metre. 0 to 0.05; 0.01 to 0.03 is tolerated on
	// cheap goods [source.CommonPractice]. A piece on the fold, or one that is
	// matched to a repeat, does not tilt.
	Tilt float64
	// Alike says that both sides of the cloth look alike, so that any piece
	// may be laid face down.
	Alike bool
	// OneWayPieces names pieces that point the same way (up the lay) even
	// where the cloth would let them be turned.
	OneWayPieces []string
	Shrinkage    Shrinkage
	Repeat       Repeat
	// Motif of the repeat that is centred on pieces.
	Motif Motif
	// Border print along one selvedge.
	Border Border
	// Flaws of the cloth, which no piece may touch.
	Flaws []Flaw
	// ByHand are pieces that a hand has laid, in several widths and lays.
	ByHand []HandLaid
	// Inches makes every sentence about this cloth give lengths in inches, and
	// areas in square yards.
	Inches bool
}

// rules that pieces of the cloth keep.
func (c Cloth) rules() []Rule { return []Rule{c.Border, c.Motif} }

// Plain is the cloth without its repeat, and what hangs on that.
func (c Cloth) Plain() Cloth {
	c.Repeat, c.Motif = Repeat{}, Motif{}
	return c
}

// Say prints a length in mm for a message.
func (c Cloth) Say(mm float64) string {
	if c.Inches {
		return measure.Length(mm).Format(measure.Inch)
	}
	return measure.Length(mm).Format(measure.Centimetre)
}

// Nap says how the pile, print or shading of a cloth binds the pieces to one
// direction of the warp, in the terms of [source.CarrLatham].
type Nap int

const (
	// EitherWay lets each piece be turned end for end.
	EitherWay Nap = iota
	// OneWay makes all pieces point the same way along the warp.
	OneWay
	// OneWayPerGarment makes all pieces of a garment point the same way;
	// garments may oppose each other.
	OneWayPerGarment
)

// naps in the order of the constants, as the trade says them.
var naps = []string{"either way", "one way", "one way per garment"}

var germanNaps = []string{"in beiden Richtungen", "in einer Richtung", "je Stück in einer Richtung"}

// In gives the term in a language.
func (n Nap) In(l language.Language) string {
	if l != language.German || n < EitherWay || n > OneWayPerGarment {
		return n.String()
	}
	return germanNaps[n]
}

// String gives the term of the trade: "either way", "one way" or "one way
// per garment".
func (n Nap) String() string {
	if n < EitherWay || n > OneWayPerGarment {
		return "unknown"
	}
	return naps[n]
}

// Words for the naps, in the order of the constants; the first is the usual
// one.
func (Nap) Words() []string { return naps }

// NapOf is the nap as it binds the piece of that name.
func (c Cloth) NapOf(piece string) Nap {
	if slices.Contains(c.OneWayPieces, piece) {
		return OneWay
	}
	return c.Nap
}

// WidthLaid is the width of the cloth from edge to edge as it is when it is
// laid, mm.
func (c Cloth) WidthLaid() float64 {
	if c.Shrinkage.CutFirst {
		return c.Width
	}
	return float64(c.Width * (1 - c.Shrinkage.Weft))
}
