package plotter

import (
	"fmt"
	"io"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/fabric/marker"
	"ellwand/pieces/dxf"
	"ellwand/pieces/marks"
)

// WriteDXF writes a lay at full size as DXF, without pages: the warp along x from the
// cut end. It refuses a lay that is not possible.
func WriteDXF(w io.Writer, plan lay.Plan, options Options) error {
	if !plan.Possible() {
		return fmt.Errorf("the %s lay of %s cannot be drawn: it is not possible", plan.Lay, plan.Cloth)
	}
	low, high := marker.Edges(plan)
	out := dxf.Marker{Title: Title(plan, options),
		Cloth: orb.Bound{Min: orb.Point{0, low}, Max: orb.Point{plan.Length, high}}}
	for _, l := range plan.Pieces {
		p := dxf.MarkerPiece{Name: l.Name, Size: l.Size, Cloth: plan.Cloth.Name, Cutting: orb.Ring(l.Outline),
			Seam:  orb.Ring(l.Seam),
			Grain: l.Grain}
		for _, n := range l.Notches {
			p.Notches = append(p.Notches, n.Out)
		}
		for _, d := range l.Darts {
			p.Lines = append(p.Lines, d.Line)
		}
		for _, m := range l.Marks {
			switch {
			case m.Name.Kind() == marks.SewLine:
				p.Seam = orb.Ring(m.Line)
			case len(m.Line) > 1:
				p.Lines = append(p.Lines, m.Line)
			default:
				p.Points = append(p.Points, m.Line...)
			}
		}
		out.Pieces = append(out.Pieces, p)
	}
	return dxf.WriteMarker(w, out)
}
