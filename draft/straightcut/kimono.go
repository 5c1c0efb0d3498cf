package straightcut

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// The wrapped robe, in mm: straight breadths, straight sleeves and a band along
// the front edges [source.Burnham]; its figures are ours [source.OwnChoice].
const (
	wrapShare = 0.45 // of half the width, by which the fronts wrap over
	bandWidth = 60   // finished
	beltWidth = 50   // finished
	beltHang  = 900  // what hangs down from the knot, both ends together
	belowScye = 180  // where the front edge is upright, below the scye depth
	slantEnd  = 0.7  // of the way down there, at which the slant aims
)

func (f figures) kimono() (Block, error) {
	u, err := f.upper()
	if err != nil {
		return Block{}, err
	}
	sheets := []construct.Sheet{{Piece: role.FrontKimono.String()}, {Piece: role.BackKimono.String()}}
	front, back := f.kimonoFront(&sheets[0], u), f.kimonoBack(&sheets[1], u)
	edge, neck := construct.SeamLength(front, seams.FrontEdge), construct.SeamLength(back, seams.Neck)
	band := strip("front band", edge+neck, bandWidth, 2)
	length := f.fuller() + beltHang
	belt := strip("belt half", length/2, beltWidth, 2)

	b := Block{Pieces: []pieces.Piece{front, back}, Sheets: sheets}
	f.addSleeve(&b, u)
	b.Pieces = append(b.Pieces, band, belt)
	b.Sheets = append(b.Sheets,
		rectangleSheet(band.Name, 2*bandWidth, edge+neck, "twice the finished width",
			"the front edge and half the back neck; both bands meet at the centre back"),
		rectangleSheet(belt.Name, 2*beltWidth, length/2, "twice the finished width",
			"half of the fuller of bust and hip and 90 cm; both halves meet at the centre back"))
	b.Pairings = append(b.Pairings,
		construct.Equal("shoulder", "front shoulder", construct.SeamLength(front, seams.Shoulder),
			"back shoulder", construct.SeamLength(back, seams.Shoulder)),
		construct.Equal("side", "front side", construct.SeamLength(front, seams.SideSeam),
			"back side", construct.SeamLength(back, seams.SideSeam)),
		construct.Equal("front band", "front band", construct.SeamLength(band, seams.Right),
			"front edge and half the back neck", edge+neck),
		f.widthPairing(4*u.width))
	return b, nil
}

func (f figures) kimonoBack(s *construct.Sheet, u upper) pieces.Piece {
	middle, neckPoint := orb.Point{0, -backNeck}, orb.Point{u.neck, 0}
	piece := pieces.Piece{
		Name: role.BackKimono.String(), Role: role.BackKimono, Cut: 1, Fold: seams.CentreBack,
		Edges: append(f.kimonoSide(u, 0),
			construct.Edge(seams.Neck, neckCurve(neckPoint, middle)),
			construct.Edge(seams.CentreBack, construct.Line(middle, orb.Point{0, -f.Length}))),
		Grain: pieces.Grain{From: orb.Point{u.width / 2, float64(-0.8 * f.Length)},
			To: orb.Point{u.width / 2, -0.25 * f.Length}},
	}
	f.recordUpper(s, u, backNeck)
	s.Draw("draw the side straight down from the underarm, and the hem {} below the neck point's level", "the length",
		f.Length)
	return piece
}

// kimonoFront wraps over the centre by its share of the width, its edge
// slanting from the neck point.
func (f figures) kimonoFront(s *construct.Sheet, u upper) pieces.Piece {
	wrap := wrapShare * u.width
	bend := orb.Point{-wrap, -(f.ScyeDepth + belowScye)}
	neckPoint := orb.Point{u.neck, 0}
	slant := construct.Direction(neckPoint, orb.Point{-wrap, float64(slantEnd * bend[1])})
	edge := construct.Join(
		construct.Bend(neckPoint, slant, 0.7, bend, orb.Point{0, -1}, 0.7),
		construct.Line(bend, orb.Point{-wrap, -f.Length}))
	piece := pieces.Piece{
		Name: role.FrontKimono.String(), Role: role.FrontKimono, Cut: 2, Pair: true,
		Edges: append(f.kimonoSide(u, wrap), construct.Edge(seams.FrontEdge, edge)),
		Grain: pieces.Grain{From: orb.Point{u.width / 2, float64(-0.8 * f.Length)},
			To: orb.Point{u.width / 2, -0.25 * f.Length}},
		Marks: []pieces.Mark{{Name: marks.CentreFront,
			Path: construct.Line(orb.Point{0, bend[1]}, orb.Point{0, -f.Length})}},
	}
	f.recordUpper(s, u, u.frontNeck())
	s.Draw("draw the side straight down from the underarm, and the hem {} below the neck point's level",
		"the length", f.Length)
	s.Draw("draw the front edge {} to the left of the centre, from the hem up to {} below the neck point's level, "+
		"and from there slanting to the neck point", "45 parts in 100 of the width; scye depth and 18 cm", wrap,
		-bend[1])
	return piece
}

// kimonoSide is the outline from the hem, so far left of the centre, over the
// side and the armhole to the neck point.
func (f figures) kimonoSide(u upper, wrap float64) []pieces.Edge {
	foot, underarm, tip := orb.Point{u.width, -f.Length}, orb.Point{u.width, -u.armhole}, orb.Point{u.width, 0}
	hem := construct.Edge(seams.BodyHem, construct.Line(orb.Point{-wrap, -f.Length}, foot))
	hem.Hem = true
	return []pieces.Edge{
		hem,
		construct.Edge(seams.SideSeam, construct.Line(foot, underarm)),
		construct.Edge(seams.Armhole, construct.Line(underarm, tip)),
		construct.Edge(seams.Shoulder, construct.Line(tip, orb.Point{u.neck, 0})),
	}
}
