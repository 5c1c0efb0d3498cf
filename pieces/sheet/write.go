package sheet

import (
	"fmt"
	"io"

	"github.com/paulmach/orb"

	"ellwand/pieces/drawing"
	"ellwand/pieces/paper"
)

// Layout is what is printed: figures in their places on the plane.
type Layout struct {
	// Title, for example the name of the job.
	Title string
	Paper paper.Paper
	// PaperName is what people call the paper: "A4". If empty its sides are
	// given.
	PaperName string
	// Children says that children wear what is cut.
	Children bool
	// Notes are sentences about this print; may be empty.
	Notes []string
	// Figures as they lie on the plane. Where PanelRoom is not 0, that much
	// at the upper left must be free.
	Figures []Figure
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

// Plane is everything to be printed, and the tiles it is cut into.
func (l Layout) Plane() (Plane, Tiling) {
	plane := Plane{Title: l.Title, Picture: &drawing.Picture{}}
	for _, f := range l.Figures {
		f.Draw(plane.Picture)
		plane.Shapes = append(plane.Shapes, f.outlines()...)
	}
	width, height := PanelRoom(l.Paper)
	if width == 0 {
		return plane, EvenTiling(plane, l.Paper)
	}
	// The first tile is never blank: the panel is on it.
	plane.Shapes = append(plane.Shapes, paperOutline(width, height))
	return plane, EvenTiling(plane, l.Paper)
}

// Pages draws the panel and every sheet.
func (l Layout) Pages() ([]drawing.Page, error) {
	if err := l.Paper.Check(); err != nil {
		return nil, err
	}
	if len(l.Figures) == 0 {
		return nil, fmt.Errorf("there is no piece to print")
	}
	plane, tiling := l.Plane()
	p := panel{layout: l, tiling: tiling, plane: plane, tiles: tiling.Tiles(plane)}
	if width, _ := PanelRoom(l.Paper); width > 0 {
		p.draw(plane.Picture, orb.Point{}, panelHeight)
		return tiling.Pages(plane), nil
	}
	return append(p.pages(l.Paper), tiling.Pages(plane)...), nil
}

// Write prints the layout as a PDF, at full size.
func Write(w io.Writer, layout Layout) error {
	pages, err := layout.Pages()
	if err != nil {
		return err
	}
	return drawing.WritePDF(w, layout.Title, pages)
}
