package cloth

// Shrinkage is what a cloth loses in its first wash. The zero value loses
// nothing.
type Shrinkage struct {
	// Warp and Weft are the shares lost along and across: 0.04 is 4 %. 0 to
	// 0.3; 0 to 0.08 in the warp, and about half of it in the weft, is usual
	// [source.CommonPractice].
	Warp, Weft float64
	// CutFirst says that the cloth is cut as it is and washed later, so that
	// the pieces are cut larger. Otherwise the cloth is wetted first: more is
	// bought, and the pieces are laid on what is left of its width.
	CutFirst bool
	// Of is the fibre that the shares are usual of; unknown where the maker gives
	// them.
	Of Fibre
}
