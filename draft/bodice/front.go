package bodice

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// The front neck and shoulder: the neck as deep as the back's is wide, the
// shoulder falling 2 in 5, about 22 degrees [source.CommonPractice].
const (
	frontNeckWidth = 0.185 // of the neck girth: a little less than the back's [source.OwnChoice]
	frontFall      = 2. / 5
	// longerFront is how much higher the front neck point lies than that of the
	// back, for each mm of the bust dart: the way over the bust is longer.
	longerFront = 1. / 4
)

func (f figures) frontUpper(s *construct.Sheet) frontUpper {
	if f.proportional {
		return f.proportionalFront(s)
	}
	var u frontUpper
	u.waist = s.Start(0, 0, "the centre front at the waist")
	bust := s.Up(u.waist, f.bustLine, "the bust line, as high as on the back")
	if f.bustDart > 0 {
		u.bustPoint = s.Right(bust, f.bustPoint, "the bust point: a tenth of the bust girth and 3 mm")
	}

	rule := "the height of the back neck point's rise and a quarter of the bust dart"
	if f.bustDart == 0 {
		rule = "the height of the neck point on the back"
	}
	top := s.Up(u.waist, f.BackNeckPointToWaist+f.neckRise()+longerFront*f.bustDart, rule)
	u.neck = s.Right(top, frontNeckWidth*f.NeckBase, "the neck point: a fifth of the neck girth less 3 parts in 200")
	u.centreNeck = s.Down(top, neckWidth*f.NeckBase, "the neck at the centre front: a fifth of the neck girth")

	u.tip = s.Slope(u.neck, f.Shoulder, frontFall, "the shoulder tip, falling 2 in 5: shoulder length")
	if f.bustDart > 0 {
		u.middle = s.Along(u.neck, u.tip, f.Shoulder/2, "the middle of the shoulder")
	}
	half := s.Up(bust, (u.tip.Y()-f.bustLine)/2, "half the height of the shoulder tip above the bust line")
	u.across = s.Right(half, f.acrossFront, "half the across front width and a thirtieth of the bust ease")

	if f.bustDart == 0 {
		u.openTip, u.openAcross, u.openMiddle = u.tip, u.across, u.neck
		u.level = s.Up(u.waist, f.underarm, "the height of the underarm")
		return u
	}
	// The dart is as wide as the figure says at the distance of the neck
	// point from the bust point.
	u.dart = 2 * construct.HalfAngle(f.bustDart, construct.Distance(u.bustPoint.At, u.neck.At))
	u.openMiddle = s.Turn(u.middle, u.bustPoint, -u.dart, "open the bust dart")
	u.openTip = s.Turn(u.tip, u.bustPoint, -u.dart, "with it the shoulder tip")
	u.openAcross = s.Turn(u.across, u.bustPoint, -u.dart, "and the across front")
	u.level = s.Up(u.waist, f.underarm, "the height of the underarm")
	return u
}

// setUnderarm puts the underarm under the middle of the armhole.
func (u *frontUpper) setUnderarm(s *construct.Sheet, armhole float64) {
	u.underarm = s.Right(u.level, u.openAcross.X()+armhole/2, "the underarm: the across front with half the width of "+
		"the armhole")
}

