package tracing

import "fmt"

// sentences of the troubles: what is wrong, and what to do.
var sentences = map[Trouble]string{
	Unreadable: "the picture cannot be read; give a JPEG or a PNG, as the camera wrote it",
	TooLarge:   "the picture has %d x %d pixels, more than 25 million in all; save it smaller",
	TooSmall:   "the picture has too few pixels to trace anything in; give the photo as the camera wrote it",
	Flat: "nothing stands out from its ground; lay light paper on a dark ground, or dark on a light one, and take " +
		"the photo again",
	NoSquares: "no squared ground was found; show more of it beside the pieces, sharp and without glare, or give " +
		"sheets or distances as the reference",
	NoSheet: "no sheet of that size was found; lay it flat on the ground, whole in the picture and apart from the " +
		"pieces, and say which size it has",
	SheetBulged: "the sheets that were found do not fit one flat ground; lay all of them flat, on the same table",
	NotSquareOn: "the two distances do not agree by more than 2 %, so that the photo was not taken square on, or a " +
		"point was read wrong; measure again, or lay a squared ground or sheets beside the pieces",
	BadDistances: "a distance has no length in the picture or on the tape; give two points that lie apart, and what " +
		"lies between them",
	NoPiece: "no piece was found on the ground; lay each apart from the others and from the picture's edge",
	OverRim: "the shape %s goes over the picture's edge; show all of it, with ground around it",
	Touching: "the shape %s seems to be two pieces that touch; lay them a finger's width apart and take the photo " +
		"again",
	Blurred: "the edge of the shape %s is too blurred to trace; hold the camera still, wipe its lens, give it more light",
	Unclear: "the edge of the shape %s is not seen clearly; lay the paper flat, on a ground of another brightness, " +
		"away from hard shadows",
	Small: "the shape %s is smaller than 6 cm^2, and taken for none; a hard shadow may hide the rest of a piece",
}

// Error is the sentence of the fault.
func (f *Fault) Error() string {
	switch f.Trouble {
	case TooLarge:
		return fmt.Sprintf(sentences[f.Trouble], f.Width, f.Height)
	case OverRim, Touching, Blurred, Unclear, Small:
		return fmt.Sprintf(sentences[f.Trouble], f.Where())
	}
	return sentences[f.Trouble]
}

// Where the shape is, as one says it of a picture: "at the upper left".
func (f *Fault) Where() string {
	rows, columns := [3]string{"upper", "", "lower"}, [3]string{"left", "", "right"}
	third := func(at float64) int { return min(max(int(at*3), 0), 2) }
	row, column := rows[third(f.At[1])], columns[third(f.At[0])]
	switch {
	case row == "" && column == "":
		return "in the middle"
	case row == "":
		return "at the " + column
	case column == "":
		return "in the middle of the " + row + " part"
	}
	return "at the " + row + " " + column
}
