// Package job reads the job file: a YAML file in which a dressmaker states the
// body, the garments and the cloths. Reading is strict: an unknown key or a
// value of the wrong kind refuses the whole file, with the line and what to
// write instead.
//
// Read checks the shape of the file and returns it as File; File.Resolve turns
// its texts into measurements, pieces to draft and cloths.
package job

import (
	"context"

	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/cloth"
	"ellwand/pieces/measure"
)

// File is the job file as written. Every value is still text: measurements
// are parsed by Resolve, which knows the units.
type File struct {
	Job        Text                 `yaml:"job" jsonschema:"required" jsonschema_description:"name of the job"`
	Client     Text                 `yaml:"client" jsonschema_description:"for whom it is made"`
	Units      Choice[measure.Unit] `yaml:"units" jsonschema:"required" jsonschema_description:"unit of every number that is written without one"`
	Size       Text                 `yaml:"size" jsonschema_description:"size of a size table; measurements under body replace the table's"`
	Table      Text                 `yaml:"table" jsonschema_description:"the size table: women (cm sizes 6 to 24), misses (ASTM D5585, girths only), men (by chest, 88 to 120) or children (by height, 98 to 152); beside measurements alone, the table from which missing ones are derived"`
	Body       Body                 `yaml:"body" jsonschema_description:"body measurements, named by ISO 8559-1, but for height, which it calls stature"`
	Wearers    []Wearer             `yaml:"wearers" jsonschema_description:"several bodies: every garment is made for each wearer, unless it names its own under for"`
	Allowances map[string]Measure   `yaml:"allowances" jsonschema_description:"seam allowance by edge; seams is every edge that is not named"`
	Garments   []Garment            `yaml:"garments" jsonschema:"required,minItems=1" jsonschema_description:"what is made"`
	Cloths     []Cloth              `yaml:"cloths" jsonschema:"required,minItems=1" jsonschema_description:"what it is cut from; the first is the one that pieces are cut from unless they say otherwise"`
	Currency   Text                 `yaml:"currency" jsonschema_description:"currency of every price, by its code of ISO 4217: EUR, GBP, USD"`
	Quote      *Quote               `yaml:"quote" jsonschema_description:"what a quote says beside the cloths and garments"`

	name     string
	lines    strict.Lines
	patterns patterns
	// ctx ends drafting; nil where nothing does.
	ctx context.Context
}

// Garment is one kind of garment, made once or several times.
type Garment struct {
	Name         Text               `yaml:"name" jsonschema:"required" jsonschema_description:"name of the garment"`
	Quantity     Count              `yaml:"quantity" jsonschema_description:"how many are made; 1 if not given"`
	Cloth        Text               `yaml:"cloth" jsonschema_description:"cloth of its pieces; the first cloth if not given"`
	Bodice       *Bodice            `yaml:"bodice" jsonschema_description:"draft a front and a back bodice"`
	Sleeve       *Sleeve            `yaml:"sleeve" jsonschema_description:"draft a sleeve for the armholes of the bodice"`
	Skirt        *Skirt             `yaml:"skirt" jsonschema_description:"draft a skirt; with a bodice, to its waist seam"`
	Trousers     *Trousers          `yaml:"trousers" jsonschema_description:"draft trousers or shorts"`
	StraightCut  *StraightCut       `yaml:"straight_cut" jsonschema_description:"draft a garment of rectangles and simple curves: kaftan, kimono, wrapper, apron, bag"`
	Parts        []Part             `yaml:"parts" jsonschema_description:"smaller pieces drafted to fit: collars, facings, cuffs, waistband, belt, pockets, bias strips"`
	Linings      []Lining           `yaml:"linings" jsonschema_description:"linings derived from drafted pieces"`
	Interfacings []Interfacing      `yaml:"interfacings" jsonschema_description:"interfacings derived from drafted pieces"`
	CutFrom      map[string][]Text  `yaml:"cut_from" jsonschema_description:"drafted pieces by the cloth they are cut from; a piece named under two cloths is cut from both"`
	Allowances   map[string]Measure `yaml:"allowances" jsonschema_description:"as at the top, for this garment"`
	For          []Text             `yaml:"for" jsonschema_description:"the wearers it is made for; all of them if not given"`
	Notions      []Notion           `yaml:"notions" jsonschema_description:"what one garment takes beside the cloth: zip, buttons, thread"`
	Making       *Making            `yaml:"making" jsonschema_description:"what making one garment costs, by the hour or as a sum"`
	Pieces       []Piece            `yaml:"pieces" jsonschema_description:"pieces of your own: a pocket, a strap; or of a paper pattern, by points or by readings of a tape"`
	Pattern      *Pattern           `yaml:"pattern" jsonschema_description:"a file of pieces that are there already: skirt.yaml, or {file: skirt.yaml, size: 40}; one that is named like a drafted piece takes its place"`
	Changes      []Change           `yaml:"changes" jsonschema_description:"what is otherwise of pieces of the pattern than its file says"`
}

