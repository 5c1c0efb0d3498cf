// Package sleeve drafts a sleeve to the armholes of a bodice. Its head is solved
// from what a sleeve must satisfy: under the arm it follows the armhole's own
// curve, it is level at the crown, square to the underarm seams, smooth all the
// way, and longer than the armhole by its ease. Lengths are millimetres.
package sleeve

// Style of a sleeve: one of those of styles.go.
type Style int

// Reach is how far down the arm a sleeve goes when its length is not given.
type Reach int

const (
	// Full goes to the wrist.
	Full Reach = iota
	// Elbow ends at the elbow line.
	Elbow
	// Short ends halfway between underarm and elbow.
	Short
)

// Options of a sleeve. The zero value is a full-length sleeve with the usual
// head of its style.
type Options struct {
	// Ease is how much longer the sleeve head is than the armhole; nil takes the
	// usual share of the style's Norm.
	Ease *float64
	// HeadHeight is from the crown down to the bicep line; 0 takes the usual share
	// of the armhole's depth, or as near to it as suits the arm.
	HeadHeight float64
	// BicepEase is how much longer than the upper arm girth the bicep line is; 0
	// takes what the usual head height gives, within the limits of the style.
	BicepEase float64
	// Length is from the crown to the lower edge; 0 takes the body's shoulder
	// to wrist, less the depth of a cuff.
	Length float64
	// WristWidth is the whole width of the wrist or hem edge; 0 takes the
	// bicep line in by a quarter on each side.
	WristWidth float64
	Style      Style
	Reach      Reach
	// HeadFullness is how many times as long as the armhole the head is between
	// the notches, gathered into it there; 0 for a head that is not gathered. 1.2
	// to 2 is usual.
	HeadFullness float64
	// HemFullness is how many times its width in the draft the lower edge is,
	// gathered into a cuff or a band; 0 for one that is not gathered.
	HemFullness float64
	// Cuffed ends the sleeve in a seam for a cuff, in place of a hem.
	Cuffed bool
}
