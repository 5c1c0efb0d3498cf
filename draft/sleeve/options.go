// Package sleeve drafts a one-piece set-in sleeve from the armhole lengths of
// a bodice. Lengths are millimetres.
package sleeve

// Options of a sleeve. The zero value is a full-length sleeve as the draft
// gives it.
type Options struct {
	// Ease is how much longer the sleeve head is than the armhole; nil takes
	// what the draft gives, about 15 mm.
	Ease *float64
	// HeadHeight is from the crown down to the bicep line; 0 takes a third of
	// the armhole less 1/2 in.
	HeadHeight float64
	// Length is from the crown to the lower edge; 0 takes the body's shoulder
	// to wrist, less the depth of a cuff.
	Length float64
	// WristWidth is the whole width of the wrist or hem edge; 0 takes the
	// bicep line in by a quarter on each side.
	WristWidth float64
	// Cuffed ends the sleeve in a seam for a cuff, in place of a hem.
	Cuffed bool
}
