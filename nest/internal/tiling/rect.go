package tiling

// Rect is a rectangle to lay. Its size is along x and y as it lies unturned;
// Turns says which ways are allowed.
type Rect struct {
	X, Y float64
	Turns
}

// Turns says how a rectangle may lie.
type Turns int

const (
	// Upright allows X along x only.
	Upright Turns = iota
	// Quarter allows Y along x only.
	Quarter
	// Both allows either.
	Both
)

// Position is where a rectangle lies: its corner of least x and y, and
// whether it is turned by a quarter, so that its Y runs along x.
type Position struct {
	X, Y    float64
	Quarter bool
}

// Outcome says what is known after the search.
type Outcome int

const (
	// GaveUp means that the budget ran out: a tiling may exist or not.
	GaveUp Outcome = iota
	// Tiled means that a tiling was found.
	Tiled
	// None means that there is no tiling.
	None
)

// Accuracy is the relative tolerance for sides that are to add up.
const Accuracy = 1e-9
