package lining

import (
	"ellwand/draft/construct"

	"ellwand/pieces/seams"
)

// cutFacing leaves out the extension and the facing that an opening has grown
// on, and what the facing covers when it is folded back: the lining is sewn to
// its edge. A piece without one stays whole.
func (d *deriving) cutFacing() {
	extension, ok := d.piece.Edge(seams.ExtensionNeck)
	facing, grown := d.piece.Edge(seams.FacingNeck)
	neck := d.index(seams.Neck)
	if !ok || !grown || neck < 0 {
		return
	}
	covered := facing.Path.Length() - extension.Path.Length()
	edges := d.piece.Edges
	edges[neck].Path = construct.Stretch(edges[neck].Path, 0, edges[neck].Path.Length()-covered)
	d.more[seams.Neck] -= covered
	// What follows the neck is the facing; the outline goes on at the lower
	// edge, which the facing covers as far in as at the neck.
	x := edges[neck].Path.End()[0]
	lower := edges[0]
	cut := construct.Reach(lower.Path, 0, x)
	if !lower.Hem {
		d.more[lower.Name.Seam()] -= cut
	}
	edges[0].Path = construct.Stretch(lower.Path, cut, lower.Path.Length())
	d.moveNotches(lower.Name, -cut)
	d.piece.Edges = append(edges[:neck+1:neck+1],
		construct.Edge(seams.FacingEdge, construct.Line(edges[neck].Path.End(), edges[0].Path.Start())))
}
