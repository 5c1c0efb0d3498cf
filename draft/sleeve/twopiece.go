package sleeve

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// The two-piece sleeve [source.CommonPractice]: the sleeve is folded so that its
// underarm seams lie under its middle. The seams lie beside the two folds, so
// that the under sleeve does not show: the top sleeve is wider than the folded
// one, the under sleeve as much narrower.
const (
	frontBeyond = 20.0
	backBeyond  = 10.0
	// elbowHollow is how far the front seam comes in at the elbow, wristAhead
	// how far it reaches forward at the wrist, as the arm hangs bent.
	elbowHollow = 12.0
	wristAhead  = 5.0
	// elbowTaper is how much of the way from the width of the bicep line to
	// that of the wrist is done at the elbow.
	elbowTaper = 0.35
	// leastUnderWrist is the least width of the under sleeve at the wrist.
	leastUnderWrist = 25.0
)

// folded is the sleeve folded flat: its front and back edge from the head down.
type folded struct {
	front, back pieces.Path
	// toFront and toBack are where the seams meet the head, along it from the
	// front end.
	toFront, toBack float64
	frontFold, backFold,
	frontElbow, backElbow float64 // lengths from the head down to the elbow
	width float64 // at the wrist, all round
}

func (d drafting) elbowLine() float64 { return d.height - d.rise - d.ShoulderToWrist/2 - elbowBelow }

// checkTwoPiece refuses what a two-piece sleeve cannot have.
func (d drafting) checkTwoPiece(o Options) error {
	switch {
	case o.HeadFullness > 0 || o.HemFullness > 0:
		return construct.About(subject.HeadFullness, subject.HemFullness).Refuse(
			"sleeve: a two-piece sleeve is not gathered; leave out the fullness, or ask for "+
				"a set-in sleeve",
			"Ärmel: ein zweiteiliger Ärmel wird nicht eingereiht; lassen Sie die Mehrweite weg, oder "+
				"verlangen Sie einen eingesetzten")
	case d.height-d.length > d.elbowLine()-80 || d.elbowLine() > -40:
		return construct.About(subject.Length, subject.Reach, subject.Style).Refuse(
			"sleeve: a two-piece sleeve of %s from the crown does not go past the elbow on a "+
				"shoulder to wrist of %s; ask for a longer one, or for a set-in sleeve",
			"Ärmel: ein zweiteiliger Ärmel von %s ab der Schulter reicht bei einer Armlänge von %s "+
				"nicht über den Ellbogen; verlangen Sie einen längeren, oder einen eingesetzten",
			construct.Length(d.length),
			construct.Length(d.ShoulderToWrist))
	}
	return nil
}

// fold draws both edges of the folded sleeve.
func (d drafting) fold(h head, seam pieces.Path) (folded, error) {
	bicep := h.bicep()
	f := folded{frontFold: h.front.width() / 2, backFold: -h.back.width() / 2, width: d.WristWidth}
	if f.width == 0 {
		f.width = float64(0.75 * bicep)
	}
	if least := 2 * (frontBeyond + backBeyond + leastUnderWrist); f.width < least || f.width > 1.1*bicep {
		return f, construct.About(subject.WristWidth).Refuse("sleeve: a wrist width of %s does not suit two pieces on "+
			"a bicep line of %s; ask for %s to %s",
			"Ärmel: eine Weite von %s am Handgelenk passt nicht zu zwei Teilen mit einer Oberarmlinie "+
				"von %s; verlangen Sie %s bis %s", construct.Length(f.width), construct.Length(bicep),
			construct.AtLeast(least), construct.AtMost(1.1*bicep))
	}
	f.toFront = reaching(seam, f.frontFold+frontBeyond)
	f.toBack = reaching(seam, f.backFold-backBeyond)

	elbow, wrist := d.elbowLine(), d.height-d.length
	across := bicep/2 + elbowTaper*(f.width-bicep)/2
	frontElbow := orb.Point{f.frontFold - elbowHollow, elbow}
	backElbow := orb.Point{frontElbow[0] - across, elbow}
	middle := orb.Point{f.frontFold + wristAhead - f.width/4, wrist}
	way := construct.Direction(construct.Between(frontElbow, backElbow, 0.5), middle)
	frontWrist := construct.Go(middle, construct.Square(way), f.width/4)
	backWrist := construct.Go(middle, construct.Square(way), -f.width/4)

	edge := func(x, top float64, elbow, wrist orb.Point) (pieces.Path, float64) {
		level := orb.Point{x, 0}
		upper := construct.Line(orb.Point{x, top}, level)
		lower := construct.Through(orb.Point{0, -1}, []orb.Point{level, elbow, wrist}, way)
		return construct.Join(upper, lower), upper.Length() + lower[:1].Length()
	}
	f.front, f.frontElbow = edge(f.frontFold, seam.At(f.toFront)[1], frontElbow, frontWrist)
	f.back, f.backElbow = edge(f.backFold, seam.At(f.toBack)[1], backElbow, backWrist)
	return f, nil
}

