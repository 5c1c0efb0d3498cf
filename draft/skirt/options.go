// Package skirt drafts skirts from the waist down: straight, A-line, gored,
// cut from a circle, in gathered tiers, and pleated.
//
// The darted skirt follows the tailored skirt of a handbook
// [source.AldrichFromMemory], its eases and shares made to suit every body; the
// others are common practice and geometry. Each point names its rule where it
// is set; how full the curves are drawn is our own choice. Lengths are
// millimetres. A piece is drawn hanging, its centre line on the left.
package skirt

// Shape of a skirt.
type Shape int

const (
	// Straight hangs straight down from the hip, with waist darts.
	Straight Shape = iota
	// ALine flares in a line from the hip, with waist darts.
	ALine
	// Gored is made of equal gores that flare from the hip, without darts.
	Gored
	// FullCircle is a whole ring.
	FullCircle
	// ThreeQuarterCircle is three quarters of a ring.
	ThreeQuarterCircle
	// HalfCircle is half a ring.
	HalfCircle
	// QuarterCircle is a quarter of a ring.
	QuarterCircle
	// Tiered is strips gathered one into the next.
	Tiered
	// KnifePleated is pleated all round, every pleat turned the same way.
	KnifePleated
	// BoxPleated is pleated all round, the pleats turned away from each other
	// two by two.
	BoxPleated
)

// Options of a skirt. The zero value is a straight skirt of the usual length.
type Options struct {
	Shape Shape
	// Length from the waist seam to the hem; UsualLength if 0.
	Length float64
	// WaistEase is added to the whole waist girth; 15 mm if 0.
	WaistEase float64
	// HipEase is added to the whole hip girth of a skirt that is drawn to the
	// hip; 40 mm if 0.
	HipEase float64
	// Vent opens the centre back of a straight skirt from the hem up.
	Vent bool
	// BackOnFold cuts the back of a straight or A-line skirt in one.
	BackOnFold bool
	// Flare is how far each side seam of an A-line or gored skirt runs out
	// from the hip to the hem; a ninth of that length if 0,
	// or nothing where the darts are closed into the hem.
	Flare float64
	// DartsIntoHem closes the darts of an A-line skirt, which opens its hem
	// instead: it has none at the waist.
	DartsIntoHem bool
	// Gores is the number of gores: 4, 6 or 8; 6 if 0.
	Gores int
	// Tiers is the number of tiers; 3 if 0.
	Tiers int
	// Fullness is how many times its finished length each tier is gathered
	// from; 1.5 if 0.
	Fullness float64
	// Pleats is the number of pleats; as many as make them 40 mm wide at the
	// hip (box pleats 80) if 0. It may be raised so that every panel has the
	// same number.
	Pleats int
	// PanelWidth is the most a panel may be wide, its seam lines laid flat: a
	// wider one is split into equal panels. 1000 mm for tiers and pleats if 0;
	// circles are then split only as their shape needs.
	PanelWidth float64
}

// Measures of the body that a skirt is drafted from: at its waist seam, which
// may lie below the natural waist.
type Measures struct {
	Waist, Hip, WaistToHip float64
	// Lowered is how far the waist seam lies below the natural waist, from
	// which the wearer gives her lengths.
	Lowered float64
	// FrontWaist is half the front waist seam of the bodice that a straight or
	// A-line skirt is sewn to, so that the side seams meet; 0 without.
	FrontWaist float64
}
