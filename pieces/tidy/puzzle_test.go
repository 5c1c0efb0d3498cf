package tidy

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"

	"ellwand/pieces"
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
