package part

import (
	"fmt"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
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

// Usual eases and depths, in mm (common practice).
const (
	waistbandEase    = 15 // 1 to 2 cm
	WaistbandOverlap = 30 // what a waistband is longer, to button over
	cuffEase         = 20
	cuffOverlap      = 20
	usualFullness    = 2
	collarPoint      = 0.2 // how far the point stands out, for each mm of depth
)

// usualDepth of each kind, in mm; 0 where it must be given.
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
// 2 cm to button over (common practice).
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
	switch o.Kind {
	case ShirtCollar:
		return shirtCollar(m, o, name)
	case FlatCollar:
		return flatCollar(m, o, name)
	case MandarinCollar:
		return mandarinCollar(m, o, name)
	case ButtonedCuff:
		return buttonedCuff(m, o, name)
	case SleevePlacket:
		return sleevePlacket(m, o, name)
	case ArmholeFacing:
		return armholeFacing(m, o, name)
	case CombinedFacing:
		return combinedFacing(m, o, name)
	case Facing:
		return anyFacing(m, o)
	case Belt:
		return belt(m, o, name)
	case Tie:
		return tie(o, name)
	case BiasStrip:
		return biasStrip(o, name)
	case PatchPocket:
		return patchPocket(o, name)
	case PocketBag:
		return pocketBag(m, o, name)
	}
	made, err := plain(m, o, name)
	return Block{Pieces: made}, err
}

// plain drafts the kinds that need no sheet of their own.
func plain(m Measures, o Options, name string) ([]pieces.Piece, error) {
	switch o.Kind {
	case Collar:
		return collar(m, o, name)
	case NeckFacing:
		return neckFacing(m, o, name)
	case Cuff:
		return cuff(m, o, name)
	case Waistband:
		return waistband(m, o, name)
	case ShapedWaistband:
		return shapedWaistband(m, o, name)
	case GatheredSkirt:
		return gatheredSkirt(m, o, name)
	case StraightPanel:
		return []pieces.Piece{pieces.Rectangle(name, o.Length, o.Depth)}, nil
	}
	return nil, fmt.Errorf("there is no part %q; use one of: %s", o.Kind, kindList())
}

func check(o Options, name string) error {
	switch {
	case o.Depth < 0:
		return construct.Refuse("%s: the depth is %s; it cannot be negative", name, construct.Length(o.Depth))
	case o.Length < 0:
		return construct.Refuse("%s: the length is %s; it cannot be negative", name, construct.Length(o.Length))
	case o.Fullness != 0 && (o.Fullness < 1 || o.Fullness > 5):
		return fmt.Errorf("%s: a fullness of %.4g cannot be gathered; 1.5 to 3 is usual", name, o.Fullness)
	case o.Depth == 0 && (o.Kind == GatheredSkirt || o.Kind == StraightPanel):
		return fmt.Errorf("%s: the length is missing: give its depth, from the upper edge to the hem", name)
	case o.Length == 0 && o.Kind == StraightPanel:
		return fmt.Errorf("%s: the width is missing: give its length along the upper edge", name)
	}
	return nil
}

// collar is a straight collar: its half neck edge as long as half the neck
// seam, its end slanting out to a point (common practice). It opens where the
// bodice does.
func collar(m Measures, o Options, name string) ([]pieces.Piece, error) {
	neck := o.Length / 2
	if neck == 0 {
		if m.Front == nil {
			return nil, fmt.Errorf("%s: there is no neck to fit it to: draft a bodice, or give the collar's length", name)
		}
		neck = construct.SeamLength(*m.Front, "neck") + construct.SeamLength(*m.Back, "neck")
	}
	fold := "centre back"
	if m.Back != nil && m.Back.Fold == "" && m.Front.Fold != "" {
		fold = "centre front"
	}
	depth := o.FinishedDepth()
	corners := []orb.Point{{0, 0}, {neck, 0}, {neck + collarPoint*depth, depth}, {0, depth}}
	piece := polygon(name, corners, "neck", "front collar edge", "outer collar edge", fold)
	piece.Cut, piece.Fold = 2, fold
	return []pieces.Piece{piece}, nil
}

// cuff is straight and folded double along its middle.
func cuff(m Measures, o Options, name string) ([]pieces.Piece, error) {
	length := o.Length
	if length == 0 {
		if m.Wrist == 0 {
			return nil, fmt.Errorf("%s: the wrist girth is missing: measure it, or give the cuff's length", name)
		}
		length = CuffLength(m.Wrist)
	}
	piece := folded(name, length, o.FinishedDepth())
	piece.Cut, piece.Pair = 2, true
	return []pieces.Piece{piece}, nil
}

// folded is a rectangle folded double along its length, the fold line marked.
func folded(name string, length, depth float64) pieces.Piece {
	piece := pieces.Rectangle(name, length, 2*depth)
	piece.Marks = []pieces.Mark{{Name: "fold line", Path: construct.Line(orb.Point{0, depth}, orb.Point{length, depth})}}
	return piece
}

// gatheredSkirt is a front and a back panel, each drawn as a half.
func gatheredSkirt(m Measures, o Options, name string) ([]pieces.Piece, error) {
	front, back := m.FrontWaist, m.BackWaist
	if front == 0 {
		if m.Waist == 0 && o.Length == 0 {
			return nil, fmt.Errorf("%s: the waist girth is missing: measure it, or give the length of the skirt's upper edge", name)
		}
		front, back = (m.Waist+waistbandEase)/4, (m.Waist+waistbandEase)/4
	}
	if o.Length > 0 {
		front, back = o.Length/4, o.Length/4
	}
	fullness := o.Fullness
	if fullness == 0 {
		fullness = usualFullness
	}
	frontPanel := skirtPanel(name+" front", "centre front", front*fullness, o.Depth)
	backPanel := skirtPanel(name+" back", "centre back", back*fullness, o.Depth)
	if m.Back != nil && m.Back.Fold == "" {
		backPanel.Fold, backPanel.Cut, backPanel.Pair = "", 2, true
	}
	return []pieces.Piece{frontPanel, backPanel}, nil
}

func skirtPanel(name, centre string, width, length float64) pieces.Piece {
	corners := []orb.Point{{0, 0}, {width, 0}, {width, length}, {0, length}}
	piece := polygon(name, corners, "skirt hem", "side", "waist", centre)
	piece.Edges[0].Hem = true
	piece.Fold = centre
	return piece
}

// polygon is a piece with straight edges, cut once, its grainline upright.
func polygon(name string, corners []orb.Point, edges ...string) pieces.Piece {
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
