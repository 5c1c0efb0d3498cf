package pieces

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
)

func TestOuter(t *testing.T) {
	square := []orb.Point{{0, 0}, {10, 0}, {10, 10}, {0, 10}}
	cases := map[string]struct{ chain, want []orb.Point }{
		"simple": {square, square},
		"a loop outside is kept": {
			[]orb.Point{{0, 0}, {10, 0}, {10, 5}, {15, 5}, {15, 8}, {10, 8}, {10, 10}, {0, 10}},
			[]orb.Point{{0, 0}, {10, 0}, {10, 5}, {15, 5}, {15, 8}, {10, 8}, {10, 10}, {0, 10}},
		},
		"a loop inside is left out": {
			[]orb.Point{{0, 0}, {10, 0}, {10, 10}, {5, 10}, {5, 4}, {3, 4}, {3, 6}, {7, 6}, {7, 10}, {0, 10}},
			square,
		},
		"a stretch run twice": {
			[]orb.Point{{0, 0}, {10, 0}, {10, 10}, {4, 10}, {10, 10}, {0, 10}},
			square,
		},
		"a tip that runs back": {[]orb.Point{{0, 0}, {10, 0}, {10, 10}, {10, 14}, {10, 10}, {0, 10}}, square},
		"two squares that cross": {
			[]orb.Point{{0, 0}, {10, 0}, {10, 10}, {5, 10}, {5, 5}, {15, 5}, {15, 15}, {5, 15}, {5, 10}, {0, 10}},
			[]orb.Point{{0, 0}, {10, 0}, {10, 5}, {15, 5}, {15, 15}, {5, 15}, {5, 10}, {0, 10}},
		},
		"a bay closed by a tip a hair short, on the right": {
			[]orb.Point{{0, 0}, {10, 0}, {10, 10}, {8, 10}, {8, 4}, {4, 4}, {8 - 5e-8, 7}, {4, 9}, {4, 10}, {0, 10}},
			[]orb.Point{{0, 0}, {10, 0}, {10, 10}, {8, 10}, {8, 7}, {4, 9}, {4, 10}, {0, 10}},
		},
		"and on the left": {
			[]orb.Point{{0, 0}, {10, 0}, {10, 10}, {6, 10}, {6, 9}, {2 + 5e-8, 7}, {6, 4}, {2, 4}, {2, 10}, {0, 10}},
			[]orb.Point{{0, 0}, {10, 0}, {10, 10}, {6, 10}, {6, 9}, {2, 7}, {2, 10}, {0, 10}},
		},
		"points a hair apart": {
			[]orb.Point{{0, 0}, {10, 0}, {10, 5e-8}, {10, 10}, {10 - 5e-8, 10}, {0, 10}, {0, 4}},
			square,
		},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) { assertRing(t, c.want, outer(c.chain), 1e-6) })
	}
	for _, nothing := range [][]orb.Point{nil, {{1, 1}}, {{0, 0}, {5, 5}}, {{0, 0}, {5, 5}, {9, 9}},
		{{0, 0}, {0, 0}, {0, 0}, {0, 0}}} {
		assert.Empty(t, outer(nothing))
	}
}
