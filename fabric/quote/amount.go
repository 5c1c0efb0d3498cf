package quote

import (
	"math"
	"strings"

	"ellwand/fabric/plan"
	"ellwand/fabric/purchase"
)

// Found is a lay that was found for some pieces.
type Found struct {
	Lay string // "open"
	// Taken is the length of cloth that the pieces take, and Bound a length
	// that no layout of them can beat, mm.
	Taken, Bound float64
	// Density is the marker efficiency, 0 to 1.
	Density float64
	// Kept says that it rests on what an earlier search with another seed or effort
	// found.
	Kept bool
	// Mark of the lay, by which its plan is known; may be empty.
	Mark string
}

// FoundIn takes the recommended lay of a requirement; its bound is one that no
// lay that was tried can beat.
func FoundIn(need plan.Requirement) Found {
	chosen := need.Lays[need.Chosen]
	out := Found{Lay: chosen.Lay.String(), Taken: need.Length, Bound: chosen.Least(), Density: chosen.Density,
		Mark: chosen.Mark}
	for _, p := range need.Lays {
		if p.Possible() {
			out.Bound = math.Min(out.Bound, p.Least())
		}
	}
	return out
}

// AboveEach raises the bound to the highest of those of single garments: no lay of all
// of them is shorter than one of them takes.
func (f Found) AboveEach(alone []Found) Found {
	for _, single := range alone {
		f.Bound = math.Max(f.Bound, math.Min(single.Bound, f.Taken))
	}
	return f
}

// Amount is how much of a cloth to buy, and what that rests on. All in mm;
// Buy is the sum of Taken and what is added to it.
type Amount struct {
	Found
	HandLaying float64 // laid and chalked by hand, less closely than reckoned
	Straighten float64 // for both cut ends
	Shrinkage  float64 // lost when the cloth is wetted before it is cut
	Safety     float64 // as the maker sets it
	Rounding   float64 // up to the step of the shop
	Minimum    float64 // up to the least that the shop cuts
	Buy        float64
	// Never is a length, as it is before it is wetted, that the pieces cannot be
	// cut from: the bound with the straightening and what it loses itself.
	// Neither hand laying nor safety nor the rounding of a shop make it longer.
	Never float64
}

// AmountOf reckons how much of an offer to buy for a lay that was found.
func AmountOf(offer Offer, found Found) Amount {
	c := offer.Cloth
	out := Amount{Found: found, HandLaying: c.HandLaying.Of(found.Taken), Straighten: c.Straighten}
	dry := found.Taken + out.HandLaying + out.Straighten
	out.Shrinkage = purchase.BeforeWetting(c.Shrinkage, dry) - dry
	out.Never = purchase.BeforeWetting(c.Shrinkage, found.Bound+out.Straighten)
	out.Safety = c.Safety.Of(dry + out.Shrinkage)
	need := out.Need()
	out.Buy = purchase.RoundUp(c, need)
	c.Minimum = 0
	rounded := purchase.RoundUp(c, need)
	out.Rounding, out.Minimum = rounded-need, out.Buy-rounded
	return out
}

// Need is the length that is wanted before the shop rounds it, mm.
func (a Amount) Need() float64 { return a.Taken + a.HandLaying + a.Straighten + a.Shrinkage + a.Safety }

// RestsOn says what the amount rests on, in one line: "laid open in 1.82 m
// (never below 1.61 m), hand laying 3.6 cm, straightening 3 cm, safety 9 cm, rounding 6 cm".
func (a Amount) RestsOn(units Units) string {
	laid := "laid " + a.Lay + " in " + units.Long(a.Taken)
	if a.Bound > 0 { // of pieces that are only approximate nothing is proven
		laid += " (never below " + units.AtLeast(a.Bound) + ")"
	}
	parts := []string{laid}
	for _, part := range a.Components()[1:] {
		if part.Length >= leastComponent {
			parts = append(parts, part.Component.String()+" "+units.Short(part.Length))
		}
	}
	return strings.Join(parts, ", ")
}

// Components of the amount, all of them, in the order in which they are added.
func (a Amount) Components() []ComponentLength {
	return []ComponentLength{
		{ByLay, a.Taken}, {ByHand, a.HandLaying}, {ByEnds, a.Straighten}, {ByWash, a.Shrinkage}, {BySafety, a.Safety},
		{ByStep, a.Rounding}, {ByMinimum, a.Minimum},
	}
}
