package draft

import (
	"ellwand/draft/bodice"
	"ellwand/draft/construct"
	"ellwand/pieces/seams"
	"ellwand/pieces/source"
)

// report compares every pair of seams that are sewn together, and every seam
// that fits the body.
func (g *garment) report() Report {
	var r Report
	if g.Bodice != nil {
		r.Rows = append(r.Rows, g.bodiceRows()...)
	}
	if g.Sleeve != nil {
		r.Rows = append(r.Rows, g.sleeveRows()...)
	}
	for _, p := range g.pairings {
		r.Rows = append(r.Rows, compare(p.Seam, p.Of, p.Length, p.Against, p.Other, p.Least, p.Most, p.Normal))
	}
	r.Rows = append(r.Rows, lowerWalks(g.skirt.Pieces)...)
	r.Rows = append(r.Rows, lowerWalks(g.trousers.Pieces)...)
	return r
}

func (g *garment) bodiceRows() []Row {
	front, back, body := g.bodice.Front, g.bodice.Back, g.result.Body
	rows := []Row{
		compare("bust line", "front and back", 2*g.bodice.BustWidth, "bust girth", body[BustGirth],
			g.bodice.BustEase-matching, g.bodice.BustEase+matching,
			construct.Say("%s of bust ease, as drafted: 10 cm in a close fit, 14 cm easy, 16 to 20 cm in a shirt (%s)",
				construct.Length(g.bodice.BustEase), source.CommonPractice)),
		g.shoulderRow(seam(back, seams.Shoulder), seam(front, seams.Shoulder)),
		compare("side", "front side", seam(front, seams.SideSeam), "back side", seam(back, seams.SideSeam),
			-matching, matching, construct.Say("equal (%s)", source.CommonPractice)),
		g.neckRow(2 * (seam(front, seams.Neck) + seam(back, seams.Neck))),
	}
	rows = append(rows, g.panelRows()...)
	if g.Bodice.BelowWaist > 0 {
		return append(rows, g.belowRows()...)
	}
	waist := 2 * (seam(front, seams.Waist) + seam(back, seams.Waist))
	if !g.bodice.Fitted {
		return append(rows, compare("waist", "waist seam, hanging straight", waist, "waist girth", body[WaistGirth],
			g.bodice.WaistEase-matching, noLimit, construct.Say("as wide as the bust line: it does not fit the waist")))
	}
	return append(rows, compare("waist", "waist seam, darts closed", waist, "waist girth", body[WaistGirth],
		min(20, g.bodice.WaistEase)-matching/2., max(40, g.bodice.WaistEase)+matching/2.,
		construct.Say("2 to 4 cm of ease in a fitted bodice (%s), or the ease that was asked for",
			source.CommonPractice)))
}

// shoulderRow sets the back shoulder against the front: eased in, or with a
// dart that leaves it as long.
func (g *garment) shoulderRow(back, front float64) Row {
	if g.Bodice.Method == bodice.Proportional {
		return compare("shoulder", "back shoulder, its dart closed", back, "front shoulder", front, -matching, matching,
			construct.Say("equal (%s)", source.CommonPractice))
	}
	return compare("shoulder", "back shoulder", back, "front shoulder", front, 0, 10,
		construct.Say("the back 0 to 1 cm longer, eased in (%s)", source.CommonPractice))
}

// belowRows set a bodice that goes on below the waist against the body.
func (g *garment) belowRows() []Row {
	body := g.result.Body
	return []Row{
		compare("waist", "width at the waist, darts closed", g.bodice.WaistWidth, "waist girth", body[WaistGirth],
			min(20, g.bodice.WaistEase)-matching/2., noLimit,
			construct.Say("2 cm of ease or more (%s)", source.CommonPractice)),
		compare("hip line", "width all round", g.bodice.HipWidth, "hip girth", body[HipGirth], 20, noLimit,
			construct.Say("2 cm of ease or more (%s)", source.CommonPractice)),
	}
}

// neckRow sets the neck seam against the body: the block's fits it, one that
// was widened or lowered is longer.
func (g *garment) neckRow(length float64) Row {
	body := g.result.Body[NeckBaseGirth]
	if o := g.Bodice; o.NeckWiden > 0 || o.FrontNeckDrop > 0 || o.BackNeckDrop > 0 {
		return compare("neck", "neck seam", length, "neck base girth", body, 0, noLimit,
			construct.Say("longer than the body, as it is widened or lowered"))
	}
	if g.Bodice.Method == bodice.Proportional {
		return compare("neck", "neck seam", length, "neck base girth", body, 0, 25,
			construct.Say("0 to 2.5 cm longer than the body, as the neck is a proportion of the bust"))
	}
	return compare("neck", "neck seam", length, "neck base girth", body, 0, 15,
		construct.Say("0 to 1.5 cm longer than the body (%s)", source.CommonPractice))
}
