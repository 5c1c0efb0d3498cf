// Package layoutfile is the layout as a file for other programs: a lay of a
// cloth with everything in it that somebody needs to check the lay, or to lay
// it, without this program.
//
// The names of its fields end in their unit; lengths are millimetres. Those
// about the whole lay, and about the pieces laid, are in the frame of the lay:
// x runs along the warp from the cut end (or from a fold that runs across), y
// across from the edge nearest to the cutter.
package layoutfile

import "github.com/paulmach/orb"

// Version of the form. It changes when a field goes or means another thing; a
// new field beside the others does not change it [source.OwnChoice].
const Version = 1

// File is a layout as it is written.
type File struct {
	Version int     `json:"format_version" jsonschema_description:"of this form: 1"`
	Cloth   string  `json:"cloth" jsonschema_description:"which cloth is laid"`
	Lay     string  `json:"lay" jsonschema_description:"how it is laid: open, folded along the warp ..."`
	Plies   int     `json:"plies" jsonschema_description:"that lie on one another at most"`
	Width   float64 `json:"width_mm" jsonschema_description:"usable width of the lay"`
	Length  float64 `json:"length_mm" jsonschema_description:"of the lay on the table"`
	Bound   float64 `json:"bound_mm" jsonschema_description:"no layout of these pieces in this lay is shorter"`
	Taken   float64 `json:"taken_mm" jsonschema_description:"length of cloth that the lay takes, before it is folded or cut across"`

	FoldedIn float64 `json:"folded_in_mm,omitempty" jsonschema_description:"how far the edge lies from the fold where one selvedge is folded in; 0 in any other lay"`
	Amount   *Amount `json:"amount" jsonschema:"nullable" jsonschema_description:"what is bought for it; null where the cloth is there already"`

	ClothWidth float64 `json:"cloth_width_mm" jsonschema_description:"from edge to edge, as it is when it is laid"`
	Selvedge   float64 `json:"selvedge_mm" jsonschema_description:"not to be cut into, on each side"`
	Nap        string  `json:"nap" jsonschema:"enum=either way,enum=one way,enum=one way per garment" jsonschema_description:"which way pieces may point"`
	Alike      bool    `json:"both_sides_alike" jsonschema_description:"the cloth looks alike on both sides, so that any piece may lie face down"`
	Gap        float64 `json:"gap_mm" jsonschema_description:"least distance between pieces on the open cloth, in whichever plies"`
	Tilt       float64 `json:"tilt_percent" jsonschema_description:"how far a grainline may deviate: across, as a share of along"`
	Repeat     *Repeat `json:"repeat" jsonschema:"nullable" jsonschema_description:"of the pattern of the cloth, and what is matched on it; null for plain cloth"`
	Fixed      []Fixed `json:"fixed" jsonschema_description:"points of pieces that a print fixes on the open cloth: hems on a border, motifs centred on a piece"`
	ClothFlaws []Flaw  `json:"cloth_flaws" jsonschema_description:"on the cloth lying open, right side up: x along the warp from the cut end, y across from the outer edge of the selvedge nearest to the cutter"`

	Outline orb.Ring   `json:"cloth_outline" jsonschema:"nullable" jsonschema_description:"of a lay that is no rectangle; null for one that is"`
	Flaws   []orb.Ring `json:"flaws" jsonschema_description:"places of the lay where no piece may lie, whatever the ply"`
	Parts   []Part     `json:"parts" jsonschema_description:"rectangles of the lay, each in the same plies throughout"`
	Asked   []Asked    `json:"asked" jsonschema_description:"the pieces that the cloth is to give"`
	Pieces  []Laid     `json:"pieces" jsonschema_description:"the templates laid, in the order of cutting"`
}

// Amount is a length to buy by its parts: with what the lay takes they come to it.
type Amount struct {
	HandLaying float64 `json:"hand_laying_mm" jsonschema_description:"for laying and chalking by hand, less closely than reckoned"`
	Straighten float64 `json:"straighten_mm" jsonschema_description:"for straightening both cut ends"`
	Shrinkage  float64 `json:"shrinkage_mm" jsonschema_description:"what the cloth loses where it is wetted first"`
	Safety     float64 `json:"safety_mm" jsonschema_description:"what the maker adds to be sure"`
	Rounding   float64 `json:"rounding_mm" jsonschema_description:"up to the step of the shop, and to the least that it cuts"`
	Buy        float64 `json:"buy_mm"`
}

// Flaw is one flaw.
type Flaw struct {
	Name    string   `json:"name"`
	Outline orb.Ring `json:"outline_mm"`
}

// Part is a rectangle of the lay.
type Part struct {
	X     float64 `json:"x_mm" jsonschema_description:"where it begins along the lay"`
	End   float64 `json:"end_mm" jsonschema_description:"where it ends along the lay"`
	Y     float64 `json:"y_mm" jsonschema_description:"where it begins across"`
	Width float64 `json:"width_mm"`
	Folds []Fold  `json:"folds" jsonschema_description:"edges of the part that are folds"`
	Plies []Ply   `json:"plies" jsonschema_description:"the lowest first"`
}

// Fold is a straight line along which the cloth is folded.
type Fold struct {
	Runs string  `json:"runs" jsonschema:"enum=along,enum=across" jsonschema_description:"along the warp, or across it"`
	At   float64 `json:"at_mm" jsonschema_description:"y of a fold along, x of a fold across"`
}

