// Package draft turns body measurements into the pieces of a garment, and
// proves by a truing report that the seams which will be sewn together match.
//
// The blocks stand in packages of their own: bodice, sleeve, skirt, trousers,
// straightcut, part; lining derives linings and interfacings from their
// pieces. Each knows only the measurements that it is given; what
// one block needs of another (the sleeve needs the armhole lengths) is passed
// on by Draft.
//
// Lengths are millimetres.
package draft

import (
	"ellwand/draft/bodice"
	"ellwand/draft/construct"
	"ellwand/draft/lining"
	"ellwand/draft/part"
	"ellwand/draft/skirt"
	"ellwand/draft/sleeve"
	"ellwand/draft/straightcut"
	"ellwand/draft/trousers"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// Request asks for the pieces of one garment.
type Request struct {
	Garment string // "blouse"
	Size    string // written on the pieces; may be empty
	Cloth   string // what the pieces are cut from: "shell"
	Body    Body
	// Table names the size table from which measurements that are not given
	// are derived, one of Tables; empty takes the women's.
	Table string
	// Bodice asks for a front and a back bodice; nil for none.
	Bodice *bodice.Options
	// Sleeve asks for a sleeve set into the armholes of the bodice; nil for
	// none.
	Sleeve *sleeve.Options
	// Skirt asks for a skirt; with a fitted bodice it is drafted to its waist
	// seam. Nil for none.
	Skirt *skirt.Options
	// Trousers asks for trousers or shorts; nil for none.
	Trousers *trousers.Options
	// StraightCut asks for a garment of rectangles and simple curves; nil for
	// none.
	StraightCut *straightcut.Options
	// Parts are further pieces: collar, facings, cuff, waistband, skirt.
	Parts []part.Options
	// Linings and Interfacings are derived from the pieces they name.
	Linings      []Lining
	Interfacings []Interfacing
	// Cloths names the cloth of single pieces that are not cut from Cloth, by
	// the piece's name.
	Cloths map[string]string
	// Allowances replace the usual ones, by what a seam is: one of
	// AllowanceNames.
	Allowances map[seams.Name]float64
}

// Result is a garment as drafted.
type Result struct {
	Pieces []pieces.Piece
	Truing Report
	// Body is the body drafted for: the measurements given and those derived.
	Body    Body
	Derived []Derivation
	// Figures are lengths of the draft that a pattern maker asks for: armhole
	// lengths, sleeve head height, bicep line.
	Figures []Figure
	// Sheets are the drafts of the blocks, step by step, for drawing by hand.
	Sheets []construct.Sheet
	// Warnings are sentences about what the draft had to do, or what will
	// not wear well.
	Warnings []construct.Sentence
}

// Derivation is a measurement that was not given, and the rule that it was
// derived by.
type Derivation struct {
	Measurement Measurement
	Value       float64
	Rule        construct.Sentence // "as the women's table has it for this bust girth"
}

// Figure is a named length of a draft, in mm.
type Figure = construct.Figure

// Lining asks for the lining of pieces.
type Lining struct {
	// Of names pieces, or a part for all its pieces. A piece that is cut
	// in several, as a princess seam does, stands for all of them.
	Of    []string
	Cloth string
	lining.Options
}

// Interfacing asks for the interfacing of pieces.
type Interfacing struct {
	// Of names pieces, as of a Lining.
	Of    []string
	Cloth string
	lining.Interfacing
}
