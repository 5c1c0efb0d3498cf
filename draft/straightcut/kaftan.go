package straightcut

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
	"ellwand/pieces/source"
)

// The kaftan, in mm: a fall of straight breadths joined by straight sleeves, as
// loom-wide garments are cut [source.Burnham]; its figures are ours
// [source.OwnChoice].
const (
	neckEase     = 10  // added to a fifth of the neck girth
	backNeck     = 20  // depth of the back neck
	slit         = 150 // opening at the centre front, for the head
	armholeEase  = 40  // added to the scye depth
	armEase      = 100 // least ease of a sleeve round the arm
	leastSleeve  = 80
	kaftanSpread = 0.09 // how far a kaftan's side runs out for every mm down
)

// upper holds what kaftan and kimono have in common: the neck, the shoulder
// line and the armhole, drawn from the neck point's level down.
type upper struct {
	width   float64 // half the front or back
	neck    float64 // half the neck's width
	armhole float64 // depth
	sleeve  float64 // length of the sleeve
}

func (f figures) upper() (upper, error) {
	u := upper{
		width: (f.fuller() + f.Ease) / 4, neck: f.NeckBase/5 + neckEase,
		armhole: max(f.ScyeDepth+armholeEase, (f.UpperArm+armEase)/2),
	}
	u.sleeve = u.neck + f.Shoulder + f.ShoulderToWrist - u.width
	switch {
	case u.width < u.neck+40:
		return u, construct.About(subject.NeckBaseGirth, subject.BustGirth).Refuse(
			"%s: the neck base girth of %s leaves no shoulder on a bust girth of %s: measure "+
				"both again, or give more ease",
			"%s: der Halsansatzumfang von %s lässt bei einem Brustumfang von %s keine Schulter: "+
				"messen Sie beide noch einmal, oder geben Sie mehr Bequemlichkeit",
			f.name, construct.Length(f.NeckBase), construct.Length(f.Bust))
	case f.Length < u.armhole+150:
		return u, construct.About(subject.Length).Refuse("%s: a length of %s leaves too little side below an armhole "+
			"of %s (scye depth %s); ask for %s or more",
			"%s: eine Länge von %s lässt zu wenig Seite unter einem Armloch von %s (Armlochtiefe "+
				"%s); verlangen Sie %s oder mehr", f.name,
			construct.Length(f.Length), construct.Length(u.armhole), construct.Length(f.ScyeDepth),
			construct.AtLeast(u.armhole+150))
	}
	return u, nil
}

// frontNeck is the depth of the front neck: a fifth of the neck girth and 1 cm.
func (u upper) frontNeck() float64 { return u.neck }

func (f figures) kaftan() (Block, error) {
	u, err := f.upper()
	if err != nil {
		return Block{}, err
	}
	sheets := []construct.Sheet{{Piece: role.FrontKaftan.String()}, {Piece: role.BackKaftan.String()}}
	front := f.kaftanHalf(&sheets[0], u, role.FrontKaftan, u.frontNeck())
	back := f.kaftanHalf(&sheets[1], u, role.BackKaftan, backNeck)
	top := front.Edges[4].Path.End()
	front.Marks = append(front.Marks, pieces.Mark{Name: marks.HeadSlit,
		Path: construct.Line(top, orb.Point{0, top[1] - slit})})
	b := Block{Pieces: []pieces.Piece{front, back}, Sheets: sheets}
	f.addSleeve(&b, u)
	b.Pairings = append(b.Pairings,
		construct.Equal("shoulder", "front shoulder", construct.SeamLength(front, seams.Shoulder), "back shoulder",
			construct.SeamLength(back, seams.Shoulder)),
		construct.Equal("side", "front side", construct.SeamLength(front, seams.SideSeam), "back side",
			construct.SeamLength(back, seams.SideSeam)),
		f.widthPairing(4*u.width))
	return b, nil
}

