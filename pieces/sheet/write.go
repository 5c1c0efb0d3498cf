package sheet

import (
	"fmt"

	"github.com/paulmach/orb"

	"ellwand/pieces/drawing"
)

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
