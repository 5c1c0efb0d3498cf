// Package part drafts the smaller pieces of a garment: collar, facings, cuff,
// waistband and skirt panels, from the lengths of the seams that they join.
// Lengths are millimetres.
package part

import "ellwand/pieces/seams"

// Kind of a part.
type Kind string

const (
	// Collar is a straight collar, half on the fold, two cut.
	Collar Kind = "collar"
	// NeckFacing is a front and a back facing, drawn from the neck edges.
	NeckFacing Kind = "neck facing"
	// Cuff is a straight cuff folded double, a pair.
	Cuff Kind = "cuff"
	// Waistband is a straight band folded double.
	Waistband Kind = "waistband"
	// ShapedWaistband is a curved band whose upper edge lies at the natural
	// waist, and whose lower edge fits a waist seam that much below it.
	ShapedWaistband Kind = "shaped waistband"
	// GatheredSkirt is a front and a back panel, gathered into the waist.
	GatheredSkirt Kind = "gathered skirt"
	// StraightPanel is a rectangle of a given width and length.
	StraightPanel Kind = "straight panel"
	// ShirtCollar is a collar stand with its button extension and a collar
	// fall joined to it, each half on the fold, two cut.
	ShirtCollar Kind = "shirt collar"
	// FlatCollar lies flat round the neck; it is drawn on front and back laid
	// shoulder to shoulder.
	FlatCollar Kind = "flat collar"
	// MandarinCollar is a standing band, half on the fold, two cut.
	MandarinCollar Kind = "mandarin collar"
	// ButtonedCuff is a cuff and its facing, each a pair, with round corners,
	// for a sleeve that is slit and pleated into it.
	ButtonedCuff Kind = "buttoned cuff"
	// SleevePlacket is the strip that binds the slit of a sleeve, a pair.
	SleevePlacket Kind = "sleeve placket"
	// ArmholeFacing is a front and a back facing, drawn from the armholes.
	ArmholeFacing Kind = "armhole facing"
	// CombinedFacing is a front and a back facing in one for neck and armhole of
	// a bodice without sleeves, drawn from both.
	CombinedFacing Kind = "neck and armhole facing"
	// Facing is drawn from any edge of a piece, its darts closed.
	Facing Kind = "facing"
	// Belt is straight, pointed at one end, two cut.
	Belt Kind = "belt"
	// Tie is a strip folded double, a pair.
	Tie Kind = "tie"
	// BiasStrip is as many strips on the bias as a length takes.
	BiasStrip Kind = "bias strip"
	// PatchPocket is a pocket sewn on, its lower edge square, pointed or round.
	PatchPocket Kind = "patch pocket"
	// PocketBag hangs in the side seam of a skirt, two pairs.
	PocketBag Kind = "pocket bag"
)

// Shape of the lower edge of a patch pocket.
type Shape string

const (
	// Square has a straight lower edge.
	Square Shape = "square"
	// Pointed runs to a point in the middle.
	Pointed Shape = "pointed"
	// Round has its lower corners rounded off.
	Round Shape = "round"
)

// Shapes lists every shape of a pocket; the first is the usual one.
func Shapes() []Shape { return []Shape{Square, Pointed, Round} }

// Grain says how a straight strip lies on the cloth, by its length.
type Grain string

const (
	// AsDrawn is how its kind is drawn.
	AsDrawn Grain = ""
	// Lengthwise has its length along the warp, which stretches least.
	Lengthwise Grain = "lengthwise"
	// Crosswise has it across, from selvedge to selvedge.
	Crosswise Grain = "crosswise"
	// Either lies as takes less cloth.
	Either Grain = "either"
)

// Grains lists how strips lie.
func Grains() []Grain { return []Grain{Lengthwise, Crosswise, Either} }

// Kinds lists every kind of part.
func Kinds() []Kind {
	return []Kind{
		Collar, NeckFacing, Cuff, Waistband, ShapedWaistband, GatheredSkirt, StraightPanel,
		ShirtCollar, FlatCollar, MandarinCollar, ButtonedCuff, SleevePlacket, ArmholeFacing, CombinedFacing, Facing,
		Belt, Tie, BiasStrip, PatchPocket, PocketBag,
	}
}

// Options of a part. What is 0 or empty takes the usual value of the kind.
type Options struct {
	Kind Kind
	// Name of the piece, in place of the kind.
	Name string
	// Cloth it is cut from; the garment's if empty.
	Cloth string
	// Depth is the finished depth of a collar (70 mm; the fall of a shirt collar
	// 45, a flat collar 60, a mandarin collar 35), facing (60; armhole 50; of neck
	// and armhole, from the underarm and the neck down, 70), cuff
	// (60), waistband (30; shaped 50), belt (40) or tie (30), the finished width
	// of a placket (20), the width that a bias strip is cut to (40), the height
	// of a patch pocket (15 more than its width), or the finished length of a
	// skirt or panel.
	Depth float64
	// Length is the finished length along the seam. It is worked out from the
	// body and the bodice if 0; a straight panel and a bias strip must have it.
	// Of a placket it is the length of the slit (100), of a tie 800, of a patch
	// pocket the width (130), of a pocket bag that of its opening (160).
	Length float64
	// Fullness is how many times its finished length a skirt's cloth is
	// gathered from; 2 if 0, 1.5 to 3 is usual.
	Fullness float64
	// Stand is the depth of the stand of a shirt collar; 30 mm if 0.
	Stand float64
	// Overlap is how far front and back overlap at the shoulder tip when a flat
	// collar is drawn on them; 15 mm if 0.
	Overlap float64
	// Shape of the lower edge of a patch pocket; square if empty.
	Shape Shape
	// Of and FacedEdge name the piece and the edge that a facing is drawn from.
	Of        string
	FacedEdge seams.Name
	// Grain of a straight strip; as drawn if empty.
	Grain Grain
	// Joins is how many seams across a straight strip is pieced together by; none if 0.
	Joins int
	// ClothWidth is the usable width of the cloth that bias strips are cut
	// across; 1120 mm if 0.
	ClothWidth float64
}

// IsCuff says that the part ends a sleeve.
func (o Options) IsCuff() bool { return o.Kind == Cuff || o.Kind == ButtonedCuff }
