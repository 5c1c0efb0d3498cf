package sheet

import (
	"ellwand/pieces/paper"
	"ellwand/pieces/safety"
)

// Layout is what is printed: figures in their places on the plane.
type Layout struct {
	// Title, for example the name of the job.
	Title string
	Paper paper.Paper
	// PaperName is what people call the paper: "A4". If empty its sides are
	// given.
	PaperName string
	// Youngest of those who wear what is cut.
	Youngest safety.Wearer
	// Notes are sentences about this print; may be empty.
	Notes []string
	// Figures as they lie on the plane. Where PanelRoom is not 0, that much
	// at the upper left must be free.
	Figures []DrawnPiece
}

// nested reports whether sizes are nested, and whose seam lines are drawn.
func (l Layout) nested() (seams string, ok bool) {
	for _, f := range l.Figures {
		if len(f.Sizes) > 1 {
			return f.Sizes[f.Seams].Piece.Size, true
		}
	}
	return "", false
}

func (l Layout) paperName() string {
	if l.PaperName != "" {
		return l.PaperName
	}
	return l.Paper.Say(l.Paper.Width) + " x " + l.Paper.Say(l.Paper.Height)
}
