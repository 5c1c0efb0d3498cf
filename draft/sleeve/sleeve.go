package sleeve

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
)

// Measures that a sleeve is drafted from.
type Measures struct {
	// FrontArmhole and BackArmhole are the seam lengths of the armhole, from
	// the underarm to the shoulder.
	FrontArmhole, BackArmhole float64
	// FrontNotch and BackNotch are the distances of the armhole's notches
	// from the underarm.
	FrontNotch, BackNotch float64
	// ShoulderToWrist is the length of the arm.
	ShoulderToWrist float64
}

// Block is a sleeve as drafted.
type Block struct {
	// Piece is the sleeve, or the top sleeve of two pieces; Pieces are all.
	Piece  pieces.Piece
	Pieces []pieces.Piece
	Sheet  construct.Sheet
	// HeadHeight, BicepLine and WristWidth as drafted; Head is the length of
	// the sleeve head's seam, FrontHead that of its front half.
	HeadHeight, BicepLine, WristWidth, Head, FrontHead float64
}

// leastUnderarm is the shortest underarm seam, leastHead the lowest sleeve
// head, in mm.
const (
	leastUnderarm = 30
	leastHead     = 20
)

// Draft drafts the sleeve: the practitioner's draft with the maker's options.
// The error is a sentence that names the length that cannot be.
func Draft(m Measures, o Options) (Block, error) {
	asked := o.Length
	o, err := o.styled(m)
	if err != nil {
		return Block{}, err
	}
	height, length := o.HeadHeight, o.Length
	if o.Style == Cap {
		// Its head is that of a whole sleeve, however short it is.
		length = m.ShoulderToWrist
	}
	if err := check(m, o, height, length); err != nil {
		return Block{}, err
	}
	o.Ease = o.headEase(m)
	d := drafting{Measures: m, Options: o, height: height, length: length}
	longer, err := d.lengthenForEase()
	if err != nil {
		return Block{}, err
	}
	sheet := construct.Sheet{Piece: "sleeve"}
	h := d.head(&sheet, longer)
	switch o.Style {
	case TwoPiece:
		return d.twoPiece(sheet, h)
	case Cap:
		return d.capSleeve(sheet, h, asked)
	}
	return d.finish(sheet, h), nil
}

// drafting is one sleeve in the making.
type drafting struct {
	Measures
	Options
	height, length float64
}

func check(m Measures, o Options, height, length float64) error {
	armhole := min(m.FrontArmhole, m.BackArmhole)
	switch {
	case height < leastHead:
		return construct.Refuse("sleeve: a head height of %s is too low; it must be %s or more", construct.Length(height), construct.AtLeast(leastHead))
	case height > 0.92*armhole:
		return construct.Refuse("sleeve: a head height of %s is too high for an armhole whose shorter half is %s; ask for %s or less", construct.Length(height), construct.Length(armhole), construct.AtMost(0.92*armhole))
	case length < height+leastUnderarm:
		return construct.Refuse("sleeve: a length of %s ends above the underarm; from the crown it must be %s or more", construct.Length(length), construct.AtLeast(height+leastUnderarm))
	case o.WristWidth < 0:
		return construct.Refuse("sleeve: the wrist width is %s; it cannot be negative", construct.Length(o.WristWidth))
	case o.Ease != nil && (*o.Ease < -20 || *o.Ease > 80):
		return construct.Refuse("sleeve: an ease of %s cannot be sewn in; 0 to 1.5 cm suits a shirt, 2 to 4.5 cm a set-in sleeve", construct.Length(*o.Ease))
	}
	return nil
}

// head draws the head with both slanted lines longer than the armhole by so
// much.
func (d drafting) head(s *construct.Sheet, longer float64) head {
	front, back := d.FrontArmhole+longer, d.BackArmhole+longer
	bicep := BicepLine(front, back, d.height)
	return drawHead(s, d.height, front, back, func(half float64) orb.Point {
		return orb.Point{d.wristHalf(half, bicep), d.height - d.length}
	})
}

// wristHalf is where a half of the bicep line ends up at the lower edge: in by
// a quarter at the wrist (common practice), and in proportion on the way
// there; or its share of the wrist width that was asked for.
func (d drafting) wristHalf(half, bicep float64) float64 {
	if d.WristWidth > 0 && d.Style != TwoPiece {
		return half / bicep * d.WristWidth
	}
	if d.Style == TwoPiece {
		return half
	}
	full := max(d.ShoulderToWrist, d.length)
	share := 1 - 0.25*(d.length-d.height)/(full-d.height)
	if d.HeadFullness == 0 && d.HemFullness == 0 {
		return half * share
	}
	// The fullness of the head runs out towards the lower edge, that of the
	// hem grows towards it; both sides slant alike, so that the underarm seams
	// match.
	width := share * BicepLine(d.FrontArmhole, d.BackArmhole, d.height) * max(1, d.HemFullness)
	return half + math.Copysign(1, half)*(width-bicep)/2
}

