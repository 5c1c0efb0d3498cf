package sheet

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"regexp"
	"strconv"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/paper"
)

var update = flag.Bool("update", false, "write the golden files anew")

// The first sheets of a print, line by line: whoever changes them sees what else moved.
func TestSheetsAreDrawn(t *testing.T) {
	pages, err := testLayout(t, paper.A4).Pages()
	require.NoError(t, err)
	for i, page := range pages[:4] {
		var drawn bytes.Buffer
		require.NoError(t, drawing.WriteSVG(&drawn, "sheet", page))
		golden := fmt.Sprintf("testdata/page%d.svg", i+1)
		if *update {
			require.NoError(t, os.MkdirAll("testdata", 0o755))
			require.NoError(t, os.WriteFile(golden, drawn.Bytes(), 0o644))
		}
		want, err := os.ReadFile(golden)
		require.NoError(t, err)
		assert.Equal(t, string(want), drawn.String())
	}
}

// On the map of many sheets their names stay within them, those of three letters too.
func TestNamesOnTheMap(t *testing.T) {
	layout := Layout{Title: "train", Paper: paper.A4, Figures: []DrawnPiece{
		figureOf(t, pieces.Rectangle("train", 2000, 400)).Map(onto(10, 410))}}
	plane, tiling := layout.Plane()
	p := panel{layout: layout, tiling: tiling, plane: plane, tiles: tiling.Tiles(plane)}
	page := drawing.Page{Width: 80, Height: 100}
	p.pageMap(&page.Picture, orb.Point{}, 80, 100)
	var drawn bytes.Buffer
	require.NoError(t, drawing.WriteSVG(&drawn, "map", page))
	names := regexp.MustCompile(`font-size="([0-9.]+)"[^>]*>([A-Z]1[0-9])<`).FindAllStringSubmatch(drawn.String(), -1)
	require.NotEmpty(t, names)
	tile := p.tiles[0].Box
	scale := 80 / p.tiles[len(p.tiles)-1].Box.Max[0]
	for _, name := range names {
		size, err := strconv.ParseFloat(name[1], 64)
		require.NoError(t, err)
		box := drawing.Text{Words: name[2], Points: size / drawing.Point, Bold: true}.Outline().Bound()
		assert.Less(t, box.Max[0]-box.Min[0], (tile.Max[0]-tile.Min[0])*scale, name[2])
		assert.Less(t, box.Max[1]-box.Min[1], (tile.Max[1]-tile.Min[1])*scale, name[2])
	}
}
