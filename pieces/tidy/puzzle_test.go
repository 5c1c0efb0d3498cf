package tidy

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/linework"
)

// How sheets lie is believed where three lines go on at least, and of all no more than
// 35 of a hundred do not.
func TestPlausibleTilings(t *testing.T) {
	for _, tt := range []struct {
		agree, differ int
		want          bool
	}{{2, 0, false}, {3, 0, true}, {3, 1, true}, {3, 2, false}, {13, 7, true}, {65, 35, true}, {64, 36, false}} {
		assert.Equal(t, tt.want, candidate{agree: tt.agree, differ: tt.differ}.isPlausible(), "%+v", tt)
	}
}

// Level lines go on from sheet to sheet by any overlap: it is asked for, not guessed. Once
// it is said, each sheet shows what the one to the right of it does not.
func TestOverlapThatIsNotSeen(t *testing.T) {
	d := linework.Drawing{}
	line := func(page int, a, b, c, d orb.Point) linework.Line {
		return linework.Line{Page: page, Group: -1, Path: pieces.Path{pieces.Bezier{P0: a, P1: b, P2: c, P3: d}}}
	}
	for page, x := range []float64{100, 0} {
		d.Pages = append(d.Pages, linework.Page{Box: orb.Bound{Max: orb.Point{200, 300}}})
		for _, y := range []float64{50, 110, 170, 240} {
			d.Lines = append(d.Lines, line(page, orb.Point{x, y}, orb.Point{x + 30, y}, orb.Point{x + 60, y},
				orb.Point{x + 100, y}))
		}
		x = 100
		d.Lines = append(d.Lines, line(page, orb.Point{x, 50}, orb.Point{x, 60}, orb.Point{x, 70}, orb.Point{x, 240}))
	}
	_, err := Drawing(d, options)
	assert.Equal(t, &linework.Fault{Of: linework.OverlapUnsure, Text: "1 2"}, err)
	o := options
	o.View.Overlap, o.View.OverlapSaid = 10, true
	got, err := Drawing(d, o)
	require.NoError(t, err)
	assert.Equal(t, []found.PlacedSheet{{Page: 1, Box: orb.Bound{Max: orb.Point{190, 300}}},
		{Page: 2, Box: orb.Bound{Min: orb.Point{190, 0}, Max: orb.Point{390, 300}}}}, got.Overview.Sheets)
}

// Of the lines of a sheet those are cut off that end within 12 mm of its rim: no closed
// one, and none so short that it may be a mark there.
func TestLinesThatAreCutOff(t *testing.T) {
	line := func(from, to orb.Point, closed bool) linework.Line {
		return linework.Line{Path: pieces.Path{pieces.Line{From: from, To: to}}, Closed: closed}
	}
	page := linework.Page{Box: orb.Bound{Max: orb.Point{200, 300}}}
	for want, lines := range map[int][]linework.Line{
		0: {
			line(orb.Point{50, 50}, orb.Point{150, 50}, false), line(orb.Point{50, 50}, orb.Point{195, 50}, true),
			line(orb.Point{180, 50}, orb.Point{195, 50}, false), line(orb.Point{180, 90}, orb.Point{195, 90}, true),
		},
		2: {line(orb.Point{50, 50}, orb.Point{195, 50}, false), line(orb.Point{5, 250}, orb.Point{100, 250}, false)},
	} {
		assert.Equal(t, want, cutOff(linework.Drawing{Pages: []linework.Page{page}, Lines: lines}))
	}
}
