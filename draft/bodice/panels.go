package bodice

import (
	"slices"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// cutting says at which edge the upper end of a princess seam cuts a piece,
// and how far before the end of that edge; 0 cuts at a dart.
type cutting struct {
	edge   seams.Name
	before float64
}

// cutOf says where a whole piece is cut. On the back, which has no dart there,
// the shoulder is cut so far from the neck.
func (f figures) cutOf(o Options, piece pieces.Piece, fromNeck float64) cutting {
	var seam seams.Name = seams.Shoulder
	if o.Princess == FromArmhole {
		seam = seams.Armhole
	}
	if _, darted := piece.Edge(seam.Mouth(0)); darted {
		return cutting{edge: seam}
	}
	if o.Princess == FromArmhole {
		edge, _ := piece.Edge(seam)
		return cutting{seam, edge.Path[1:].Length()}
	}
	return cutting{seam, fromNeck}
}

// split cuts a whole piece, drawn from its lower edge round to its centre
// line, into the panel at the centre and that at the side.
func split(whole pieces.Piece, p princess, at cutting, back bool) (middle, side pieces.Piece) {
	edges := undarted(whole.Edges, at)
	lower := edges[0].Name.Seam()
	top := slices.IndexFunc(edges, func(e pieces.Edge) bool { return e.Name == at.edge.Stretch(2) })
	first := edges[0]
	outer := pieces.Edge{Name: lower, Path: first.Path, Hem: first.Hem}
	upper := 1
	if edges[1].Name == lower.Stretch(2) {
		outer.Path, upper = edges[1].Path, 2
	} else {
		near := stretchTo(first.Path, p.middle.path().End()[0])
		outer.Path = construct.Stretch(first.Path, near.Length(), first.Path.Length())
		first.Path = near
	}
	first.Name = lower

	middle, side = whole, whole
	middle.Darts, side.Darts, side.Marks = nil, nil, nil
	middle.Edges = append([]pieces.Edge{first, construct.Edge(seams.PrincessSeam, p.middle.path().Reverse())},
		edges[top:]...)
	side.Edges = append([]pieces.Edge{outer}, edges[upper:top]...)
	side.Edges = append(side.Edges, construct.Edge(seams.PrincessSeam, p.side.path()))
	middle.Edges, side.Edges = unnumbered(middle.Edges), unnumbered(side.Edges)
	middle.Notches, side.Notches = p.notches(whole.Notches, back)
	return middle, side
}

// undarted leaves the mouths of darts out, and cuts the edge at which the seam
// begins in two where no dart does.
func undarted(edges []pieces.Edge, at cutting) []pieces.Edge {
	var out []pieces.Edge
	for _, e := range edges {
		switch {
		case e.Name.IsMouth():
		case e.Name == at.edge && at.before > 0:
			length := e.Path.Length()
			out = append(out,
				construct.Edge(e.Name.Stretch(1), construct.Stretch(e.Path, 0, length-at.before)),
				construct.Edge(e.Name.Stretch(2), construct.Stretch(e.Path, length-at.before, length)))
		default:
			out = append(out, e)
		}
	}
	return out
}

// unnumbered takes the numbers off the edges, which no dart parts any more.
func unnumbered(edges []pieces.Edge) []pieces.Edge {
	out := slices.Clone(edges)
	for i := range out {
		out[i].Name = out[i].Name.Seam()
	}
	return out
}

// notches of both panels: those of the whole piece that lie on the side panel,
// and those of the seam, above and below the fullest place and at the waist.
// Each is as far from its end of the seam on one panel as on the other.
func (p princess) notches(whole []pieces.Notch, back bool) (middle, side []pieces.Notch) {
	count, which := 1, seams.OnFront
	if back {
		count, which = 2, seams.OnBack
	}
	for _, n := range whole {
		// An armhole notch lies below the across line, on the side panel.
		n.Edge = n.Edge.Seam()
		side = append(side, n)
	}
	up := max(min(p.middle.upper.Length(), p.side.upper.Length())-princessNotch, princessNotch/2)
	low := max(min(p.middle.lower.Length(), p.side.lower.Length())-princessNotch, princessNotch/2)
	add := func(name marks.Name, fromTop, fromFoot float64) {
		rise, down := p.middle.path().Length()-fromTop, fromTop
		if fromTop == 0 {
			rise, down = p.middle.below.Length()+fromFoot, p.side.path().Length()-p.side.below.Length()-fromFoot
		}
		middle = append(middle, pieces.Notch{Edge: seams.PrincessSeam, At: rise, Count: count, Match: name.On(which)})
		side = append(side, pieces.Notch{Edge: seams.PrincessSeam, At: down, Count: count, Match: name.On(which)})
	}
	add(marks.PrincessUpper, up, 0)
	add(marks.PrincessLower, 0, low)
	if len(p.side.below) > 0 {
		add(marks.PrincessWaist, 0, 0)
	}
	return middle, side
}

// panels cuts front and back along their princess seams.
func (f figures) panels(backSheet, frontSheet *construct.Sheet, o Options, front frontUpper, back backUpper, w waists,
	whole Block) []pieces.Piece {
	seam := f.frontPrincess(o, front, w.front)
	middle, side := split(whole.Front, seam, f.cutOf(o, whole.Front, 0), false)
	backSeam := f.backPrincess(o, back, w.back)
	backMiddle, backSide := split(whole.Back, backSeam, f.cutOf(o, whole.Back, f.backShoulderTop(o)), true)
	side.Role, backSide.Role = role.SideFrontBodice, role.SideBackBodice
	for _, p := range []*pieces.Piece{&side, &backSide} {
		p.Name, p.Cut, p.Pair, p.Fold = p.Role.String(), 2, true, seams.None
		foot := float64(-0.8 * o.BelowWaist)
		x := (p.Edges[0].Path.Start()[0] + p.Edges[0].Path.End()[0]) / 2
		p.Grain = pieces.Grain{From: orb.Point{x, foot + float64(0.15*f.underarm)},
			To: orb.Point{x, float64(0.8 * f.underarm)}}
	}
	const rule = "smoothly over the fullest place; cut along it, so that the darts fall away"
	// On the middle panel the bust line ends at the seam.
	across := construct.Line(orb.Point{0, f.bustLine}, orb.Point{f.acrossBack / 2, f.bustLine})
	backMiddle.Marks = []pieces.Mark{{Name: marks.BustLine, Path: across}}
	frontSheet.Draw("draw the princess seam on both legs of the darts, through "+construct.Numbers(front.bustPoint),
		rule)
	backSheet.Draw("draw the princess seam down to the point of the waist dart and along both its legs", rule)
	for _, e := range side.Edges[1:] {
		frontSheet.GuideOf("side front", e.Name, e.Path)
	}
	for _, e := range backSide.Edges[1:] {
		backSheet.GuideOf("side back", e.Name, e.Path)
	}
	return []pieces.Piece{middle, backMiddle, side, backSide}
}
