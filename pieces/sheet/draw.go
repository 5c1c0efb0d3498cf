package sheet

import "ellwand/pieces/drawing"

// Draw puts the figure on the plane. It must have been brought there by a
// motion that turns y down; otherwise the piece comes out mirrored. Several
// sizes differ in the dashes of their cutting lines and darts; one of them has
// its seam lines, since those of all would cross, and the widths of the
// allowances are given. Lines come first, so that words keep off them.
func (f Figure) Draw(on *drawing.Picture) {
	name := f.Sizes[0].Piece.Name
	if len(f.Sizes) == 1 {
		on.Group(name, f.single())
		return
	}
	on.Group(name, f.nest())
}

func (f Figure) single() *drawing.Picture {
	one := figure{&drawing.Picture{}, f.Sizes[0].Piece, f.Sizes[0].Cutting}
	one.cutting(LineOf(0))
	one.seam(seamLine)
	one.notches()
	one.darts(dartLine, true)
	one.marks()
	one.grain()
	one.names()
	one.label(f.Label, nil, f.Beneath)
	return one.Picture
}

// nest draws several sizes, the cutting line of each in a picture of its own
// until its name stands on it.
func (f Figure) nest() *drawing.Picture {
	shared := figure{&drawing.Picture{}, f.Sizes[0].Piece, f.Sizes[0].Cutting}
	var all []figure
	for i, d := range f.Sizes {
		one := figure{&drawing.Picture{}, d.Piece, d.Cutting}
		one.cutting(LineOf(i))
		all = append(all, one)
		dart := dartLine
		dart.Dashes = LineOf(i).Dashes
		one.Picture = shared.Picture
		one.shortNotches()
		one.darts(dart, false)
		if i == f.Seams {
			one.seam(nestedSeamLine)
		}
	}
	shared.marks()
	shared.grain()
	for i := range all {
		f.sizeNames(all, shared, i)
	}
	whole := figure{&drawing.Picture{}, shared.piece, shared.ring}
	for _, one := range all {
		whole.Add(one.Picture)
	}
	whole.Add(shared.Picture)
	whole.names()
	whole.allowances(f.Inches)
	whole.label(f.Label, f.key(), f.Beneath)
	return whole.Picture
}
