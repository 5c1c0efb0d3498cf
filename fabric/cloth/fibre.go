package cloth

// Fibre is what a cloth is made of, as far as its shrinkage goes.
type Fibre int

const (
	// UnknownFibre shrinks as the maker says.
	UnknownFibre Fibre = iota
	// Cotton, and those after it, shrink as fibres has it.
	Cotton
	Linen     // as fibres has it
	Viscose   // as fibres has it
	Wool      // as fibres has it
	Polyester // as fibres has it
)

// fibres with the shares lost in the first wash, along the warp, from the least to the
// most [source.CommonPractice].
var fibres = [...]struct {
	name        string
	least, most float64
}{
	UnknownFibre: {"unknown", 0, 0},
	Cotton:       {"cotton", 0.03, 0.05},
	Linen:        {"linen", 0.04, 0.05},
	Viscose:      {"viscose", 0.04, 0.08},
	Wool:         {"wool", 0.02, 0.04},
	Polyester:    {"polyester", 0, 0.01},
}

// String names the fibre: "cotton".
func (f Fibre) String() string {
	if f < UnknownFibre || int(f) >= len(fibres) {
		return fibres[UnknownFibre].name
	}
	return fibres[f].name
}

// Words for the fibres, in the order of the constants.
func (Fibre) Words() []string {
	out := make([]string, len(fibres))
	for i, fibre := range fibres {
		out[i] = fibre.name
	}
	return out
}

// Shrinks gives the shares lost along the warp in the first wash, from the least to
// the most; both 0 of an unknown fibre.
func (f Fibre) Shrinks() (least, most float64) {
	if f < UnknownFibre || int(f) >= len(fibres) {
		return 0, 0
	}
	return fibres[f].least, fibres[f].most
}
