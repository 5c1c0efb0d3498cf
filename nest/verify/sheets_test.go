package verify

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/nest/layout"
)

func TestVerifyOnSheets(t *testing.T) {
	//   an L of 40 x 40 less 20 x 20, with a hole; and a plain sheet
	ell := orb.Polygon{
		{{0, 0}, {40, 0}, {40, 20}, {20, 20}, {20, 40}, {0, 40}},
		oblong(5, 25, 10, 10),
	}
	p := layout.Problem{
		Sheets: []orb.Polygon{ell, {square(20)}},
		Items: []layout.Item{
			{Name: "flap", Outline: oblong(0, 0, 20, 10), Copies: 2, Turns: []layout.Turn{{}, {Degrees: 90}}},
		},
	}
	tests := []struct {
		name string
		at   layout.Placement
		want string
	}{
		{"in the foot", layout.Placement{X: 20, Y: 0}, ""},
		{"up to the inner corner", layout.Placement{X: 20, Y: 10}, ""},
		{"over the inner edge", layout.Placement{X: 20, Y: 10.5}, "flap (copy 1) hangs over the edge by 0.5"},
		{"in the notch", layout.Placement{X: 20, Y: 25}, "flap (copy 1) hangs over the edge"},
		{"below the hole", layout.Placement{X: 0, Y: 15}, ""},
		{"over the hole", layout.Placement{X: 0, Y: 25}, "flap (copy 1) hangs over the edge"},
		{"round the hole's corner", layout.Placement{X: 0, Y: 16}, "flap (copy 1) hangs over the edge by 1"},
		{"same place, other sheet", layout.Placement{X: 0, Y: 0, Sheet: 1}, ""},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			other := layout.Placement{Copy: 1}
			err := Layout(p, layout.Layout{Placements: []layout.Placement{test.at, other}})
			if test.want == "" {
				require.NoError(t, err)
				return
			}
			require.ErrorContains(t, err, test.want)
		})
	}
}
