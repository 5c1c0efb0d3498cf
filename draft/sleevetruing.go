package draft

import (
	"ellwand/draft/construct"
	"ellwand/draft/sleeve"
)

// sleeveRows set the sleeve against the armhole, its seams against each other,
// and its width against the arm.
func (g *garment) sleeveRows() []Row {
	rows := []Row{g.headRow()}
	if g.Sleeve.Style == sleeve.Cap {
		return append(rows, g.headWalks()...)
	}
	rows = append(rows, g.headWalks()...)
	rows = append(rows, g.sleeveSeamRows()...)
	return append(rows, compare("bicep line", "bicep line", g.sleeve.BicepLine, "upper arm girth", g.result.Body[UpperArmGirth],
		bicepEase, noLimit, construct.Say("4 cm or more of ease (common practice)")))
}

func (g *garment) headRow() Row {
	front, back := g.bodice.Front, g.bodice.Back
	armhole, against := seam(front, "armhole")+seam(back, "armhole"), "armhole"
	if g.Sleeve.Style == sleeve.Cap {
		armhole -= notch(front, "front armhole") + notch(back, "back armhole")
		against = "armhole, from notch to notch"
	}
	if g.Sleeve.HeadFullness > 0 {
		return compare("armhole", "sleeve head", g.sleeve.Head, against, armhole, 0, 2*armhole+1, construct.Say("up to three times as long, gathered in (common practice)"))
	}
	head := compare("armhole", "sleeve head", g.sleeve.Head, against, armhole,
		0, 45, construct.Say("0 to 1.5 cm of ease in a shirt sleeve, 2 to 4.5 cm in a set-in woven sleeve (common practice)"))
	if head.Sound {
		head.Verdict = headVerdict(head.Difference)
	}
	return head
}

// headWalks walk the head from the underarm to the notches of the armhole,
// below which no ease lies.
func (g *garment) headWalks() []Row {
	var rows []Row
	for _, which := range []string{"front", "back"} {
		name := which + " armhole"
		piece := g.bodice.Front
		if which == "back" {
			piece = g.bodice.Back
		}
		head, ok := g.headTo(name)
		if !ok {
			continue
		}
		rows = append(rows, compare("armhole", "sleeve head, to the "+which+" notch", head, name, notch(piece, name), -matching, matching, construct.Say("equal, so that the notches meet (common practice)")))
	}
	return rows
}

// headTo is how far the sleeve's notch of a name lies from the underarm along
// the head; ok is false for a cap, which begins at the notches.
func (g *garment) headTo(name string) (float64, bool) {
	from := fromStart
	if name == "back armhole" {
		from = fromFinish
	}
	top := g.sleeve.Piece
	at, onTop := walk(top, "sleeve head", name, from)
	if g.Sleeve.Style != sleeve.TwoPiece {
		return at, onTop
	}
	under := g.sleeve.Pieces[1]
	bottom, _ := walk(under, "sleeve head", "underarm", fromStart)
	beside := bottom
	if name == "back armhole" {
		beside = seam(under, "sleeve head") - bottom
	}
	if onTop {
		return beside + at, true
	}
	at, ok := walk(under, "sleeve head", name, fromStart)
	if name == "back armhole" {
		return at - bottom, ok
	}
	return bottom - at, ok
}

// sleeveSeamRows compare the lengthwise seams, with the notches at the elbow.
func (g *garment) sleeveSeamRows() []Row {
	if g.Sleeve.Style == sleeve.TwoPiece {
		top, under := g.sleeve.Pieces[0], g.sleeve.Pieces[1]
		var rows []Row
		for _, name := range []string{"front", "back"} {
			edge := name + " seam"
			rows = append(rows, compare(edge, top.Name, seam(top, edge), under.Name, seam(under, edge), -matching, matching, construct.Say("equal (common practice)")))
			rows = append(rows, walkRows(edge, name+" elbow", walked{top, edge, fromStart}, walked{under, edge, fromStart})...)
		}
		return rows
	}
	piece := g.sleeve.Piece
	rows := []Row{compare("underarm", "front underarm", seam(piece, "front underarm"), "back underarm", seam(piece, "back underarm"),
		-3, 3, construct.Say("equal; 3 mm is eased in (common practice)"))}
	return append(rows, walkRows("underarm", "elbow", walked{piece, "front underarm", fromStart}, walked{piece, "back underarm", fromFinish})...)
}
