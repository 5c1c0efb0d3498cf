package remnant

// Given is one thing that is given up so that a remnant may be enough. Its sentence is
// made where people read it.
type Given struct {
	Of Sacrifice
	// Pieces that it is about, by name.
	Pieces []string
	// Least that stays of an allowance, mm.
	Least float64
	// Garment that is shortened, and Part of it; no Part is all of it.
	Garment, Part string
	// Size that is made instead of Former.
	Size, Former string
	// By how much, mm, of what has a measure; Most it can be.
	By, Most float64
}

// Sacrifice is what kind of thing is given up.
type Sacrifice int

// The sacrifices, in the order of least harm.
const (
	// CloseLaying to the millimetre, so that hand laying takes nothing.
	CloseLaying Sacrifice = iota
	// StraightEnds are found to need no straightening.
	StraightEnds
	// LaidOpen instead of folded.
	LaidOpen
	// LowerAllowances of the seams.
	LowerAllowances
	// NarrowerHems by so much.
	NarrowerHems
	// Shorter garment by so much.
	Shorter
	// OnCrossGrain lies a piece.
	OnCrossGrain
	// CutInTwo is a piece, with a seam across its middle.
	CutInTwo
	// SeamForFold is where a piece was cut on the fold.
	SeamForFold
	// OtherCloth takes what does not show.
	OtherCloth
	// NapPerGarment lets each garment have the nap its own way.
	NapPerGarment
	// NapIgnored lets the pieces lie both ways of it.
	NapIgnored
	// SmallerSize than was asked for.
	SmallerSize
)

// String gives the word for programs; sacrifices of one kind share it.
func (s Sacrifice) String() string { return sacrifices[s] }

var sacrifices = [...]string{
	CloseLaying: "close laying", StraightEnds: "straight ends", LaidOpen: "open", LowerAllowances: "seam allowance",
	NarrowerHems: "hem", Shorter: "shorten", OnCrossGrain: "cross grain", CutInTwo: "join", SeamForFold: "join",
	OtherCloth: "facing", NapPerGarment: "nap", NapIgnored: "nap", SmallerSize: "size",
}
