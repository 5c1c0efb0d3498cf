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

// KindNames lists the kinds in words, in the order of the constants: as files
// name them.
func KindNames() []string { return []string{"shell", "facing", "lining", "interfacing"} }

// String names the kind in a word.
func (k Kind) String() string { return KindNames()[k] }

// Shows says that the piece can be seen on the garment as it is worn.
func (k Kind) Shows() bool { return k == Shell }
