package marker

import (
	"strings"
	"sync"

	"github.com/jung-kurt/gofpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
)

// family is the Go font, which is free to embed and has Latin, Greek and
// Cyrillic letters and the common fractions.
const family = "go"

// pointSize is one point of type in mm.
const pointSize = 25.4 / 72

func addFonts(pdf *gofpdf.Fpdf) {
	pdf.AddUTF8FontFromBytes(family, "", goregular.TTF)
	pdf.AddUTF8FontFromBytes(family, "B", gobold.TTF)
}

var parsedFont = sync.OnceValues(func() (*sfnt.Font, error) { return sfnt.Parse(goregular.TTF) })

// printable puts "?" for every rune that the font cannot draw. Runes beyond
// U+FFFF must go in any case: gofpdf cannot write them.
func printable(text string) string {
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
