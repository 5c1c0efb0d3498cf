package quote

// Part is what a length to buy is the sum of.
type Part int

// The parts, in the order in which they are added.
const (
	// ByLay is what the pieces take.
	ByLay Part = iota
	// ByHand is for laying and chalking by hand, ByEnds for straightening the cut
	// ends, ByWash for what the cloth loses in its first wash.
	ByHand
	ByEnds
	ByWash
	// BySafety is what the maker adds to be sure.
	BySafety
	// ByStep rounds up to the step of the shop, ByMinimum to the least that it cuts.
	ByStep
	ByMinimum
)

// parts in the order of the constants.
var parts = [...]string{
	ByLay: "the lay", ByHand: "hand laying", ByEnds: "straightening", ByWash: "shrinkage", BySafety: "safety",
	ByStep: "rounding", ByMinimum: "the shop's minimum",
}

// String names the part: "hand laying".
func (p Part) String() string { return parts[p] }

// PartLength is a part with its length, mm.
type PartLength struct {
	Part   Part
	Length float64
}

// leastPart is worth a word, mm [source.OwnChoice].
const leastPart = 0.5
