// Package part drafts the smaller pieces of a garment: collar, facings, cuff,
// waistband and skirt panels, from the lengths of the seams that they join.
// Lengths are millimetres.
package part

// Kind of a part.
type Kind string

const (
	// Collar is a straight collar, half on the fold, two cut.
	Collar Kind = "collar"
	// NeckFacing is a front and a back facing, drawn from the neck edges.
	NeckFacing Kind = "neck facing"
	// Cuff is a straight cuff folded double, a pair.
	Cuff Kind = "cuff"
	// Waistband is a straight band folded double.
	Waistband Kind = "waistband"
	// ShapedWaistband is a curved band whose upper edge lies at the natural
	// waist, and whose lower edge fits a waist seam that much below it.
	ShapedWaistband Kind = "shaped waistband"
	// GatheredSkirt is a front and a back panel, gathered into the waist.
	GatheredSkirt Kind = "gathered skirt"
	// StraightPanel is a rectangle of a given width and length.
	StraightPanel Kind = "straight panel"
)

// Kinds lists every kind of part.
func Kinds() []Kind {
	return []Kind{Collar, NeckFacing, Cuff, Waistband, ShapedWaistband, GatheredSkirt, StraightPanel}
}

// Options of a part. What is 0 or empty takes the usual value of the kind.
type Options struct {
	Kind Kind
	// Name of the piece, in place of the kind.
	Name string
	// Cloth it is cut from; the garment's if empty.
	Cloth string
	// Depth is the finished depth of a collar (70 mm), facing (60), cuff (60)
	// or waistband (30; shaped 50), or the finished length of a skirt or panel.
	Depth float64
	// Length is the finished length along the seam. It is worked out from the
	// body and the bodice if 0; a straight panel must have it.
	Length float64
	// Fullness is how many times its finished length a skirt's cloth is
	// gathered from; 2 if 0, 1.5 to 3 is usual.
	Fullness float64
}
