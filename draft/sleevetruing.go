package draft

import (
	"ellwand/draft/construct"
	"ellwand/draft/sleeve"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
	"ellwand/pieces/source"
)

// sleeveRows set the sleeve against the armhole, its seams against each other,
// and its width against the arm.
func (g *garment) sleeveRows() []Row {
	rows := []Row{g.headRow()}
	if g.sleeve.IsCap {
		return append(rows, g.headWalks()...)
	}
	rows = append(rows, g.headWalks()...)
	rows = append(rows, g.sleeveSeamRows()...)
	return append(rows, g.bicepRow())
}

// bicepRow sets the bicep line against the arm, without what the gathers of the
// head add.
func (g *garment) bicepRow() Row {
	arm, within := g.result.Body[UpperArmGirth], g.bicepLimits()
	most := float64(noLimit)
	normal := construct.Say("%s or more of ease (%s)", construct.Length(sleeve.BicepEase), source.CommonPractice)
	if g.Sleeve.BicepEase > 0 {
		most, normal = within.Most-arm, construct.Say("the ease that was asked for")
	}
	of := "bicep line"
	if g.sleeve.Spread > 0 {
		of = "bicep line, less its gathers"
	}
	return compare("bicep line", of, g.sleeve.BicepLine-g.sleeve.Spread, "upper arm girth", arm, within.Least-arm, most,
		normal)
}

// headRow sets the head against the armhole, its ease against the norm of the
// style: a share of the whole armhole.
func (g *garment) headRow() Row {
	front, back := g.bodice.Front, g.bodice.Back
	armhole, against := seam(front, seams.Armhole)+seam(back, seams.Armhole), "armhole"
	between := armhole - notch(front, marks.FrontArmhole) - notch(back, marks.BackArmhole)
	norm := sleeve.NormOf(g.Sleeve.Style)
	least, most := norm.LeastEase*armhole, norm.MostEase*armhole
	length := armhole
	if g.sleeve.IsCap {
		length, against = between, "armhole, from notch to notch"
	}
	if g.Sleeve.HeadFullness > 0 {
		head := g.sleeve.Head - armhole + between
		if g.sleeve.IsCap {
			head = g.sleeve.Head
		}
		return compare("armhole", "sleeve head, from notch to notch", head, "armhole, from notch to notch", between,
			float64(0.1*between), 2*between+1, construct.Say("1.1 to 3 times as long, gathered in (%s)", source.CommonPractice))
	}
	row := compare("armhole", "sleeve head", g.sleeve.Head, against, length, least, most,
		construct.Say("%.3g to %.3g %% of the whole armhole, here %s to %s, of ease in a %s (%s)", 100*norm.LeastEase,
			100*norm.MostEase, construct.Length(least), construct.Length(most), norm.Name, source.CommonPractice))
	if row.InRange {
		row.Verdict = construct.Say("suits a " + norm.Name)
	}
	return row
}

// headWalks walk the head from the underarm to the notches of the armhole,
// below which no ease lies.
func (g *garment) headWalks() []Row {
	var rows []Row
	for _, armhole := range []struct {
		of    pieces.Piece
		notch marks.Name
	}{{g.bodice.Front, marks.FrontArmhole}, {g.bodice.Back, marks.BackArmhole}} {
		head, ok := g.headTo(armhole.notch)
		if !ok {
			continue
		}
		rows = append(rows, compare("armhole", "sleeve head, to the "+armhole.notch.Side().String()+" notch", head,
			armhole.notch.String(), notch(armhole.of, armhole.notch), -matching, matching,
			construct.Say("equal, so that the notches meet (%s)", source.CommonPractice)))
	}
	return rows
}

// headTo is how far the sleeve's notch of a name lies from the underarm along
// the head; ok is false for a cap, which begins at the notches.
func (g *garment) headTo(name marks.Name) (float64, bool) {
	from := fromStart
	if name == marks.BackArmhole {
		from = fromFinish
	}
	top := g.sleeve.Piece
	at, onTop := walk(top, seams.SleeveHead, name, from)
	if g.sleeve.Under == nil {
		return at, onTop
	}
	under := *g.sleeve.Under
	bottom, _ := walk(under, seams.SleeveHead, marks.Underarm, fromStart)
	beside := bottom
	if name == marks.BackArmhole {
		beside = seam(under, seams.SleeveHead) - bottom
	}
	if onTop {
		return beside + at, true
	}
	at, ok := walk(under, seams.SleeveHead, name, fromStart)
	if name == marks.BackArmhole {
		return at - bottom, ok
	}
	return bottom - at, ok
}

// sleeveSeamRows compare the lengthwise seams, with the notches at the elbow.
func (g *garment) sleeveSeamRows() []Row {
	if g.sleeve.Under != nil {
		top, under := g.sleeve.Piece, *g.sleeve.Under
		var rows []Row
		for _, each := range []struct {
			edge  seams.Name
			elbow marks.Name
		}{{seams.FrontSeam, marks.FrontElbow}, {seams.BackSeam, marks.BackElbow}} {
			edge := each.edge
			rows = append(rows, compare(edge.String(), top.Name, seam(top, edge), under.Name, seam(under, edge),
				-matching, matching, construct.Say("equal (%s)", source.CommonPractice)))
			rows = append(rows, walkRows(edge, each.elbow, walked{top, edge, fromStart},
				walked{under, edge, fromStart})...)
		}
		return rows
	}
	piece := g.sleeve.Piece
	rows := []Row{compare("underarm", "front underarm", seam(piece, seams.FrontUnderarm), "back underarm",
		seam(piece, seams.BackUnderarm),
		-3, 3, construct.Say("equal; 3 mm is eased in (%s)", source.CommonPractice))}
	return append(rows, walkRows(seams.Underarm, marks.Elbow, walked{piece, seams.FrontUnderarm, fromStart},
		walked{piece, seams.BackUnderarm, fromFinish})...)
}
