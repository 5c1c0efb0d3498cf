package steps

import (
	"bytes"
	"fmt"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft"
	"ellwand/draft/bodice"
	"ellwand/draft/skirt"
	"ellwand/pieces/measure"
	"ellwand/pieces/paper"
)

func nestOf(t *testing.T, unit measure.Unit, request draft.Request, sizes ...string) Nest {
	nest := Nest{Sizes: sizes}
	for _, size := range sizes {
		body, err := draft.Size("women", size)
		require.NoError(t, err)
		request.Garment, request.Body, request.Cloth = "skirt", body, "shell"
		result, err := draft.Draft(request)
		require.NoError(t, err)
		garment := Garment{Name: "skirt", Body: result.Body, Pieces: result.Pieces, Sheets: result.Sheets,
			Truing: result.Truing}
		nest.Documents = append(nest.Documents, Document{Title: "Nest", Unit: unit, Garments: []Garment{garment}})
	}
	return nest
}

// The figures of a row in the table are those of each size by itself: waist to
// hip of sizes 8, 12 and 16 (the handbook's table), and a quarter of the hip
// girth with 4 cm of ease, less 7.5 mm on the front.
func TestNestHasTheFiguresOfEachSize(t *testing.T) {
	nest := nestOf(t, measure.Centimetre, draft.Request{Skirt: &skirt.Options{}}, "8", "12", "16")
	var text bytes.Buffer
	require.NoError(t, WriteNestText(&text, nest))
	assert.Regexp(t, regexp.MustCompile(`(?m)^  2 +0 \| -20\.3 +0 \| -20\.9 +0 \| -21\.5   the hip line: waist to hip$`),
		text.String())
	assert.Regexp(t, regexp.MustCompile(`(?m)^  4 +23\.3 \| -20\.3 +25\.3 \| -20\.9 +27\.3 \| -21\.5 `), text.String())
	for i, size := range nest.Sizes {
		for _, c := range nest.Documents[i].Garments[0].contents(measure.Centimetre) {
			for _, seam := range c.seams {
				assert.Contains(t, text.String(), seam.length, size)
			}
		}
	}
}

// A size with another dart has its own table of points, since its numbers mean
// other places.
func TestSizesWithOtherDartsStandApart(t *testing.T) {
	nest := nestOf(t, measure.Centimetre, draft.Request{Bodice: &bodice.Options{}}, "12", "16")
	body := nest.Documents[0].Garments[0].Body.With(draft.Body{draft.WaistGirth: 600})
	result, err := draft.Draft(draft.Request{Garment: "skirt", Body: body, Bodice: &bodice.Options{}})
	require.NoError(t, err)
	nest.Documents[0].Garments[0].Pieces, nest.Documents[0].Garments[0].Sheets = result.Pieces, result.Sheets
	front := nest.pieces(0)[0]
	require.Equal(t, "front bodice", front.all[0].head)
	require.Len(t, front.alike(), 2)
	assert.Equal(t, []string{"12"}, front.alike()[0].sizes)
	assert.Len(t, front.seamTable()[0].figures, 2)
}

// No two of ten sizes look alike in black and white.
func TestSizesAreToldApart(t *testing.T) {
	seen := map[string]bool{}
	for i := range 10 {
		seen[fmt.Sprint(sizePen(i))] = true
	}
	assert.Len(t, seen, 10)
}

func TestNestPagesAreTheSameEachTime(t *testing.T) {
	for _, unit := range []measure.Unit{measure.Centimetre, measure.Inch} {
		nest := nestOf(t, unit, draft.Request{Skirt: &skirt.Options{Shape: skirt.ALine}, Bodice: &bodice.Options{}},
			"6", "12", "24")
		var first, second, text bytes.Buffer
		require.NoError(t, WriteNestPDF(&first, nest, paper.A4))
		require.NoError(t, WriteNestPDF(&second, nest, paper.A4))
		assert.Equal(t, first.Bytes(), second.Bytes())
		require.NoError(t, WriteNestText(&text, nest))
		assert.Equal(t, unit == measure.Inch, !regexp.MustCompile(` (cm|mm)\b`).MatchString(text.String()),
			"one unit in all of it")
	}
}
