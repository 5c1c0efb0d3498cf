package fabric

// Lay is how the cloth is spread for cutting.
type Lay int

const (
	// Open is a single ply, right side up. y = 0 is the inner edge of the
	// selvedge nearest to the cutter, y = LayPlan.Width that of the far one.
	Open Lay = iota
	// FoldedAlong is folded along the warp, right sides together and
	// selvedges together: two plies. y = 0 is the fold, y = LayPlan.Width the
	// inner edge of the two selvedges.
	FoldedAlong
)

// lays in the order of the constants, as the trade says them.
var lays = []string{"open", "folded along the warp"}

// String gives the name of the lay: "open" or "folded along the warp".
func (l Lay) String() string { return termOf(lays, int(l)) }

// Plies of cloth that lie on each other: 1 or 2.
func (l Lay) Plies() int {
	if l == FoldedAlong {
		return 2
	}
	return 1
}

// UsableWidth of the cloth in this lay, in mm: the width less both selvedges,
// or, folded, half of the width less one selvedge (the fold needs none).
func (l Lay) UsableWidth(cloth Cloth) float64 {
	if l == FoldedAlong {
		return cloth.Width/2 - cloth.Selvedge
	}
	return cloth.Width - 2*cloth.Selvedge
}