// reaching is how far along the head, which runs from the front to the back, a
// distance from the middle is reached.
func reaching(seam pieces.Path, x float64) float64 {
	low, high := 0.0, seam.Length()
	for range 60 {
		if middle := (low + high) / 2; seam.At(middle)[0] > x {
			low = middle
		} else {
			high = middle
		}
	}
	return high
}

// twoPiece gives the top sleeve and the under sleeve. Their seams are the same
// curves, and their heads together are the head of the one-piece sleeve.
func (d drafting) twoPiece(sheet construct.Sheet, h head, _ ends) (Block, error) {
	if err := d.checkTwoPiece(d.Options); err != nil {
		return Block{}, err
	}
	seam, toCrown := h.seam(), h.front.path.Length()
	f, err := d.fold(h, seam)
	if err != nil {
		return Block{}, err
	}
	length := seam.Length()
	topHead := construct.Stretch(seam, f.toFront, f.toBack)
	frontUnder := construct.Stretch(seam, 0, f.toFront).Map(about(f.frontFold)).Reverse()
	backUnder := construct.Stretch(seam, f.toBack, length).Map(about(f.backFold)).Reverse()
	top := d.panel(role.TopSleeve, f, 1, topHead)
	under := d.panel(role.UnderSleeve, f, -1, construct.Join(frontUnder, backUnder))

	onHead := func(p *pieces.Piece, at float64, count int, match marks.Name) {
		p.Notches = append(p.Notches, pieces.Notch{Edge: seams.SleeveHead, At: at, Count: count, Match: match})
	}
	onHead(&top, toCrown-f.toFront, 1, marks.Shoulder)
	onHead(&under, f.toFront, 1, marks.Underarm)
	if d.FrontNotch < f.toFront {
		onHead(&under, f.toFront-d.FrontNotch, 1, marks.FrontArmhole)
	} else {
		onHead(&top, d.FrontNotch-f.toFront, 1, marks.FrontArmhole)
	}
	if d.BackNotch < length-f.toBack {
		onHead(&under, f.toFront+d.BackNotch, 2, marks.BackArmhole)
	} else {
		onHead(&top, length-d.BackNotch-f.toFront, 2, marks.BackArmhole)
	}
	sheet.Piece = top.Name
	sheet.Draw("fold both sides of the head under along upright lines halfway to the ends of the bicep line, {} to the "+
		"right and {} to the left of the middle, so that its ends meet under the middle",
		"the front and back fold", f.frontFold, -f.backFold)
	sheet.Draw("draw the front edge down the fold, in by {} at the elbow line ({} below the bicep line) and forward "+
		"by {} at the wrist; the back edge lies {} from it at the wrist",
		"the elbow at half the shoulder to wrist and 5 cm; half the wrist width",
		elbowHollow, -d.elbowLine(), wristAhead, f.width/2)
	sheet.Draw("draw the top sleeve {} outside the front edge and {} outside the back edge, "+
		"the under sleeve as far inside both", "so that the seams do not show; trace the head that lies on each",
		frontBeyond, backBeyond)
	return Block{
		Piece: top, Pieces: []pieces.Piece{top, under}, Under: &under, Sheet: sheet,
		HeadHeight: d.height, BicepLine: h.bicep(), WristWidth: f.width, Head: length, FrontHead: toCrown,
	}, nil
}

// panel is the top sleeve (beyond the folded edges, wider 1) or the under
// sleeve (short of them, wider -1).
func (d drafting) panel(as role.Role, f folded, wider float64, headSeam pieces.Path) pieces.Piece {
	front := f.front.Map(pieces.Move(wider*frontBeyond, 0))
	back := f.back.Map(pieces.Move(-wider*backBeyond, 0))
	// Square to both seams, so that the lower edge runs on across them.
	across := construct.Square(front.Tangent(front.Length()))
	wrist := construct.Edge(seams.WristHem, construct.Curve(back.End(), across, 1./3, front.End(), across, 1./3))
	wrist.Hem = true
	if d.Cuffed {
		wrist = construct.Edge(seams.Wrist, wrist.Path)
	}
	return pieces.Piece{
		Name: as.String(), Role: as, Cut: 2, Pair: true,
		Edges: []pieces.Edge{
			wrist,
			construct.Edge(seams.FrontSeam, front.Reverse()),
			construct.Edge(seams.SleeveHead, headSeam),
			construct.Edge(seams.BackSeam, back),
		},
		Notches: []pieces.Notch{
			{Edge: seams.FrontSeam, At: front.Length() - f.frontElbow, Count: 1, Match: marks.FrontElbow},
			{Edge: seams.BackSeam, At: f.backElbow, Count: 2, Match: marks.BackElbow},
		},
		Grain: pieces.Grain{
			From: orb.Point{0, float64(0.8 * d.elbowLine())},
			To:   orb.Point{0, min(headSeam.At(headSeam.Length() / 2)[1], 0) - 15},
		},
		Marks: []pieces.Mark{{Name: marks.ElbowLine, Path: construct.Line(
			back.At(f.backElbow), front.At(f.frontElbow))}},
	}
}

// about is the mirror image about an upright line.
func about(x float64) pieces.Motion {
	return pieces.MirrorAbout(orb.Point{x, 0}, orb.Point{x, 1})
}
