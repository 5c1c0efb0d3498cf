package quote

// Component is what a length to buy is the sum of.
type Component int

// The components, in the order in which they are added.
const (
	// ByLay is what the pieces take.
	ByLay Component = iota
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

// components in the order of the constants.
var components = [...]string{
	ByLay: "the lay", ByHand: "hand laying", ByEnds: "straightening", ByWash: "shrinkage", BySafety: "safety",
	ByStep: "rounding", ByMinimum: "the shop's minimum",
}

// String names the component: "hand laying".
func (p Component) String() string { return components[p] }

// ComponentLength is a component with its length, mm.
type ComponentLength struct {
	Component Component
	Length    float64
}

// leastComponent is worth a word, mm [source.OwnChoice].
const leastComponent = 0.5
