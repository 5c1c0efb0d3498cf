package lay

import (
	"ellwand/pieces"
)

// Bed is a rectangle of a lay in which the cloth lies in the same plies, in
// the frame of the lay.
type Bed struct {
	X, Y, Length, Width float64
	Plies               int
	// FoldLow and FoldHigh say that its lower or its upper edge is a fold.
	FoldLow, FoldHigh bool
	// OnCloth says where its plies lie on the open cloth, the lowest first.
	OnCloth []Ply
}

// Ply of a bed, or the half of one that a fold of its own brings there.
type Ply struct {
	// Upper says that it lies on another, right side down.
	Upper bool
	// Low and High bound it across the lay, mm: the bed has it at y between
	// them.
	Low, High float64
	// ToCloth brings a place of the lay to the open cloth, right side up: x
	// along the warp from the cut end, y across from the outer edge of the
	// selvedge nearest to the cutter.
	ToCloth pieces.Motion
}

// OffcutPlace is where an offcut lies in the row, along, mm.
type OffcutPlace struct {
	Name     string
	From, To float64
}