// front draws the front bodice.
func (f figures) front(s *construct.Sheet, o Options, u *frontUpper, side pieces.Path, w waistSeam) pieces.Piece {
	piece := pieces.Piece{Name: role.FrontBodice.String(), Role: role.FrontBodice, Cut: 1, Fold: seams.CentreFront}
	piece.Edges, piece.Darts = w.edges()
	w.record(s, u.waist, u.underarm, side, f)

	openNeck(s, &u.neck, &u.tip, &u.centreNeck, o.NeckWiden, o.FrontNeckDrop)
	armhole, lower := u.armhole(side)
	s.Draw("draw the armhole "+construct.Numbers(u.underarm, u.openAcross, u.openTip),
		"square to the side seam and to the shoulder")
	upper, darts := f.aboveWaist(s, o, u, side, armhole)
	notch := pieces.Notch{Edge: seams.Armhole, At: lower, Count: 1, Match: marks.FrontArmhole}
	if o.Shaping == ArmholeDart {
		notch.Edge, notch.At = seams.Armhole.Stretch(1), float64(armholeNotch*lower)
	}

	shoulder := construct.Direction(u.neck.At, u.tip.At)
	neck := construct.Curve(u.neck.At, construct.Back(construct.Square(shoulder)), 0.4, u.centreNeck.At,
		orb.Point{-1, 0}, 0.5)
	if o.altered() {
		neck = neckCurve(u.neck.At, shoulder, u.centreNeck.At)
	}
	s.Draw("draw the neck "+construct.Numbers(u.neck, u.centreNeck), "square to the shoulder and to the centre front")

	piece.Edges = append(piece.Edges, upper...)
	piece.Edges = append(piece.Edges,
		construct.Edge(seams.Neck, neck),
		construct.Edge(seams.CentreFront, construct.Line(u.centreNeck.At, w.foot())),
	)
	piece.Darts = append(piece.Darts, darts...)
	piece.Notches = []pieces.Notch{notch}
	piece.Grain = upright(f.bustPoint/2, u.centreNeck.Y())
	piece.Marks = []pieces.Mark{{Name: marks.BustLine,
		Path: construct.Line(orb.Point{0, f.bustLine}, orb.Point{f.bustPoint, f.bustLine})}}
	if f.bustDart > 0 {
		piece.Marks = append(piece.Marks, pieces.Mark{Name: marks.BustPoint, At: u.bustPoint.At})
	}
	return piece
}

// aboveWaist gives the edges from the waist to the neck, with the bust dart
// where it is asked for.
func (f figures) aboveWaist(s *construct.Sheet, o Options, u *frontUpper,
	side, armhole pieces.Path) ([]pieces.Edge, []pieces.Dart) {
	if o.Shaping == NoDart {
		s.Draw("draw the shoulder line "+construct.Numbers(u.neck, u.tip), "")
		return []pieces.Edge{
			construct.Edge(seams.SideSeam, side), construct.Edge(seams.Armhole, armhole),
			construct.Edge(seams.Shoulder, construct.Line(u.tip.At, u.neck.At)),
		}, nil
	}
	edges, dart := u.shoulderDart(side, armhole)
	s.Draw("draw the shoulder lines "+construct.Numbers(u.neck, u.middle)+" and "+
		construct.Numbers(u.openMiddle, u.openTip), "")
	short := []float64{dartShort}
	ending, why := ", ending {} before "+construct.Numbers(u.bustPoint), "so that it makes no peak there"
	if o.Princess != NoPrincess {
		short, ending, why = nil, "", "the princess seam takes it up"
	}
	s.Draw("draw the shoulder dart "+construct.Numbers(u.middle, u.bustPoint, u.openMiddle)+ending, why, short...)
	if o.Shaping == ShoulderDart {
		return edges, []pieces.Dart{dart}
	}
	s.Guide(seams.Armhole, armhole)
	s.Guide(seams.Shoulder.Stretch(1), construct.Line(u.openTip.At, u.openMiddle.At))
	s.Guide(seams.Shoulder.Dart(0), construct.Join(construct.Line(u.openMiddle.At, u.bustPoint.At),
		construct.Line(u.bustPoint.At, u.middle.At)))
	if o.Shaping == ArmholeDart {
		edges, dart = u.armholeDart(side, armhole)
		s.Draw("cut from "+construct.Numbers(u.openAcross)+" to "+construct.Numbers(u.bustPoint)+
			" and close the shoulder dart", "this opens the armhole dart")
		return edges, []pieces.Dart{dart}
	}
	drop := f.sideDartDrop(f.sideAboveWaist(side))
	edges, dart = u.sideDart(side, armhole, drop)
	s.Guide(seams.SideSeam.Stretch(2), construct.Stretch(side, side.Length()-drop, side.Length()))
	s.Draw("cut from the side seam, {} below "+construct.Numbers(u.underarm)+", to "+construct.Numbers(u.bustPoint)+
		" and close the shoulder dart", "this opens the side dart", drop)
	return edges, []pieces.Dart{dart}
}