// Ply is a layer of cloth between two lines along a part.
type Ply struct {
	RightSide string  `json:"right_side" jsonschema:"enum=up,enum=down"`
	FromY     float64 `json:"from_y_mm"`
	ToY       float64 `json:"to_y_mm"`
	// OnCloth says where it was cut: the place (x, y) of the lay lies, on the
	// cloth lying open, at (x_mm + x_sign * x, y_mm + y_sign * y).
	OnCloth OnCloth `json:"on_cloth" jsonschema_description:"the place x, y of the lay is x_mm + x_sign * x along the open cloth from its cut end, and y_mm + y_sign * y across from the outer edge of the selvedge nearest to the cutter"`
	Flaws   []Flaw  `json:"flaws" jsonschema_description:"in this ply, in the frame of the lay"`
}

// OnCloth brings a place of the lay to the open cloth.
type OnCloth struct {
	X     float64 `json:"x_mm"`
	SignX int     `json:"x_sign" jsonschema:"enum=1,enum=-1"`
	Y     float64 `json:"y_mm"`
	SignY int     `json:"y_sign" jsonschema:"enum=1,enum=-1"`
}

// Repeat of the pattern of a cloth.
type Repeat struct {
	Along   float64 `json:"along_mm" jsonschema_description:"along the warp, of stripes that run across; 0 for none"`
	Across  float64 `json:"across_mm" jsonschema_description:"across, of stripes that run along; 0 for none"`
	Even    bool    `json:"even" jsonschema_description:"the pattern looks the same turned end for end; otherwise pieces that match point the same way"`
	Matches []Match `json:"matches" jsonschema_description:"what meets on the repeat"`
	// CentreLine and Centred are pieces whose centre lies on one line.
	CentreLine float64      `json:"centre_line_mm" jsonschema_description:"across, from the outer edge of the selvedge nearest to the cutter; it comes again with every repeat"`
	Centred    []PiecePoint `json:"centred" jsonschema_description:"points of the centre of pieces that lie on the centre line"`
}

// Match is a set of points that fall on the same place of the repeat.
type Match struct {
	Name   string       `json:"name" jsonschema_description:"of the match point; empty for the right and left of one piece"`
	Way    string       `json:"way" jsonschema:"enum=along,enum=across" jsonschema_description:"on the repeat along the warp, or across it; across, what lies face up matches among itself, and so does what lies face down"`
	Points []PiecePoint `json:"points"`
}

// PiecePoint is a point of a piece, in its own frame.
type PiecePoint struct {
	Piece int       `json:"piece" jsonschema_description:"index into asked"`
	At    orb.Point `json:"at_mm" jsonschema_description:"in the frame of the piece"`
}

// Fixed is where a point of a piece lies on the open cloth.
type Fixed struct {
	PiecePoint
	Way    string  `json:"way" jsonschema:"enum=along,enum=across" jsonschema_description:"along, from the cut end; or across, from the outer edge of the selvedge nearest to the cutter"`
	From   float64 `json:"from_mm" jsonschema_description:"it lies no nearer"`
	To     float64 `json:"to_mm" jsonschema_description:"and no farther"`
	Period float64 `json:"period_mm" jsonschema_description:"and so again after every such length; 0 when there only"`
}

// Asked is a piece that the cloth is to give. Its own frame is that of its
// drawing, right side up.
type Asked struct {
	Name    string `json:"name"`
	Garment string `json:"garment"`
	Size    string `json:"size"`
	Count   int    `json:"count" jsonschema_description:"how many single pieces"`
	Pair    bool   `json:"pair" jsonschema_description:"half of them are mirrored: right and left"`
	Nap     string `json:"nap" jsonschema:"enum=either way,enum=one way,enum=one way per garment" jsonschema_description:"which way this piece may point"`
	// GrainLie is how its grainline lies on the cloth.
	GrainLie string       `json:"grain_lie" jsonschema:"enum=along,enum=across,enum=bias,enum=either" jsonschema_description:"along the warp, across it, at 45 degrees, or along or across"`
	Grain    [2]orb.Point `json:"grain_mm" jsonschema_description:"grainline, from the lower end to this end up"`
	Fold     []orb.Point  `json:"fold_mm" jsonschema:"nullable" jsonschema_description:"ends of the edge that lies on a fold, of a half piece; null for a whole one"`
	Outline  orb.Ring     `json:"outline_mm" jsonschema_description:"cutting outline as it is cut: of a half piece the half, enlarged where the cloth is washed after cutting"`
}

// Laid is one template in its place.
type Laid struct {
	Name     string    `json:"name"`
	Garment  string    `json:"garment"`
	Size     string    `json:"size"`
	Copy     int       `json:"copy" jsonschema_description:"counts the templates of a piece from 1"`
	Mirrored bool      `json:"mirrored" jsonschema_description:"the template lies face down: mirrored in x before it is turned"`
	Turn     float64   `json:"turn_deg" jsonschema_description:"counter-clockwise about the origin of the piece"`
	OnFold   bool      `json:"on_fold" jsonschema_description:"its fold edge lies on a fold, so that it opens into a whole piece"`
	Lower    bool      `json:"lower_ply" jsonschema_description:"it is cut from the lower of two plies alone, when the cloth has been opened"`
	X        float64   `json:"x_mm" jsonschema_description:"by which it is moved after turning"`
	Y        float64   `json:"y_mm"`
	Piece    int       `json:"piece" jsonschema_description:"index into asked"`
	Part     int       `json:"part" jsonschema_description:"index into parts"`
	Opened   bool      `json:"laid_whole" jsonschema_description:"a half piece that is laid whole: itself and its mirror image about its fold edge"`
	Turnings []Turning `json:"allowed_turns" jsonschema_description:"the ways in which it may lie here; the tilt is allowed besides"`
	Outline  orb.Ring  `json:"outline" jsonschema_description:"cutting outline in its place, mm"`
}

// Turning is a way in which a template may lie.
type Turning struct {
	Turn     float64 `json:"turn_deg"`
	Mirrored bool    `json:"mirrored"`
}
