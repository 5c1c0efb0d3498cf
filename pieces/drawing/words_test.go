package drawing

import (
	"bytes"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"

	"ellwand/pieces"
	"ellwand/pieces/seams"
)

func TestCutText(t *testing.T) {
	for _, tt := range []struct {
		piece pieces.Piece
		want  string
	}{
		{pieces.Piece{Cut: 1}, "cut 1"},
		{pieces.Piece{Cut: 1, Fold: seams.Left}, "cut 1 on fold"},
		{pieces.Piece{Cut: 2, Pair: true}, "cut 2, a pair"},
		{pieces.Piece{Cut: 6, Pair: true, Cloth: "lining"}, "cut 6, 3 pairs, from lining"},
		{pieces.Piece{Cut: 2, Cloth: "shell"}, "cut 2, from shell"},
	} {
		assert.Equal(t, tt.want, CutText(tt.piece))
	}
}

// A page that no viewer shows is named by its number; the longest that one shows is not
// refused.
func TestPageTooLong(t *testing.T) {
	assert.NoError(t, WritePDF(&bytes.Buffer{}, "roll", []Page{{Width: LongestPage, Height: 10}}))
	err := WritePDF(&bytes.Buffer{}, "roll", []Page{{Width: 10, Height: 10}, {Width: 10, Height: LongestPage + 1}})
	assert.EqualError(t, err, "page 2 is 5081 mm long; a page of a PDF can be 5080 mm at most")
}

// A blunt line ends where it ends, any other half its width beyond.
func TestEndsOfPaintedLines(t *testing.T) {
	for _, blunt := range []bool{false, true} {
		page := Page{Width: 60, Height: 20}
		page.Line(Pen{Width: 4, Blunt: blunt}, orb.Point{20, 10}, orb.Point{30, 10}, orb.Point{40, 10})
		painted := Paint(page, 10)
		for _, x := range []int{190, 410} {
			if level := painted.GrayAt(x, 100).Y; blunt {
				assert.EqualValues(t, 255, level, "%d", x)
			} else {
				assert.EqualValues(t, 0, level, "%d", x)
			}
		}
		for _, x := range []int{205, 300, 395} {
			assert.EqualValues(t, 0, painted.GrayAt(x, 100).Y, "%d", x)
		}
	}
}
