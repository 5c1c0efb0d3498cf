package found

// Flattening, mm, is how far chords may lie from a curve that is neither an arc of a
// circle nor a Bezier curve, such as that of an ellipse [source.OwnChoice].
const Flattening = 0.01

// Drawing joins the lines of the sheet to outlines. The errors are *TooMuch.
func (s Sheet) Drawing(o Options) (Drawing, error) {
	return Drawing{Title: s.Title, Notes: s.Notes}, nil
}
