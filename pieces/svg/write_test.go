package svg

import (
	"bytes"
	"encoding/xml"
	"io"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
)

// document is what the tests read back of a drawing.
type document struct {
	Width   string `xml:"width,attr"`
	Height  string `xml:"height,attr"`
	ViewBox string `xml:"viewBox,attr"`
	Paths   []struct {
		Class string `xml:"class,attr"`
		Data  string `xml:"d,attr"`
	} `xml:"path"`
	Texts []string `xml:"text"`
}

func drawn(t *testing.T, piece pieces.Piece) document {
	t.Helper()
	var text bytes.Buffer
	require.NoError(t, Write(&text, piece))
	var doc document
	decoder := xml.NewDecoder(bytes.NewReader(text.Bytes()))
	require.NoError(t, decoder.Decode(&doc))
	return doc
}

func (d document) path(class string) string {
	for _, p := range d.Paths {
		if p.Class == class {
			return p.Data
		}
	}
	return ""
}

func cuff() pieces.Piece {
	p := pieces.Rectangle("cuff", 240, 100)
	p.Garment, p.Cloth = "blouse", "shell"
	for i := range p.Edges {
		p.Edges[i].Allowance = 10
	}
	return p
}

// By SVG 1.1, section 7.2, a width in mm and a viewBox of as many units make
// a unit a millimetre.
func TestWriteIsToScale(t *testing.T) {
	doc := drawn(t, cuff())
	assert.Equal(t, "280mm", doc.Width)
	assert.Equal(t, "160mm", doc.Height)
	assert.Equal(t, "0 0 280 160", doc.ViewBox)
	assert.ElementsMatch(t, []string{"10 130", "270 130", "270 10", "10 10"}, corners(doc.path("cutting")))
	assert.ElementsMatch(t, []string{"20 120", "260 120", "260 20", "20 20"}, corners(doc.path("seam")))
	assert.Equal(t, "M10 146V150H110V146", doc.path("ruler"), "100 mm long")
}

func corners(data string) []string {
	return strings.FieldsFunc(data, func(r rune) bool { return strings.ContainsRune("MLZ", r) })
}

func TestWriteSaysWhatToCut(t *testing.T) {
	p := cuff()
	p.Cut, p.Pair = 2, true
	assert.Contains(t, drawn(t, p).Texts, "cut 2, a pair, from shell")
	p = cuff()
	p.Fold, p.Edges[3].Allowance = "left", 0
	doc := drawn(t, p)
	assert.Contains(t, doc.Texts, "cut 1, on the fold, from shell")
	assert.Contains(t, doc.Texts, "lay on the fold")
	assert.NotEmpty(t, doc.path("fold"))
}

func TestWriteNotches(t *testing.T) {
	p := cuff()
	p.Notches = []pieces.Notch{{Edge: "bottom", At: 100, Count: 2}}
	doc := drawn(t, p)
	assert.Equal(t, []string{"117.5 120", "117.5 130"}, corners(doc.path("notch")), "from the seam line out to the cutting line")
}

func TestWriteEscapesNames(t *testing.T) {
	p := cuff()
	p.Name = `<cuff & "band">`
	assert.Contains(t, drawn(t, p).Texts, p.Name)
}

func TestWriteRefusesAPieceWithoutOutline(t *testing.T) {
	assert.Error(t, Write(io.Discard, pieces.Piece{Name: "nothing"}))
}

func TestNumber(t *testing.T) {
	tests := map[float64]string{0: "0", -0.0001: "0", 1.5: "1.5", 10: "10", 1234.5678: "1234.568", 100: "100"}
	for x, want := range tests {
		assert.Equal(t, want, number(x), strconv.FormatFloat(x, 'g', -1, 64))
	}
}
