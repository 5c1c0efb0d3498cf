package skirt

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
)

// recordHemDart notes how the dart is closed into the hem.
func (f figures) recordHemDart(s *construct.Sheet, o outline, hem pieces.Path) {
	if o.cut == nil {
		return
	}
	apex := o.cut.Apex
	middle := construct.Between(o.cut.Start, o.cut.End, 0.5)
	s.Draw("mark a dart {} wide, its middle {} from the centre along the waist, {} long; cut from the hem straight "+
		"up to its point, {} from the centre line, and close the dart",
		"the hem opens and flares; front and back are turned alike, so that the side hangs straight",
		construct.Distance(o.cut.Start, o.cut.End), construct.Distance(orb.Point{}, middle),
		construct.Distance(middle, apex), apex[0])
	s.Draw("at the hem the cut is {} open; draw waist and hem anew in even curves, the hem {} long, through the "+
		"middle of the gap, {} below the point of the dart", "square to the centre and to the side seam",
		o.opens(f.Length), hem.Length(), f.Length+apex[1])
}
