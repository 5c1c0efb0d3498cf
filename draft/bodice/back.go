package bodice

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// backShoulderEase is how much longer the back shoulder is, eased onto the
// front over the shoulder blade ([source.CommonPractice]: 0.5 to 1 cm).
const backShoulderEase = 5

func (f figures) backUpper(s *construct.Sheet, armhole float64) backUpper {
	if f.proportional {
		return f.proportionalBack(s, armhole)
	}
	var b backUpper
	b.waist = s.Start(0, 0, "the centre back at the waist")
	b.nape = s.Up(b.waist, f.BackNeckPointToWaist, "back neck point to waist")
	bust := s.Up(b.waist, f.bustLine, "the bust line: back neck point to waist less scye depth and 5 mm")

	shoulderLevel := s.Up(b.nape, f.neckRise(), "a twenty-fifth of the neck girth")
	b.neck = s.Right(shoulderLevel, neckWidth*f.NeckBase, "the neck point: a fifth of the neck girth")

	b.tip = s.Slope(b.neck, f.Shoulder+backShoulderEase, backFall, "the shoulder tip, falling 1 in 3: shoulder "+
		"length and 5 mm to ease in")

	b.beside = b.tip

	// The back is narrowest halfway up from the bust line to the shoulder tip.
	half := s.Up(bust, (b.tip.Y()-f.bustLine)/2, "half the height of the shoulder tip above the bust line")
	b.across = s.Right(half, f.acrossBack, "half the across back width and a twentieth of the bust ease")

	// The side seam comes down from the middle of the armhole.
	level := s.Up(b.waist, f.underarm, "the height of the underarm")
	b.underarm = s.Right(level, f.acrossBack+armhole/2,
		"the underarm: the across back with half the width of the armhole")
	return b
}

// back draws the back bodice.
func (f figures) back(s *construct.Sheet, o Options, b *backUpper, side pieces.Path, w waistSeam) pieces.Piece {
	w.record(s, b.waist, b.underarm, side, f)
	edges := b.shoulderEdges()
	shoulder := construct.Back(edges[len(edges)-1].Path.Tangent(0))
	square := construct.Square(shoulder)
	atTip := construct.Square(construct.Back(edges[0].Path.Tangent(0)))

	// Square to the side seam, upright at the across back, square to the
	// shoulder: so the armhole runs on smoothly into the front.
	lower := construct.Curve(b.underarm.At, construct.Square(sideTop(side)), 0.42, b.across.At, orb.Point{0, 1}, 0.42)
	upper := construct.Curve(b.across.At, orb.Point{0, 1}, 0.35, b.tip.At, atTip, 0.3)
	s.Draw("draw the armhole "+construct.Numbers(b.underarm, b.across, b.tip),
		"square to the side seam and to the shoulder")

	openNeck(s, &b.neck, &b.beside, &b.nape, o.NeckWiden, o.BackNeckDrop)
	neck := construct.Curve(b.neck.At, construct.Back(square), 0.12, b.nape.At, orb.Point{-1, 0}, 0.6)
	if o.altered() {
		neck = neckCurve(b.neck.At, shoulder, b.nape.At)
	}
	s.Draw("draw the neck "+construct.Numbers(b.neck, b.nape), "square to the shoulder and to the centre back")

	piece := pieces.Piece{Name: role.BackBodice.String(), Role: role.BackBodice, Cut: 2, Pair: true}
	piece.Edges, piece.Darts = w.edges()
	piece.Edges = append(piece.Edges,
		construct.Edge(seams.SideSeam, side),
		construct.Edge(seams.Armhole, construct.Join(lower, upper)))
	piece.Edges = append(piece.Edges, b.shoulderEdges()...)
	piece.Darts = append(piece.Darts, b.darts...)
	piece.Edges = append(piece.Edges,
		construct.Edge(seams.Neck, neck),
		construct.Edge(seams.CentreBack, construct.Line(b.nape.At, w.foot())),
	)
	if o.BackOnFold {
		piece.Cut, piece.Pair, piece.Fold = 1, false, seams.CentreBack
	}
	notch := pieces.Notch{Edge: seams.Armhole, At: lower.Length(), Count: 2, Match: marks.BackArmhole}
	if o.Princess == FromArmhole {
		notch.At = float64(notch.At * armholeNotch)
	}
	piece.Notches = []pieces.Notch{notch}
	piece.Grain = upright(f.acrossBack/4, b.nape.Y())
	piece.Marks = []pieces.Mark{{Name: marks.BustLine,
		Path: construct.Line(orb.Point{0, f.bustLine}, orb.Point{f.acrossBack, f.bustLine})}}
	return piece
}
