package part

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// Measures are what parts are drafted from. A kind needs only some of them.
type Measures struct {
	// Front and Back are the bodice that the parts join; nil without one.
	Front, Back *pieces.Piece
	// FrontWaist and BackWaist are the lengths of the bodice's waist seams,
	// halves as drawn, darts closed; 0 without a bodice.
	FrontWaist, BackWaist float64
	Waist, Wrist          float64 // girths of the body
	// WaistSeam is the length all round of the waist seam of a skirt or
	// trousers; 0 without.
	WaistSeam float64
	// WaistEase is what that seam has over the girth of the body there.
	WaistEase float64
	// WristWidth is the width of the sleeve at the wrist, Underarm the length
	// of its underarm seam; 0 without.
	WristWidth, Underarm float64
	// Pieces are all pieces drafted before the part.
	Pieces []pieces.Piece
}

// Block is a part as drafted.
type Block struct {
	Pieces []pieces.Piece
	// Sheets are the drafts, step by step, of pieces that are not drawn corner
	// by corner.
	Sheets []construct.Sheet
	// Pairings are the seams to be compared.
	Pairings []construct.Pairing
	// Figures are lengths that the maker needs beside the pieces.
	Figures []construct.Figure
}

// Usual eases and depths, in mm [source.CommonPractice].
const (
	waistbandEase    = 15 // 1 to 2 cm
	WaistbandOverlap = 30 // what a waistband is longer, to button over
	cuffEase         = 20
	cuffOverlap      = 20
	usualFullness    = 2
	collarPoint      = 0.2 // how far the point stands out, for each mm of depth
)

// usualDepth of each kind, in mm; 0 where it must be given [source.CommonPractice].
var usualDepth = map[Kind]float64{
	Collar: 70, NeckFacing: 60, Cuff: 60, Waistband: 30, ShapedWaistband: 50,
	ShirtCollar: 45, FlatCollar: 60, MandarinCollar: 35, ButtonedCuff: 60, SleevePlacket: 20,
	ArmholeFacing: 50, CombinedFacing: 70, Facing: 60, Belt: 40, Tie: 30, BiasStrip: 40,
}

// FinishedDepth is the depth asked for, or the usual one of the kind.
func (o Options) FinishedDepth() float64 {
	if o.Depth == 0 {
		return usualDepth[o.Kind]
	}
	return o.Depth
}

// CuffLength is the finished length of a cuff around a wrist: 2 cm of ease and
// 2 cm to button over [source.CommonPractice].
func CuffLength(wrist float64) float64 { return wrist + cuffEase + cuffOverlap }

// polygon is a piece with straight edges, cut once, its grainline upright.
func polygon(name string, corners []orb.Point, edges ...seams.Name) pieces.Piece {
	piece := pieces.Piece{Name: name, Cut: 1}
	right, top := 0.0, 0.0
	for i, edge := range edges {
		piece.Edges = append(piece.Edges, construct.Edge(edge, construct.Line(corners[i], corners[(i+1)%len(corners)])))
		right, top = max(right, corners[i][0]), max(top, corners[i][1])
	}
	piece.Grain = pieces.Grain{From: orb.Point{right / 3, float64(0.2 * top)},
		To: orb.Point{right / 3, float64(0.8 * top)}}
	return piece
}
