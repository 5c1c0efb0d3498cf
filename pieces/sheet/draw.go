package sheet

import "ellwand/pieces/drawing"

// Draw puts the figure on the plane. It must have been brought there by a
// motion that turns y down; otherwise the piece comes out mirrored. Several
// sizes differ in the dashes of their cutting lines and darts; one of them has
// its seam lines, since those of all would cross, and the widths of the
// allowances are given. Lines come first, so that words keep off them.
func (f DrawnPiece) Draw(on *drawing.Picture) {
	name := f.Sizes[0].Piece.Name
	on.Group(name, f.Picture())
}

func (f DrawnPiece) single() *drawing.Picture {
	one := pieceDrawing{&drawing.Picture{}, f.Sizes[0].Piece, f.Sizes[0].Cutting}
	one.Layer(drawing.CutLayer, func() { one.cutting(LineOf(0)) })
	one.Layer(drawing.SewLayer, func() { one.seam(seamLine) })
	one.Layer(drawing.MarksLayer, func() {
		one.fold()
		one.notches()
		one.darts(dartLine, true)
		one.marks()
		one.grain()
	})
	one.Layer(drawing.WordsLayer, func() {
		one.names()
		one.label(f.Label, nil, f.Beneath)
	})
	return one.Picture
}

// Picture of the figure by itself.
func (f DrawnPiece) Picture() *drawing.Picture {
	if len(f.Sizes) == 1 {
		return f.single()
	}
	return f.nest()
}

// nest draws several sizes, the cutting line of each in a picture of its own
// until its name stands on it. What is of one size alone is on a layer of its own.
func (f DrawnPiece) nest() *drawing.Picture {
	shared := pieceDrawing{&drawing.Picture{}, f.Sizes[0].Piece, f.Sizes[0].Cutting}
	var all []pieceDrawing
	for i, d := range f.Sizes {
		one := pieceDrawing{&drawing.Picture{}, d.Piece, d.Cutting}
		one.cutting(LineOf(i))
		one.fold()
		all = append(all, one)
		dart := dartLine
		dart.Dashes = LineOf(i).Dashes
		one.Picture = shared.Picture
		shared.Layer(SizeLayer(d.Piece.Size), func() {
			one.shortNotches()
			one.darts(dart, false)
		})
		if i == f.Seams {
			shared.Layer(drawing.SewLayer, func() { one.seam(nestedSeamLine) })
		}
	}
	shared.Layer(drawing.MarksLayer, func() {
		shared.marks()
		shared.grain()
	})
	for i := range all {
		f.sizeNames(all, shared, i)
	}
	whole := pieceDrawing{&drawing.Picture{}, shared.piece, shared.ring}
	for i, one := range all {
		whole.Layer(SizeLayer(f.Sizes[i].Piece.Size), func() { whole.Add(one.Picture) })
	}
	whole.Add(shared.Picture)
	whole.Layer(drawing.WordsLayer, func() {
		whole.names()
		whole.allowances(f.Inches)
		whole.label(f.Label, f.key(), f.Beneath)
	})
	return whole.Picture
}

// SizeLayer is the layer of what is of one size alone, in a nest.
func SizeLayer(size string) string { return "size " + size }