// kaftanHalf draws the front or the back, half of it, on the fold.
func (f figures) kaftanHalf(s *construct.Sheet, u upper, as role.Role, neckDepth float64) pieces.Piece {
	spread := float64(kaftanSpread * (f.Length - u.armhole))
	way := construct.Heading(90 + portable.Atan(1.5*kaftanSpread)*180/math.Pi)
	underarm := orb.Point{u.width, -u.armhole}
	level := orb.Point{u.width + spread, -f.Length}
	seam := construct.Curve(level, way, 0.4, underarm, orb.Point{0, 1}, 0.3)
	// Raised until the side is as long as the straight way down.
	for range 20 {
		level = construct.Go(level, way, seam.Length()-(f.Length-u.armhole))
		seam = construct.Curve(level, way, 0.4, underarm, orb.Point{0, 1}, 0.3)
	}
	foot := seam.Start()
	hem := construct.Edge(seams.BodyHem, construct.Curve(orb.Point{0, -f.Length}, orb.Point{1, 0}, 0.4, foot,
		construct.Back(construct.Square(seam[0].Tangent(0))), 0.3))
	hem.Hem = true
	neckPoint, middle := orb.Point{u.neck, 0}, orb.Point{0, -neckDepth}
	var centre seams.Name = seams.CentreFront
	if as == role.BackKaftan {
		centre = seams.CentreBack
	}
	piece := pieces.Piece{
		Name: as.String(), Role: as, Cut: 1, Fold: centre,
		Edges: []pieces.Edge{
			hem,
			construct.Edge(seams.SideSeam, seam),
			construct.Edge(seams.Armhole, construct.Line(underarm, orb.Point{u.width, 0})),
			construct.Edge(seams.Shoulder, construct.Line(orb.Point{u.width, 0}, neckPoint)),
			construct.Edge(seams.Neck, neckCurve(neckPoint, middle)),
			construct.Edge(centre, construct.Line(middle, orb.Point{0, -f.Length})),
		},
		Grain: pieces.Grain{From: orb.Point{u.width / 2, float64(-0.8 * f.Length)},
			To: orb.Point{u.width / 2, -0.25 * f.Length}},
	}
	f.recordUpper(s, u, neckDepth)
	s.Draw("from the underarm draw the side down to a point {} from the centre and {} above the hem's level, "+
		"straight at first, then running out", "9 parts in 100 of the way down", foot[0], foot[1]+f.Length)
	s.Draw("draw the hem from {} straight below the neck point's level, square to the centre and to the side",
		"the length", f.Length)
	return piece
}

// quarterTurn is the share at which a bend is a quarter of a circle or an
// ellipse, within 3 parts in 10000 [source.Geometry].
const quarterTurn = 0.5523

// neckCurve is a quarter of an ellipse, square to the shoulder line and to the
// centre.
func neckCurve(neckPoint, middle orb.Point) pieces.Path {
	return construct.Bend(neckPoint, orb.Point{0, -1}, quarterTurn, middle, orb.Point{-1, 0}, quarterTurn)
}

// recordUpper notes the steps from the shoulder line to the underarm.
func (f figures) recordUpper(s *construct.Sheet, u upper, neckDepth float64) {
	top := s.Start(0, 0, "the centre, at the level of the neck point")
	neck := s.Right(top, u.neck, "the neck point: a fifth of the neck girth and 1 cm")
	shoulder := s.Right(top, u.width, "the end of the shoulder line: a quarter of the fuller of bust and hip, and "+
		"its ease")
	low := s.Down(top, neckDepth, "the neck at the centre: 2 cm in the back, as deep as wide in the front")
	under := s.Down(shoulder, u.armhole, "the underarm: scye depth and 4 cm, or half the upper arm girth and 5 cm if "+
		"that is more")
	s.Draw("draw the neck "+construct.Numbers(neck, low)+" and the armhole "+construct.Numbers(under, shoulder),
		"the neck square to the shoulder line and to the centre")
}

// addSleeve adds straight sleeves where the shoulder line leaves room for them.
func (f figures) addSleeve(b *Block, u upper) {
	if u.sleeve < leastSleeve {
		b.Warnings = append(b.Warnings, construct.Both("the shoulder line reaches to within %s of the wrist: there "+
			"are no sleeves", "die Schulterlinie reicht bis auf %s ans Handgelenk: es gibt keine Ärmel",
			construct.Length(max(0, u.sleeve))))
		return
	}
	piece := named(pieces.Rectangle(role.Sleeve.String(), 2*u.armhole, u.sleeve),
		map[seams.Name]bool{seams.WristHem: true}, seams.WristHem, seams.FrontUnderarm, seams.SleeveHead,
		seams.BackUnderarm)
	piece.Role, piece.Cut, piece.Pair = role.Sleeve, 2, true
	piece.Notches = []pieces.Notch{{Edge: seams.SleeveHead, At: u.armhole, Count: 1, Match: marks.Shoulder}}
	b.Pieces = append(b.Pieces, piece)
	b.Sheets = append(b.Sheets, rectangleSheet("sleeve", 2*u.armhole, u.sleeve, "twice the armhole",
		"from the neck point over the shoulder to the wrist, less the shoulder line"))
	b.Pairings = append(b.Pairings,
		construct.Equal("armhole", "sleeve head", construct.SeamLength(piece, seams.SleeveHead),
			"front and back armhole", 2*u.armhole),
		construct.Pairing{Seam: "sleeve", Of: "sleeve, all round", Length: 2 * u.armhole, Against: "upper arm girth",
			Other: f.UpperArm,
			Least: armEase, Most: construct.NoLimit,
			Normal: construct.Say("10 cm of ease or more (%s)", source.OwnChoice)})
}

// widthPairing sets the width against the body.
func (f figures) widthPairing(width float64) construct.Pairing {
	return construct.Pairing{
		Seam: "width", Of: "width all round", Length: width, Against: "the fuller of bust and hip", Other: f.fuller(),
		Least: f.Ease - construct.Matching, Most: construct.NoLimit,
		Normal: construct.Say("%s of ease, as asked for: 20 to 30 cm is usual (%s)",
			construct.Length(f.Ease), source.OwnChoice),
	}
}
