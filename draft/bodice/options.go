// Package bodice drafts a front and a back bodice from body measurements.
//
// The construction is Ellwand's own, from common practice of flat pattern
// cutting; each point names its rule where it is set. How full the curves are
// drawn is our own choice. Lengths are millimetres. Both pieces are drawn with the centre line on the left, the
// waist line at the height 0.
package bodice

// Fit is how closely the bodice follows the body.
type Fit int

const (
	// Close fitting: 10 cm of ease across the bust.
	Close Fit = iota
	// Easy fitting: 14 cm.
	Easy
	// Shirt fitting: 18 cm, and a waist that hangs straight.
	Shirt
)

// Shaping is where the dart that shapes the bust lies.
type Shaping int

const (
	// SideDart lies in the side seam, below the armhole.
	SideDart Shaping = iota
	// ShoulderDart lies in the middle of the shoulder seam.
	ShoulderDart
	// ArmholeDart lies in the armhole, at the across front.
	ArmholeDart
	// NoDart shapes no bust: for men and children.
	NoDart
)

// Princess is where a seam over the bust point begins that takes up the bust
// and waist darts.
type Princess int

const (
	// NoPrincess has front and back in one, with darts.
	NoPrincess Princess = iota
	// FromShoulder begins it in the middle of the shoulder.
	FromShoulder
	// FromArmhole begins it in the armhole, at the across front and back.
	FromArmhole
)

// Method is what a bodice is drafted from.
type Method int

const (
	// Measured drafts it from all the measurements of the body.
	Measured Method = iota
	// Proportional drafts it from bust girth, waist girth and back neck point
	// to waist alone: its widths and its armhole are proportions of the bust.
	Proportional
)

// Options of a bodice. The zero value is a close fitting bodice with a side
// dart, waist darts and a centre back seam.
type Options struct {
	Method  Method
	Fit     Fit
	Shaping Shaping
	// Princess cuts front and back into a middle and a side panel each; the
	// bust dart then lies in that seam, whatever Shaping says.
	Princess Princess
	// Yoke cuts a yoke off the back so far below the back neck point, level;
	// 0 for none.
	Yoke float64
	// BustEase is added to the whole bust girth; 0 takes that of the fit.
	BustEase float64
	// WaistEase is added to the whole waist girth; 0 takes that of the fit.
	WaistEase float64
	// ArmholeDrop lowers the underarm beyond what the fit does.
	ArmholeDrop float64
	// StraightWaist lets the side seams hang straight, without waist darts.
	// A shirt always has it.
	StraightWaist bool
	// BackOnFold cuts the back in one, without a centre back seam.
	BackOnFold bool
	// NeckWiden takes so much off the shoulder beside the neck, front and
	// back. FrontNeckDrop and BackNeckDrop lower the neck at the centre lines.
	NeckWiden, FrontNeckDrop, BackNeckDrop float64
	// FrontOpening cuts the front in two, each with an extension beyond the
	// centre front for buttons and a facing that is folded back.
	FrontOpening bool
	// BackOpening does the same at the centre back.
	BackOpening bool
	// Extension is how far an opening reaches beyond its centre line; 0 takes
	// 20 mm.
	Extension float64
	// BelowWaist carries the bodice on below the waist by so much, with a hem;
	// 0 ends it in a waist seam. It reaches the hip at least.
	BelowWaist float64
	// HipEase is added to the whole hip girth below the waist; 0 takes half of
	// the bust ease.
	HipEase float64
}
