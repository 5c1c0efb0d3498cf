package pdfin

import (
	"bytes"
	"compress/zlib"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/linework"
	"ellwand/pieces/words"
	"ellwand/testdata/sample"
)

func packed(content string) string {
	var out bytes.Buffer
	w := zlib.NewWriter(&out)
	_, _ = w.Write([]byte(content))
	_ = w.Close()
	return out.String()
}

func TestRefuses(t *testing.T) {
	loop := "page:/Resources<</XObject<</F 5 0 R>>>>"
	many := func(n int) string { return strings.Repeat("1 1 m 2 2 l S ", n) }
	for name, c := range map[string]struct {
		data []byte
		want string
	}{
		"empty":      {nil, "it is no PDF file"},
		"another":    {[]byte("hello"), "it is no PDF file"},
		"truncated":  {sheet("1 1 m 2 2 l S", "")[:200], "is not complete"},
		"head alone": {[]byte("%PDF-1.4\n%%EOF"), "damaged"},
		"a form that shows itself": {sheet("/F Do", loop, stream("/Subtype/Form/Resources<</XObject<</F 5 0 R>>>>", "/F Do")),
			"page 1: the PDF file is damaged"},
		"pages that hold themselves": {file("<</Type/Catalog/Pages 2 0 R>>", "<</Type/Pages/Kids[2 0 R]/Count 1>>"),
			"damaged"},
		"no pages": {file("<</Type/Catalog/Pages 2 0 R>>", "<</Type/Pages/Kids[]/Count 0>>"), "no pages"},
		"no paper": {file("<</Type/Catalog/Pages 2 0 R>>", "<</Type/Pages/Kids[3 0 R]/Count 1>>", "<</Type/Page>>"),
			"it says no size of its paper"},
		"paper of no size": {sheet("", "page:/CropBox[0 0 0 0]"), "its paper has no size"},
		"a bomb": {sheet("", "", stream("/Filter/FlateDecode", packed(strings.Repeat(" ", 10<<20)))),
			"there are too many bytes"},
		"lines":  {sheet(many(60_000), ""), "there are too many drawn things"},
		"points": {sheet("1 1 m "+strings.Repeat("2 2 l 1 1 l ", 60_000)+" S", ""), "there are too many points"},
		"kept":   {sheet(strings.Repeat("q ", 1000), ""), "there are too many levels"},
		"words":  {sheet("BT /A 9 Tf "+strings.Repeat("(a) Tj 0 20 Td ", 2000), ""), "there are too many words"},
		"picture": {sheet("/F Do", loop, stream("/Subtype/Image/Width 1/Height 1", "x")),
			"holds pictures of dots and no lines"},
		"far": {sheet("1 0 0 1 1e9 0 cm 100000000000 0 m 300000000000 0 l S", ""), "reaches farther than 1 km"},
	} {
		_, err := Lines(c.data, options)
		assert.ErrorContains(t, words.Refused(err), c.want, name)
	}
	for _, name := range []string{"locked.pdf", "protected.pdf"} { // with a password, and with restrictions alone
		data, err := os.ReadFile(filepath.Join("testdata", name))
		require.NoError(t, err)
		_, err = Lines(data, options)
		assert.ErrorContains(t, words.Refused(err), "the PDF file is encrypted", name)
	}
}

// Forms that show forms that show forms grow by counting, and are refused by it.
func TestRefusesWhatGrows(t *testing.T) {
	var others []string
	for i := range 10 {
		others = append(others, stream(fmt.Sprintf("/Subtype/Form/Resources<</XObject<</F %d 0 R>>>>", i+6),
			strings.Repeat("/F Do ", 10)))
	}
	others = append(others, stream("/Subtype/Form", "1 1 m 2 2 l S"))
	_, err := Lines(sheet("/F Do", "page:/Resources<</XObject<</F 5 0 R>>>>", others...), options)
	assert.ErrorContains(t, err, "there are too many drawn things")
}

func FuzzLines(f *testing.F) {
	sample.MinimizeBriefly()
	for _, name := range []string{"cairo.pdf", "inkscape.pdf", "locked.pdf"} {
		data, err := os.ReadFile(filepath.Join("testdata", name))
		require.NoError(f, err)
		f.Add(data)
	}
	f.Add(sheet("/OC /L BDC q 1 0 0 1 2 2 cm BT /A 9 Tf (a) Tj ET 1 1 m 2 2 3 3 4 4 c B* Q EMC", ""))
	f.Fuzz(func(t *testing.T, data []byte) {
		out, err := Lines(data, options)
		if err != nil {
			assert.NotContains(t, err.Error(), "pdfcpu")
			return
		}
		check(t, out)
	})
}

// The operators alone, without the library that takes files apart.
func FuzzContent(f *testing.F) {
	sample.MinimizeBriefly()
	for _, text := range []string{"1 1 m 2 2 l S", "BI ID x EI", "<</a[<41>(b)]>> BDC EMC", "[1 2] 0 d",
		"BT (a) Tj [(b) -300] TJ ET", "/F Do"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		out := linework.Drawing{}
		d := &document{budget: linework.NewBudget(options.Limits)}
		s := newShower(d, nil, &out, 0)
		s.state = state{by: pieces.Identity(), clip: orb.Bound{Max: orb.Point{100, 100}}}
		if err := s.run([]byte(text), nil); err == nil {
			check(t, out)
		}
	})
}

func check(t *testing.T, out linework.Drawing) {
	t.Helper()
	for _, line := range out.Lines {
		require.NotEmpty(t, line.Path)
		require.True(t, line.Path.Length() < 1e9)
	}
}
