package quote

import (
	"slices"

	"ellwand/fabric/cloth"
	"ellwand/fabric/purchase"
	"ellwand/nest/portable"
)

// Unknown is what an amount rests on and nobody has measured.
type Unknown int

const (
	// Measures of the body that were derived from others.
	Measures Unknown = iota
	// TrueWidth of the cloth, which a shop gives in round figures.
	TrueWidth
	// Washing is how much of the usual shrinkage of its fibre the cloth loses.
	Washing
	// Searching longer might find a shorter lay.
	Searching
)

// unknowns in the order of the constants, as programs read them.
var unknowns = [...]string{
	Measures: "derived measurements", TrueWidth: "width", Washing: "shrinkage", Searching: "search",
}

// String names it: "derived measurements".
func (u Unknown) String() string { return unknowns[u] }

// Doubt is by how much the length that the pieces take may be less or more for
// something unknown, as shares of it. Not negative.
type Doubt struct {
	Of         Unknown
	Less, More float64
}

// Range is between which lengths the amount may prove to lie, both as a shop sells
// them, mm. Low is no more than the amount to buy, and High no less.
type Range struct {
	Low, High float64
	// Doubts that it is made from: those that are not nothing.
	Doubts []Doubt
}

// RangeOf an amount of a cloth. The doubts are independent of each other, so that
// their shares are added as the sides of a right angle [source.OwnChoice].
func RangeOf(c cloth.Cloth, a Amount, doubts ...Doubt) Range {
	out := Range{Doubts: slices.DeleteFunc(doubts, func(d Doubt) bool { return d.Less <= 0 && d.More <= 0 })}
	var less, more float64
	for _, d := range out.Doubts {
		less, more = portable.Hypot(less, d.Less), portable.Hypot(more, d.More)
	}
	c.Safety = cloth.Addition{} // which is there to cover the doubts
	out.Low = purchase.RoundUp(c, purchase.Need(c, float64(a.Taken*(1-min(less, 1)))))
	out.High = purchase.RoundUp(c, purchase.Need(c, float64(a.Taken*(1+more))))
	out.Low, out.High = min(out.Low, a.Buy), max(out.High, a.Buy)
	return out
}

// How far from the truth the usual figures may be [source.OwnChoice].
const (
	// widthOff is by how much a cloth may be wider or narrower than the shop says, mm:
	// widths are sold in round figures, and the selvedges draw in.
	widthOff = 10
	// foundLess is how much shorter a search that was cut short or asked for little
	// may leave the lay; quickLess that of a quick one.
	foundLess = 0.15
	quickLess = 0.08
)

// usualLess is how much shorter than the usual effort found a lay has ever been found
// on the example jobs [source.Measured].
const usualLess = 0.04

// WidthDoubt of a cloth whose width was not measured: the length goes as the usable
// width, mm.
func WidthDoubt(c cloth.Cloth) Doubt {
	usable := c.Width - 2*c.Selvedge
	if usable <= 2*widthOff {
		return Doubt{Of: TrueWidth}
	}
	return Doubt{TrueWidth, widthOff / (usable + widthOff), widthOff / (usable - widthOff)}
}

// WashDoubt of a cloth that is wetted first and shrinks as its fibre: where it loses
// the least that is usual, more of its length and of its width is left.
func WashDoubt(c cloth.Cloth) Doubt {
	s := c.Shrinkage
	if s.CutFirst {
		return Doubt{Of: Washing}
	}
	least := s.Least()
	return Doubt{Washing, s.Warp - least.Warp + s.Weft - least.Weft, 0}
}

// Searched says how much work went into a search.
type Searched int

const (
	// Briefly is with less than a quick effort, or cut short.
	Briefly Searched = iota
	// Quickly is with the quick effort.
	Quickly
	// Fully is with the usual effort or a longer one.
	Fully
)

// SearchDoubt of a lay that was found: none can be below its bound.
func SearchDoubt(found Found, searched Searched) Doubt {
	less := [...]float64{Briefly: foundLess, Quickly: quickLess, Fully: usualLess}[searched]
	if found.Taken <= 0 {
		return Doubt{Of: Searching}
	}
	return Doubt{Searching, min(less, max(0, 1-found.Bound/found.Taken)), 0}
}
