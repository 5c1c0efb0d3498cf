package pieces

// Kind says what a piece is to its garment, whatever its name and its cloth.
type Kind int

const (
	// Shell is a piece of the garment itself, which shows.
	Shell Kind = iota
	// Facing is turned to the inside along an edge that it neatens.
	Facing
	// Lining lies inside the shell.
	Lining
	// Interfacing stiffens a piece from between it and its facing or lining.
	Interfacing
)

// kinds in words.
var kinds = [...]string{Shell: "shell", Facing: "facing", Lining: "lining", Interfacing: "interfacing"}

// Words for the kinds, in the order of the constants: as files name them. The
// first is the usual one.
func (Kind) Words() []string { return kinds[:] }

// String names the kind in a word.
func (k Kind) String() string { return kinds[k] }

// Shows says that the piece can be seen on the garment as it is worn.
func (k Kind) Shows() bool { return k == Shell }

// GrainLie says how the grainline lies on the cloth.
type GrainLie int

const (
	// StraightGrain lies along the warp.
	StraightGrain GrainLie = iota
	// CrossGrain lies along the weft.
	CrossGrain
	// Bias lies at 45 degrees to both.
	Bias
	// EitherGrain lies along the warp or along the weft, as takes less cloth.
	EitherGrain
)

// lies in words.
var lies = [...]string{StraightGrain: "straight", CrossGrain: "cross", Bias: "bias", EitherGrain: "either"}

// Words for the grain, in the order of the constants: as files name them. The
// first is the usual one.
func (GrainLie) Words() []string { return lies[:] }

// String names the lie of the grainline in a word.
func (l GrainLie) String() string { return lies[l] }
