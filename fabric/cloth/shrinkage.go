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

// Shrinkage reckoned for a cloth of this fibre. Cloth that is wetted first shrinks by
// the most that is usual, so that what is bought is enough; pieces of cloth that is cut
// first are enlarged by the mean.
func (f Fibre) Shrinkage(cutFirst bool) Shrinkage {
	least, most := f.Shrinks()
	warp := most
	if cutFirst {
		warp = (least + most) / 2
	}
	return Shrinkage{Warp: warp, Weft: float64(weftShare * warp), CutFirst: cutFirst, Of: f}
}

// Least is the shrinkage where the cloth loses the least that is usual of its fibre; of
// shares that the maker gives, the same.
func (s Shrinkage) Least() Shrinkage {
	if s.Of == UnknownFibre {
		return s
	}
	s.Warp, _ = s.Of.Shrinks()
	s.Weft = weftShare * s.Warp
	return s
}

// weftShare of what is lost along the warp is lost across, in the weft
// [source.CommonPractice].
const weftShare = 0.5
