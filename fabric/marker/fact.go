package marker

// fact of a plan, as its title has it.
type fact struct {
	of    factKind
	value string
}

// name of the fact on paper.
func (f fact) name() string { return factNames[f.of] }

// factKind is what a fact is about.
type factKind int

const (
	ofClothWidth factKind = iota
	ofUsableWidth
	ofPlies
	ofNap
	ofLength
	ofAmount
	ofRemnant
	ofRemnants
	ofEfficiency
	ofBound
	ofScale
	ofMark
)

var factNames = [...]string{
	ofClothWidth: "cloth width", ofUsableWidth: "usable width", ofPlies: "plies", ofNap: "nap", ofLength: "pieces take",
	ofAmount: "to buy", ofRemnant: "remnant", ofRemnants: "remnants", ofEfficiency: "efficiency",
	ofBound: "bound (no lay is shorter)", ofScale: "scale", ofMark: "mark of this lay",
}
