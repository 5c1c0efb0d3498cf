package text

import (
	"testing"
	"unicode"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"

	"ellwand/testdata/sample"
)

func TestLine(t *testing.T) {
	for given, want := range map[string]string{
		"":                         "",
		"Blouse for Żofia (2)":     "Blouse for Żofia (2)",
		"two\nlines\r\n\tand more": "two lines and more",
		"bell\a, null\x00, \x7f":   "bell, null, ",
		"\x1b[31mred\x1b[0m skirt": "red skirt",
		"\x1b[2J\x1b[1;1Hgone":     "gone",
		"\x1b]0;title\x07linen":    "linen",
		"\x1b]8;;http://x\x1b\\link\x1b]8;;\x1b\\": "link",
		"\x1bPdata\x1b\\velvet":                    "velvet",
		"\u009b31mred \u009dtitle\u009csilk":       "red silk",
		"\x1bcreset \x1b(Bset":                     "reset set",
		"ends in \x1b":                             "ends in ",
		"a\u202egpj.exe":                           "agpj.exe",
		"\u2066x\u2069\u200e\u200f\u061cy":         "xy",
		"\ufeffbyte-order mark":                    "byte-order mark",
		"no \xff\xfe UTF-8":                        "no  UTF-8",
		"next\u0085line\u2028sep\u2029par":         "next line sep par",
		"tag\U000e0041ged \ufff9note\ufffb":        "tagged note",
		"نی\u200cم שלום ﷺ":                         "نی\u200cم שלום ﷺ",
	} {
		assert.Equal(t, want, Line(given), "%q", given)
	}
}

func TestLines(t *testing.T) {
	assert.Equal(t, "a\nb\n", Lines("a\r\nb\r\n"))
	assert.Equal(t, "length   2 m\n\twidth 1 m\n", Lines("length   2 m\n\twidth\a 1 m\n"))
	assert.Equal(t, "a\nb", Lines("\x1b[1Aa\n\u202eb"))
}

func TestFileName(t *testing.T) {
	for given, want := range map[string]string{
		"Summer blouse": "summer-blouse", "../../etc/passwd": "etc-passwd", "": "unnamed", "…": "unnamed", "-": "unnamed",
		"C:\\nul": "c-nul", "Größe 12": "größe-12", "a\u202eb\x1b[31mc": "abc", "e\u0301te": "e\u0301te",
	} {
		assert.Equal(t, want, FileName(given), "%q", given)
	}
	long := ""
	for range 60 {
		long += "ż"
	}
	assert.Equal(t, 40, utf8.RuneCountInString(FileName(long)), "80 bytes")
	assert.Equal(t, "a"+long[:78], FileName("-a"+long), "never half a letter")
}

// FuzzLine: nothing that steers a terminal or the reading is left, and what is
// clean stays.
func FuzzLine(f *testing.F) {
	sample.MinimizeBriefly()
	for _, seed := range []string{"linen", "\x1b]0;x\x07", "\x1b\x1b[[31m", "\u009b\u202e", "\xff\x1b",
		"\x1b\u202e[31m"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, given string) {
		clean := Line(given)
		assert.True(t, utf8.ValidString(clean))
		for _, r := range clean {
			assert.False(t, unicode.IsControl(r) || unicode.Is(unicode.Bidi_Control, r), "%q of %q", clean, given)
		}
		assert.Equal(t, clean, Line(clean), "%q", given)
		assert.NotContains(t, Lines(given), "\x1b")
		assert.Equal(t, Lines(given), Lines(Lines(given)), "%q", given)
		assert.NotContains(t, FileName(given), "/")
	})
}