// lengthenForEase finds how much longer than the armhole the slanted lines
// must be for the ease that was asked for. The draft as it stands has them
// equal; lengthening them, at the same head height, adds to head and bicep
// line alike.
func (d drafting) lengthenForEase() (float64, error) {
	if d.Ease == nil {
		return 0, nil
	}
	longer := 0.0
	for range 40 {
		h := d.head(&construct.Sheet{}, longer)
		missing := *d.Ease - (h.seam.Length() - d.FrontArmhole - d.BackArmhole)
		if math.Abs(missing) < 0.01 {
			break
		}
		longer += missing / 2
		if min(d.FrontArmhole, d.BackArmhole)+longer < d.height/0.95 {
			return 0, construct.Refuse("sleeve: an ease of %s needs a lower head than %s on this armhole; ask for a lower head height or more ease", construct.Length(*d.Ease), construct.Length(d.height))
		}
	}
	return longer, nil
}

func (d drafting) finish(sheet construct.Sheet, h head) Block {
	bicep := h.front.X() - h.back.X()
	fall := d.length - d.height
	lower := sheet.Down(h.level, fall, "the lower edge: the length from the crown")
	front := sheet.Right(lower, d.wristHalf(h.front.X(), bicep), "its front end: the bicep line in by a quarter, or the wrist asked for")
	back := sheet.Left(lower, -d.wristHalf(h.back.X(), bicep), "its back end")
	sheet.Draw("draw the lines "+construct.Numbers(h.front, front)+" and "+construct.Numbers(h.back, back), "the underarm seams")

	wrist := construct.Edge("wrist hem", construct.Line(back.At, front.At))
	wrist.Hem = true
	if d.Cuffed {
		wrist = construct.Edge("wrist", wrist.Path)
	}
	length := h.seam.Length()
	piece := pieces.Piece{
		Name: "sleeve", Cut: 2, Pair: true,
		Edges: []pieces.Edge{
			wrist,
			construct.Edge("front underarm", construct.Line(front.At, h.front.At)),
			construct.Edge("sleeve head", h.seam),
			construct.Edge("back underarm", construct.Line(h.back.At, back.At)),
		},
		Grain: pieces.Grain{From: orb.Point{0, lower.Y() + 0.15*fall}, To: orb.Point{0, h.crown.Y() - 0.25*d.height}},
		Notches: []pieces.Notch{
			{Edge: "sleeve head", At: d.FrontNotch, Count: 1, Match: "front armhole"},
			{Edge: "sleeve head", At: h.toCrown, Count: 1, Match: "shoulder"},
			{Edge: "sleeve head", At: length - d.BackNotch, Count: 2, Match: "back armhole"},
		},
		Marks: []pieces.Mark{{Name: "bicep line", Path: construct.Line(h.back.At, h.front.At)}},
	}
	d.markElbow(&piece)
	d.markPlacket(&piece)
	return Block{
		Piece: piece, Pieces: []pieces.Piece{piece}, Sheet: sheet,
		HeadHeight: d.height, BicepLine: bicep, WristWidth: front.X() - back.X(), Head: length, FrontHead: h.toCrown,
	}
}

// markElbow draws the elbow line, half the length of the arm and 5 cm below
// the crown (common practice), with a notch at both its ends. A sleeve that
// ends above it has none.
func (d drafting) markElbow(piece *pieces.Piece) {
	elbow := d.elbowLine()
	foot := d.height - d.length
	if elbow > -10 || elbow < foot+10 {
		return
	}
	front, back := piece.Edges[1].Path, piece.Edges[3].Path
	share := (elbow - foot) / -foot
	upFront, downBack := share*front.Length(), (1-share)*back.Length()
	piece.Marks = append(piece.Marks, pieces.Mark{Name: "elbow line", Path: construct.Line(back.At(downBack), front.At(upFront))})
	piece.Notches = append(piece.Notches,
		pieces.Notch{Edge: "front underarm", At: upFront, Count: 1, Match: "elbow"},
		pieces.Notch{Edge: "back underarm", At: downBack, Count: 1, Match: "elbow"})
}

// placketSlit is how long the slit of a shirt sleeve is (common practice: 8 to
// 15 cm); less on a child's short arm.
const placketSlit = 120.

// markPlacket marks the slit for the placket of a shirt sleeve that goes into
// a cuff at the wrist: in the middle of the back half of the lower edge.
func (d drafting) markPlacket(piece *pieces.Piece) {
	if d.Style != Shirt || !d.Cuffed {
		return
	}
	slit := min(placketSlit, 0.4*(d.length-d.height))
	wrist := piece.Edges[0].Path
	at := wrist.Length() / 4
	foot := wrist.At(at)
	piece.Notches = append(piece.Notches, pieces.Notch{Edge: "wrist", At: at, Count: 1, Match: "placket"})
	piece.Marks = append(piece.Marks, pieces.Mark{Name: "slit for the placket", Path: construct.Line(foot, orb.Point{foot[0], foot[1] + slit})})
}