// armhole with the dart open at the shoulder, and the length of its lower part
// up to the across front.
func (u frontUpper) armhole(side pieces.Path) (pieces.Path, float64) {
	square := construct.Square(construct.Direction(u.openMiddle.At, u.openTip.At))
	// Half of the dart's turn: the lower part is hollowed more than the
	// back's, as the arm reaches forward.
	up := construct.Heading(90 - u.dart/2)
	lower := construct.Curve(u.underarm.At, construct.Square(sideTop(side)), 0.42, u.openAcross.At, up, 0.42)
	upper := construct.Curve(u.openAcross.At, up, 0.35, u.openTip.At, square, 0.3)
	return construct.Join(lower, upper), lower.Length()
}

// shoulderDart gives the edges from the waist to the neck with the bust dart
// in the middle of the shoulder.
func (u frontUpper) shoulderDart(side, armhole pieces.Path) ([]pieces.Edge, pieces.Dart) {
	middle := construct.Between(u.openMiddle.At, u.middle.At, 0.5)
	apex := construct.Toward(u.bustPoint.At, middle, dartShort)
	// Pressed towards the centre front: the second leg, so the mouth is drawn
	// from there.
	mouth := construct.DartMouth(u.middle.At, apex, u.openMiddle.At,
		construct.Direction(u.middle.At, u.neck.At)).Reverse()
	edges := []pieces.Edge{
		construct.Edge(seams.SideSeam, side),
		construct.Edge(seams.Armhole, armhole),
		construct.Edge(seams.Shoulder.Stretch(1), construct.Line(u.openTip.At, u.openMiddle.At)),
		construct.Edge(seams.Shoulder.Mouth(0), mouth),
		construct.Edge(seams.Shoulder.Stretch(2), construct.Line(u.middle.At, u.neck.At)),
	}
	return edges, pieces.Dart{Name: seams.Shoulder.Dart(0), Mouth: seams.Shoulder.Mouth(0), Start: u.openMiddle.At,
		Apex: apex, End: u.middle.At}
}

// armholeDart gives the edges from the waist to the neck with the bust dart
// closed at the shoulder and opened in the armhole instead, at the across
// front.
func (u frontUpper) armholeDart(side, armhole pieces.Path) ([]pieces.Edge, pieces.Dart) {
	lower, upper := armhole[:1], armhole[1:].Map(construct.Turning(u.bustPoint.At, u.dart))
	first, second := lower.End(), upper.Start()
	apex := construct.Toward(u.bustPoint.At, construct.Between(first, second, 0.5), dartShort)
	mouth := construct.DartMouth(first, apex, second, construct.Back(lower[0].Tangent(1)))
	edges := []pieces.Edge{
		construct.Edge(seams.SideSeam, side),
		construct.Edge(seams.Armhole.Stretch(1), lower),
		construct.Edge(seams.Armhole.Mouth(0), mouth),
		construct.Edge(seams.Armhole.Stretch(2), upper),
		construct.Edge(seams.Shoulder, construct.Line(u.tip.At, u.neck.At)),
	}
	return edges, pieces.Dart{Name: seams.Armhole.Dart(0), Mouth: seams.Armhole.Mouth(0), Start: first, Apex: apex,
		End: second}
}

// sideDart gives the edges from the waist to the neck with the bust dart
// closed at the shoulder and opened in the side seam instead, so far below the
// underarm.
func (u frontUpper) sideDart(side, armhole pieces.Path, drop float64) ([]pieces.Edge, pieces.Dart) {
	close := construct.Turning(u.bustPoint.At, u.dart)
	low := construct.Stretch(side, 0, side.Length()-drop)
	turned := construct.Stretch(side, side.Length()-drop, side.Length()).Map(close)
	first, second := low.End(), turned.Start()

	apex := construct.Toward(u.bustPoint.At, construct.Between(first, second, 0.5), dartShort)
	mouth := construct.DartMouth(first, apex, second, construct.Back(low.Tangent(low.Length())))
	edges := []pieces.Edge{
		construct.Edge(seams.SideSeam.Stretch(1), low),
		construct.Edge(seams.SideSeam.Mouth(0), mouth),
		construct.Edge(seams.SideSeam.Stretch(2), turned),
		construct.Edge(seams.Armhole, armhole.Map(close)),
		construct.Edge(seams.Shoulder, construct.Line(u.tip.At, u.neck.At)),
	}
	return edges, pieces.Dart{Name: seams.SideSeam.Dart(0), Mouth: seams.SideSeam.Mouth(0), Start: first, Apex: apex,
		End: second}
}
