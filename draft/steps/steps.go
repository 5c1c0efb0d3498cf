// Package steps writes the draft sheet: for each piece a page with a drawing
// that numbers its points, the construction in steps with the figures of one
// body filled in, how far each curve lies off its straight line, and the seam
// lengths to check at the end. With paper, ruler and a curve the piece is
// drawn from it by hand.
package steps

import (
	"strings"

	"ellwand/draft"
	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/measure"
	"ellwand/pieces/seams"
)

// Document is everything that goes into one draft sheet.
type Document struct {
	Title string // "Concert blouse for Marit Oyelaran"
	// Unit in which lengths are worded: in cm to the millimetre, or for Inch
	// and Yard in inches to the nearest 1/16.
	Unit     measure.Unit
	Garments []Garment
}

// Garment is a garment as drafted.
type Garment struct {
	Name string
	// Body that it was drafted for; may be empty.
	Body draft.Body
	// Derived are the measurements of the body that were not given, and the
	// rule of each.
	Derived map[draft.Measurement]construct.Sentence
	Pieces  []pieces.Piece
	// Sheets are the recorded drafts; a piece without one is drawn from its
	// outline. Each is completed, so that both ends of every edge have a number.
	Sheets []construct.Sheet
	Truing draft.Report
}

// content is what is written about one piece.
type content struct {
	piece  pieces.Piece
	sheet  construct.Sheet
	head   string   // "back bodice"
	cut    string   // "cut 2, a pair, from shell and lining"
	steps  []string // in order, without their numbers
	curves []string
	seams  []seamLine
}

// seamLine is a seam of a piece to measure at the end.
type seamLine struct {
	name, length string
	allowance    string // "on the fold" where isOnFold
	isOnFold     bool
}

// curvesNote explains the lengths given for a curve.
const curvesNote = "Each curve lies this far off the straight line between its ends, measured square to the line at " +
	"a quarter, half and three quarters of the way. Inward is towards the piece, outward away from it. What is not " +
	"listed is straight."

// foldDarts is the last step of a piece with darts [source.CommonPractice].
const foldDarts = "fold each dart as it will be pressed (waist and shoulder darts towards the centre, side darts " +
	"down) and cut across it along the seam, so that its end is caught"

// contents are the pieces of a garment, each once, whatever cloths it is cut
// from.
func (g Garment) contents(unit measure.Unit) []content {
	var out []content
	for i, piece := range g.Pieces {
		if first(g.Pieces, piece.Name) < i {
			continue
		}
		out = append(out, newContent(piece, g.sheetOf(piece), g.cloths(piece.Name), unit))
	}
	return out
}

func first(all []pieces.Piece, name string) int {
	for i, p := range all {
		if p.Name == name {
			return i
		}
	}
	return len(all)
}

func (g Garment) sheetOf(piece pieces.Piece) construct.Sheet {
	for _, s := range g.Sheets {
		if s.Piece == piece.Name {
			return s
		}
	}
	return construct.Trace(piece)
}

// cloths that the piece of a name is cut from.
func (g Garment) cloths(name string) string {
	var list []string
	for _, p := range g.Pieces {
		if p.Name == name && p.Cloth != "" {
			list = append(list, p.Cloth)
		}
	}
	return strings.Join(list, " and from ")
}

func newContent(piece pieces.Piece, sheet construct.Sheet, cloth string, unit measure.Unit) content {
	piece.Cloth = cloth
	sheet = sheet.Complete(piece)
	c := content{piece: piece, sheet: sheet, head: piece.Name, cut: drawing.CutText(piece)}
	for _, step := range sheet.Steps {
		c.steps = append(c.steps, step.Text(unit))
	}
	if len(piece.Darts) > 0 {
		c.steps = append(c.steps, foldDarts)
	}
	c.curves = curvesOf(piece, sheet, unit)
	c.seams = seamsOf(piece, unit)
	return c
}

// seamsOf lists the seams of a piece, darts closed, in the order of its edges.
func seamsOf(piece pieces.Piece, unit measure.Unit) []seamLine {
	var out []seamLine
	said := map[seams.Name]bool{}
	for _, edge := range piece.Edges {
		seam := edge.Name.Seam()
		if said[seam] {
			continue
		}
		said[seam] = true
		line := seamLine{
			name: seam.String(), length: construct.Length(construct.SeamLength(piece, seam)).In(unit),
			allowance: construct.Length(edge.Allowance).In(unit), isOnFold: edge.Name == piece.Fold,
		}
		if line.isOnFold {
			line.allowance = "on the fold"
		}
		out = append(out, line)
	}
	return out
}
