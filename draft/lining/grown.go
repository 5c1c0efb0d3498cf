package lining

import (
	"slices"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// cutVent leaves out the vent that is grown on to a centre back: the lining goes
// straight down there, notched where its seam is left open [source.CommonPractice]. A
// piece without one stays whole.
func (d *deriving) cutVent() {
	top, edge, centre := d.index(seams.VentTop), d.index(seams.VentEdge), d.index(seams.CentreBack)
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
	d.more[seams.CentreBack] += edges[centre].Path.Length() - begins
	d.piece.Edges = append(edges[:centre+1:centre+1], edges[edge+1:]...)
	d.piece.Notches = append(d.piece.Notches,
		pieces.Notch{Edge: seams.CentreBack, At: begins, Count: 1, Match: marks.OpenBelow})
}

// cutFly leaves out the extension of a fly: the lining goes down the centre
// front, notched where its seam is left open above [source.CommonPractice].
func (d *deriving) cutFly() {
	waist, fly, crotch := d.index(seams.FlyWaist), d.index(seams.FlyEdge), d.index(seams.Crotch)
	if waist < 0 || fly < 0 || crotch < 0 {
		return
	}
	edges := d.piece.Edges
	centre := construct.Line(edges[waist].Path.Start(), edges[crotch].Path.Start())
	edges[crotch].Path = construct.Join(centre, edges[crotch].Path)
	d.moveNotches(seams.Crotch, centre.Length())
	d.more[seams.Crotch] += centre.Length()
	d.piece.Edges = append(edges[:waist:waist], edges[crotch:]...)
	d.piece.Notches = append(d.piece.Notches,
		pieces.Notch{Edge: seams.Crotch, At: centre.Length(), Count: 1, Match: marks.OpenAbove})
}

// cutCasing leaves out the casing of an elastic waist: the lining ends at the
// waist, where it is caught in when the casing is folded down [source.CommonPractice].
func (d *deriving) cutCasing() {
	casing, side, crotch := d.index(seams.CasingEdge), d.index(seams.OutsideLeg), d.index(seams.Crotch)
	fold := slices.IndexFunc(d.piece.Marks, func(m pieces.Mark) bool { return m.Name == marks.CasingFold })
	if casing < 0 || side < 0 || crotch < 0 || fold < 0 {
		return
	}
	edges, waist := d.piece.Edges, d.piece.Marks[fold].Path
	depth := construct.Distance(edges[crotch].Path.Start(), waist.End())
	edges[side].Path = construct.Stretch(edges[side].Path, 0, edges[side].Path.Length()-depth)
	edges[crotch].Path = construct.Stretch(edges[crotch].Path, depth, edges[crotch].Path.Length())
	edges[casing] = construct.Edge(seams.Waist, waist)
	d.moveNotches(seams.Crotch, -depth)
	d.more[seams.OutsideLeg] -= depth
	d.more[seams.Crotch] -= depth
	d.piece.Marks = slices.Delete(slices.Clone(d.piece.Marks), fold, fold+1)
}