// Cloth is one cloth, in one width or in several that the shop may have.
type Cloth struct {
	Name         Text                `yaml:"name" jsonschema:"required" jsonschema_description:"name of the cloth: shell, lining"`
	Width        Measure             `yaml:"width" jsonschema_description:"full width from selvedge to selvedge"`
	Widths       []Measure           `yaml:"widths" jsonschema:"minItems=1" jsonschema_description:"several widths to compare, in place of width"`
	Measured     YesNo               `yaml:"width_measured" jsonschema_description:"yes: the width was measured on the cloth itself; otherwise it is as the shop says, and may be 1 cm more or less"`
	Length       Measure             `yaml:"length" jsonschema_description:"length of a remnant that is there already, for the question whether it is enough"`
	Remnants     []Remnant           `yaml:"remnants" jsonschema:"minItems=1" jsonschema_description:"several pieces of this cloth that are there already, or one that is not a rectangle, in place of width and length"`
	Selvedge     Measure             `yaml:"selvedge" jsonschema_description:"not to be cut into, on each side; 10 mm if not given"`
	Nap          Choice[cloth.Nap]   `yaml:"nap" jsonschema_description:"which way pieces may point; either way if not given"`
	Step         Measure             `yaml:"step" jsonschema_description:"what the shop rounds a purchase up to; 10 cm or 1/8 yd if not given"`
	Straighten   Measure             `yaml:"straighten" jsonschema_description:"added to what is bought for straightening both cut ends: 2 to 5 cm in all; nothing if not given, but 2 cm are left of a remnant"`
	HandLaying   Text                `yaml:"hand_laying" jsonschema_description:"added to the length of the lay, since a hand lays and chalks less closely than is reckoned: 3 %, a length such as 4 cm, or none; 2 % if not given"`
	Gap          Measure             `yaml:"gap" jsonschema_description:"least distance between two pieces, for hand or blade; none if not given"`
	Tilt         Text                `yaml:"tilt" jsonschema_description:"how far a grainline may deviate: 2 %; not at all if not given"`
	Alike        YesNo               `yaml:"alike_both_sides" jsonschema_description:"both sides look alike, so that pieces may be laid face down"`
	OneWayPieces []Text              `yaml:"one_way_pieces" jsonschema_description:"pieces that point the same way even where others may be turned"`
	Fibre        Choice[cloth.Fibre] `yaml:"fibre" jsonschema_description:"what it is made of, for what it loses in the first wash along the cloth: cotton up to 5 %, linen 5 %, viscose 8 %, wool 4 %, polyester 1 %, and half of it across; unknown loses nothing; unknown if not given"`
	Shrinkage    *Shrinkage          `yaml:"shrinkage" jsonschema_description:"what the cloth loses in its first wash, in place of what its fibre loses; none: nothing, as of cloth that is washed already"`
	Repeat       *Repeat             `yaml:"repeat" jsonschema_description:"stripes or checks, and what is matched on them"`
	Border       *Border             `yaml:"border" jsonschema_description:"a print that runs along one selvedge, and the pieces that lie on it"`
	Motif        *Motif              `yaml:"motif" jsonschema_description:"a figure of the print that is centred on pieces, along and across"`
	Flaws        []Flaw              `yaml:"flaws" jsonschema_description:"holes, stains, faded edges: places that may not be used"`
	ByHand       []HandLaid          `yaml:"laid_by_hand" jsonschema_description:"pieces that a hand has laid, by width and lay; every command lays the others round them"`
	Safety       Text                `yaml:"safety" jsonschema_description:"added to what is needed so as to be sure, before rounding: 5 %, or a length such as 10 cm; nothing if not given"`
	Minimum      Measure             `yaml:"minimum" jsonschema_description:"the least that the shop cuts"`
	Price        Text                `yaml:"price" jsonschema_description:"of a metre, or a yard in a job in inches: 18.50; or: 18.50 per yd"`
	Offers       []Offered           `yaml:"offers" jsonschema:"minItems=1" jsonschema_description:"several cloths that would do, each with its width and price, to be compared"`
}

// rules that pieces of the cloth keep.
func (c Cloth) rules() []rule { return []rule{c.Border, c.Motif} }
