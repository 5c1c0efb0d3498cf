package contact

import (
	"bytes"
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/seams"
)

// Everything is on the page, at the largest scale that it holds; many pieces make it
// longer and lie beside each other.
func TestPage(t *testing.T) {
	for _, n := range []int{1, 7, 400} {
		t.Run(fmt.Sprint(n), func(t *testing.T) {
			var all []pieces.Piece
			for i := range n {
				p := pieces.Rectangle(fmt.Sprintf("panel %d", i+1), 300, 400+float64(i))
				p.Edges[0].Included = 40
				p.Fold = seams.Left
				all = append(all, p)
			}
			page, err := Sheet{Title: "Panels", Pieces: all}.Page()
			require.NoError(t, err)
			assert.Equal(t, width, page.Width)
			assert.GreaterOrEqual(t, page.Height, height)
			var shapes []drawn
			for i, p := range all {
				cutting, err := p.CuttingOutline(tolerance)
				require.NoError(t, err)
				shapes = append(shapes, shape{i + 1, p, cutting})
			}
			scale, places, deep := arranged(shapes)
			for i, a := range places {
				across, down := size(shapes[i], scale)
				assert.LessOrEqual(t, a[0]+across, width-margin+1e-9)
				assert.LessOrEqual(t, a[1]+down, deep+1e-9)
			}
			if n == 1 {
				assert.Equal(t, 4., scale, "a piece of 40 cm on a page of 21 cm")
			}
		})
	}
}

// A piece is named by its number and, where it has one, its size.
func TestNameWithSize(t *testing.T) {
	for size, want := range map[string]string{"": ">1  pocket<", "12": ">1  pocket, 12<"} {
		p := pieces.Rectangle("pocket", 120, 140)
		p.Size = size
		page, err := Sheet{Title: "Pocket", Pieces: []pieces.Piece{p}}.Page()
		require.NoError(t, err)
		var file bytes.Buffer
		require.NoError(t, drawing.WriteSVG(&file, "Pocket", page))
		assert.Contains(t, file.String(), want)
	}
}
