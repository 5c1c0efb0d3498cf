package lining

import (
	"ellwand/draft/construct"
	"ellwand/pieces"
)

// cutVent leaves out the vent that is grown on to a centre back: the lining goes
// straight down there, notched where its seam is left open (common practice). A
// piece without one stays whole.
func (d *deriving) cutVent() {
	top, edge, centre := d.index("vent top"), d.index("vent edge"), d.index("centre back")
	if top < 0 || edge < 0 || centre < 0 {
		return
	}
	edges := d.piece.Edges
	width := construct.Distance(edges[edge].Path.End(), edges[0].Path[0].End())
	hem := &edges[0]
	hem.Path = construct.Stretch(hem.Path, width, hem.Path.Length())
	d.moveNotches(hem.Name, -width)
	begins := edges[centre].Path.Length()
	edges[centre].Path = construct.Line(edges[centre].Path.Start(), hem.Path.Start())
	d.more["centre back"] += edges[centre].Path.Length() - begins
	d.piece.Edges = append(edges[:centre+1:centre+1], edges[edge+1:]...)
	d.piece.Notches = append(d.piece.Notches, pieces.Notch{Edge: "centre back", At: begins, Count: 1, Match: "open below"})
}
