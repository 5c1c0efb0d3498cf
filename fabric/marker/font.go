package marker

import (
	"strings"
	"sync"

	"github.com/jung-kurt/gofpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
)

// Family is the Go font, which is free to embed and has Latin, Greek and
// Cyrillic letters and the common fractions.
const Family = "go"

// pointSize is one point of type in mm.
const pointSize = 25.4 / 72

// AddFonts gives a document the Go font, regular and bold.
func AddFonts(pdf *gofpdf.Fpdf) {
	pdf.AddUTF8FontFromBytes(Family, "", goregular.TTF)
	pdf.AddUTF8FontFromBytes(Family, "B", gobold.TTF)
}

var parsedFont = sync.OnceValues(func() (*sfnt.Font, error) { return sfnt.Parse(goregular.TTF) })

// Printable puts "?" for every rune that the font cannot draw. Runes beyond
// U+FFFF must go in any case: gofpdf cannot write them.
func Printable(text string) string {
	font, err := parsedFont()
	if err != nil {
		return text
	}
	var buffer sfnt.Buffer
	return strings.Map(func(r rune) rune {
		if r > 0xFFFF {
			return '?'
		}
		if r < ' ' {
			return ' '
		}
		if glyph, err := font.GlyphIndex(&buffer, r); err != nil || glyph == 0 {
			return '?'
		}
		return r
	}, text)
}
