package steps

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/measure"
	"ellwand/pieces/paper"
)

// A quarter of a circle of radius r lies r (1 - 1 / sqrt 2) off its chord in
// the middle (geometry); at a quarter of the chord, r (sqrt(1 - 1/8) - 1/sqrt 2).
func TestOffChord(t *testing.T) {
	arc := pieces.Arc{Radius: 100, Begin: 0, Sweep: math.Pi / 2}
	offs := offChord(arc)
	quarter := 100 * (math.Sqrt(7./8) - math.Sqrt(0.5))
	assert.InDelta(t, -quarter, offs[0], 0.05)
	assert.InDelta(t, -100*(1-math.Sqrt(0.5)), offs[1], 0.05)
	assert.InDelta(t, -quarter, offs[2], 0.05)
	assert.Equal(t, "2.3 cm, 2.9 cm, 2.3 cm outward", offsText(offs, measure.Centimetre))
	assert.Equal(t, "1/2 in inward, on the line, 3/8 in outward", offsText([3]float64{12.7, 0.2, -9.5}, measure.Inch))
}

// Every piece has its page, steps, and seams; the same document gives the same
// bytes.
func TestDocuments(t *testing.T) {
	all := everything(t)
	for _, unit := range []measure.Unit{measure.Centimetre, measure.Inch} {
		d := Document{Title: "Test", Unit: unit,
			Garments: []Garment{all["blouse 20"], all["dress 20"], all["trousers 1 20"], all["shirt 20"],
				all["straight cut 0 20"]}}
		var text, first, second bytes.Buffer
		require.NoError(t, WriteText(&text, d))
		require.NoError(t, WritePDF(&first, d, paper.A4))
		require.NoError(t, WritePDF(&second, d, paper.A4))
		assert.Equal(t, first.Bytes(), second.Bytes())
		for _, garment := range d.Garments {
			for _, c := range garment.contents(unit) {
				assert.NotEmpty(t, c.steps, c.head)
				assert.Len(t, c.seams, len(seamsOf(c.piece, unit)), c.head)
				assert.Contains(t, text.String(), "\n"+c.head+"\n")
			}
		}
		assert.Equal(t, unit == measure.Inch, !strings.Contains(text.String(), " cm"), "one unit in all of it")
		assert.NotContains(t, text.String(), "{}")
		assert.NotContains(t, text.String(), "%!")
	}
}
