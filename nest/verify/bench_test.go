package verify

import (
	"fmt"
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/nest/layout"
)

// wave is a garment-like outline of n corners.
func wave(n int, size float64) orb.Ring {
	ring := make(orb.Ring, n)
	for i := range ring {
		a := 2 * math.Pi * float64(i) / float64(n)
		r := size * (1 + 0.25*math.Cos(3*a) + 0.1*math.Sin(7*a))
		ring[i] = orb.Point{r * math.Cos(a), r * math.Sin(a)}
	}
	return ring
}

// grid lays n wavy pieces, near each other but apart.
func grid(n, corners int) (layout.Problem, layout.Layout) {
	p := layout.Problem{
		Width: 1500,
		Items: []layout.Item{{Name: "leaf", Outline: wave(corners, 50), Copies: n, Turns: []layout.Turn{{}}}},
	}
	var l layout.Layout
	for i := range n {
		l.Placements = append(l.Placements, layout.Placement{Copy: i, X: 75 + 125*float64(i/12), Y: 75 + 120*float64(i%12)})
	}
	l.Length = lengthOf(p, l)
	return p, l
}

func BenchmarkVerify(b *testing.B) {
	for _, size := range []struct{ pieces, corners int }{{12, 100}, {500, 100}, {2000, 100}, {100, 3000}} {
		p, l := grid(size.pieces, size.corners)
		require.NoError(b, Layout(p, l))
		b.Run(fmt.Sprintf("pieces=%d/corners=%d", size.pieces, size.corners), func(b *testing.B) {
			for b.Loop() {
				if Layout(p, l) != nil {
					b.Fatal("the layout is valid")
				}
			}
		})
	}
}
