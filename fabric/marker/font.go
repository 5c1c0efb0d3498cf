package marker

import (
	"github.com/jung-kurt/gofpdf"

	"ellwand/pieces/drawing"
)

// Family is the Go font; see drawing.Family.
const Family = drawing.Family

// AddFonts gives a document the Go font, regular and bold.
func AddFonts(pdf *gofpdf.Fpdf) { drawing.AddFonts(pdf) }

// Printable puts "?" for every rune that the font cannot draw.
func Printable(text string) string { return drawing.Printable(text) }

// pointSize is one point of type in mm.
const pointSize = drawing.Point
