package nest

import (
	"context"
	"testing"

	"ellwand/nest/layout"
	"ellwand/nest/verify"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"
)

func rect(x, y float64) orb.Ring { return orb.Ring{{0, 0}, {x, 0}, {x, y}, {0, y}, {0, 0}} }

var bothWays = []layout.Turn{{Degrees: 0}, {Degrees: 180}}

func squares(width float64, sides ...float64) layout.Problem {
	p := layout.Problem{Width: width}
	for _, s := range sides {
		p.Items = append(p.Items, layout.Item{Outline: rect(s, s), Copies: 1, Turns: bothWays})
	}
	return p
}

// Moron 1925: nine squares tile 33 x 32. The 61 x 69 of nine squares is
// published too; the areas agree.
func TestSquaredRectanglesAreSolvedExactly(t *testing.T) {
	tests := []struct {
		name   string
		p      layout.Problem
		length float64
	}{
		{"Moron along 32", squares(32, 1, 4, 7, 8, 9, 10, 14, 15, 18), 33},
		{"Moron along 33", squares(33, 1, 4, 7, 8, 9, 10, 14, 15, 18), 32},
		{"61 x 69", squares(61, 2, 5, 7, 9, 16, 25, 28, 33, 36), 69},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got, err := Solve(context.Background(), test.p, Options{Passes: 1})
			require.NoError(t, err)
			require.InDelta(t, test.length, got.Layout.Length, 1e-6)
			require.NoError(t, verify.Layout(test.p, got.Layout))
		})
	}
}
