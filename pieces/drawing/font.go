package drawing

import (
	_ "embed" // puts the typeface into the program
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"

	"github.com/jung-kurt/gofpdf"
	"github.com/paulmach/orb"
	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
	"golang.org/x/text/unicode/norm"

	"ellwand/pieces/text"
)

// Family is DejaVu Sans Condensed 2.37, which is free to embed (its licence
// lies beside it) and has the letters of Latin scripts, Vietnamese among them,
// Greek, Cyrillic, Armenian and Georgian, and the common fractions.
const Family = "dejavu"

//go:embed typeface/DejaVuSansCondensed.ttf
var regularFile []byte

//go:embed typeface/DejaVuSansCondensed-Bold.ttf
var boldFile []byte

// Point is one point of type in mm.
const Point = 25.4 / 72

// Text is a line of words. Letters that the font lacks are drawn as
// Printable has them.
type Text struct {
	Words string
	// At is on the line that the letters stand on: at the start of the words,
	// their middle or their end, as Align says.
	At     orb.Point
	Points float64 // size of the type
	Bold   bool
	Grey   int
	Align  Align
	// Angle is how far the words are turned counter-clockwise about At,
	// degrees; 90 reads upwards.
	Angle float64
}

// Align says which part of the words is at their place.
type Align int

const (
	// Left has the words begin there.
	Left Align = iota
	// Centre has their middle there.
	Centre
	// Right has them end there.
	Right
)

// start is how far before At the words begin, mm.
func (t Text) start() float64 {
	return Width(t.Words, t.Points, t.Bold) * float64(t.Align) / 2
}

// AddFonts gives a document the typeface, regular and bold.
func AddFonts(pdf *gofpdf.Fpdf) {
	pdf.AddUTF8FontFromBytes(Family, "", regularFile)
	pdf.AddUTF8FontFromBytes(Family, "B", boldFile)
}

// face is a font with what was asked of it before.
type face struct {
	font     *sfnt.Font
	mutex    sync.Mutex
	buffer   sfnt.Buffer
	advances map[rune]float64 // in ems; absent from the font: not in the map
	glyphs   map[rune][][]orb.Point
	asked    map[rune]bool
}

var regular, bold = sync.OnceValue(faceOf(regularFile)), sync.OnceValue(faceOf(boldFile))

func faceOf(file []byte) func() *face {
	return func() *face {
		parsed, err := sfnt.Parse(file)
		if err != nil {
			panic("the font that is compiled in cannot be read: " + err.Error())
		}
		return &face{font: parsed, advances: map[rune]float64{}, glyphs: map[rune][][]orb.Point{},
			asked: map[rune]bool{}}
	}
}

func faceFor(isBold bool) *face {
	if isBold {
		return bold()
	}
	return regular()
}

// needsSetting reports whether a letter is of a script that cannot be written
// letter by letter from left to right, so that it counts as lacking.
func needsSetting(r rune) bool {
	return unicode.In(r, unicode.Hebrew, unicode.Arabic, unicode.Nko, unicode.Lao)
}

// advance is the width of a rune in ems; not ok for one that the font lacks.
// Runes beyond U+FFFF count as lacking: gofpdf cannot write them.
func (f *face) advance(r rune) (ems float64, ok bool) {
	f.mutex.Lock()
	defer f.mutex.Unlock()
	if !f.asked[r] {
		f.asked[r] = true
		glyph, err := f.font.GlyphIndex(&f.buffer, r)
		if err == nil && glyph != 0 && r <= 0xFFFF && !needsSetting(r) {
			units := fixed.Int26_6(f.font.UnitsPerEm()) << 6
			if width, err := f.font.GlyphAdvance(&f.buffer, glyph, units, font.HintingNone); err == nil {
				f.advances[r] = float64(width) / float64(units)
			}
		}
	}
	ems, ok = f.advances[r]
	return ems, ok
}

// isDrawn reports whether the font has a letter, regular and bold.
func isDrawn(r rune) bool {
	_, inRegular := regular().advance(r)
	_, inBold := bold().advance(r)
	return inRegular && inBold
}

// Printable is a clean line (see text.Line) in which stands, for every rune
// that the font cannot draw, its letter without accents, or "?" where it lacks
// that too. Accents that stand apart are joined to their letters first; those
// with which no letter comes joined are drawn over it.
func Printable(words string) string {
	return strings.Map(func(r rune) rune {
		if unicode.Is(unicode.Cf, r) { // joiners, which only setting needs
			return -1
		}
		if isDrawn(r) {
			return r
		}
		if bare, _ := utf8.DecodeRuneInString(norm.NFD.String(string(r))); isDrawn(bare) {
			return bare
		}
		return '?'
	}, norm.NFC.String(text.Line(words)))
}

// IsPrintable reports whether the font has every letter of a text.
func IsPrintable(text string) bool { return Printable(text) == norm.NFC.String(text) }

// Width of a line of words, mm.
func Width(words string, points float64, isBold bool) float64 {
	var ems float64
	for _, r := range Printable(words) {
		width, _ := faceFor(isBold).advance(r)
		ems += width
	}
	return ems * points * Point
}

// Shortened ends words with an ellipsis where they are wider than given, mm.
func Shortened(words string, points float64, isBold bool, width float64) string {
	if Width(words, points, isBold) <= width {
		return words
	}
	runes := []rune(words)
	for len(runes) > 1 && Width(string(runes)+"…", points, isBold) > width {
		runes = runes[:len(runes)-1]
	}
	return string(runes) + "…"
}

// Wrapped breaks words at blanks, but for hard ones, into lines no wider than
// given, mm, and a word that is wider by itself where it must be.
func Wrapped(words string, points float64, isBold bool, width float64) []string {
	var lines []string
	line := ""
	for _, word := range strings.FieldsFunc(words, isSoftBlank) {
		if line != "" && Width(line+" "+word, points, isBold) > width {
			lines = append(lines, line)
			line = ""
		}
		line = strings.TrimPrefix(line+" "+word, " ")
		for Width(line, points, isBold) > width && utf8.RuneCountInString(line) > 1 {
			head := fitting(line, points, isBold, width)
			lines = append(lines, head)
			line = line[len(head):]
		}
	}
	return append(lines, line)
}

func isSoftBlank(r rune) bool { return r == ' ' || r == '\n' || r == '\t' }

// fitting is as much of the beginning of words as is no wider than given, at
// least a letter.
func fitting(words string, points float64, isBold bool, width float64) string {
	runes := []rune(words)
	n := len(runes)
	for n > 1 && Width(string(runes[:n]), points, isBold) > width {
		n--
	}
	return string(runes[:n])
}
