package part

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
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

// Draft drafts a part: one piece, or a front and a back. The error is a
// sentence that names what is missing or cannot be.
func Draft(m Measures, o Options) (Block, error) {
	name := o.Name
	if name == "" {
		name = string(o.Kind)
	}
	if err := check(o, name); err != nil {
		return Block{}, err
	}
	if draw, ok := drawn[o.Kind]; ok {
		block, err := draw(m, o, name)
		if err != nil {
			return Block{}, err
		}
		return asStrips(o, name, block)
	}
	return Block{}, construct.About(subject.Kind).Refuse("there is no part %q; use one of: %s", o.Kind, kindList())
}

// drawn is how each kind is drafted.
var drawn = map[Kind]func(m Measures, o Options, name string) (Block, error){
	Collar: collar, ShirtCollar: shirtCollar, FlatCollar: flatCollar, MandarinCollar: mandarinCollar,
	Cuff: cuff, ButtonedCuff: buttonedCuff, SleevePlacket: sleevePlacket,
	NeckFacing: neckFacing, ArmholeFacing: armholeFacing, CombinedFacing: combinedFacing, Facing: anyFacing,
	Waistband: waistband, ShapedWaistband: shapedWaistband, GatheredSkirt: gatheredSkirt, StraightPanel: straightPanel,
	Belt: belt, Tie: tie, BiasStrip: biasStrip, PatchPocket: patchPocket, PocketBag: pocketBag,
}

func straightPanel(_ Measures, o Options, name string) (Block, error) {
	return Block{Pieces: []pieces.Piece{pieces.Rectangle(name, o.Length, o.Depth)}}, nil
}

func check(o Options, name string) error {
	switch {
	case o.Depth < 0:
		return construct.About(subject.Depth).Refuse("%s: the depth is %s; it cannot be negative", name,
			construct.Length(o.Depth))
	case o.Length < 0:
		return construct.About(subject.Length).Refuse("%s: the length is %s; it cannot be negative", name,
			construct.Length(o.Length))
	case o.Fullness != 0 && (o.Fullness < 1 || o.Fullness > 5):
		return construct.About(subject.Fullness).Refuse("%s: a fullness of %.4g cannot be gathered; 1.5 to 3 is usual",
			name, o.Fullness)
	case o.Depth == 0 && (o.Kind == GatheredSkirt || o.Kind == StraightPanel):
		return construct.About(subject.Depth).Refuse("%s: the length is missing: give its depth, from the upper edge "+
			"to the hem", name)
	case o.Length == 0 && o.Kind == StraightPanel:
		return construct.About(subject.Length).Refuse("%s: the width is missing: give its length along the upper edge", name)
	}
	return nil
}

// polygon is a piece with straight edges, cut once, its grainline upright.
func polygon(name string, corners []orb.Point, edges ...seams.Name) pieces.Piece {
	piece := pieces.Piece{Name: name, Cut: 1}
	right, top := 0.0, 0.0
	for i, edge := range edges {
		piece.Edges = append(piece.Edges, construct.Edge(edge, construct.Line(corners[i], corners[(i+1)%len(corners)])))
		right, top = max(right, corners[i][0]), max(top, corners[i][1])
	}
	piece.Grain = pieces.Grain{From: orb.Point{right / 3, 0.2 * top}, To: orb.Point{right / 3, 0.8 * top}}
	return piece
}

func kindList() string {
	list := ""
	for i, kind := range Kinds() {
		if i > 0 {
			list += ", "
		}
		list += string(kind)
	}
	return list
}
