package nest

import (
	"context"
	"fmt"
	"math"
	"testing"

	"ellwand/nest/layout"
	"ellwand/nest/portable"

	"github.com/paulmach/orb"
)

// drafted is an outline like a drafted piece: a hundred vertices on straight
// and curved sides, a different one for each k.
func drafted(k int) orb.Ring {
	var ring orb.Ring
	wide, long := 200+float64(k%7)*15, 400+float64(k%11)*20
	for i := range 100 {
		sin, cos := portable.SincosDegrees(3.6 * float64(i))
		thrice, _ := portable.Sincos(6*math.Pi*float64(i)/100 + float64(k))
		_, five := portable.SincosDegrees(18 * float64(i))
		r := 1 + float64(0.12*thrice) + float64(0.05*five)
		ring = append(ring, orb.Point{long / 2 * r * cos, wide / 2 * r * sin})
	}
	return ring
}

func draftedProblem(kinds, copies int) layout.Problem {
	p := layout.Problem{Width: 1500}
	turns := []layout.Turn{{}, {Degrees: 180}, {Mirrored: true}, {Degrees: 180, Mirrored: true}}
	for k := range kinds {
		p.Items = append(p.Items, layout.Item{Outline: drafted(k), Copies: copies, Turns: turns})
	}
	return p
}

// The first layout, with what must be prepared for it.
func BenchmarkFirstLayout(b *testing.B) {
	for _, size := range []struct{ kinds, copies int }{{12, 1}, {50, 10}, {50, 40}, {500, 1}} {
		b.Run(fmt.Sprintf("pieces=%d/outlines=%d", size.kinds*size.copies, size.kinds), func(b *testing.B) {
			p := draftedProblem(size.kinds, size.copies)
			for b.Loop() {
				got, err := Solve(context.Background(), p, Options{Passes: 1, Seed: 1})
				if err != nil || len(got.Layout.Placements) != size.kinds*size.copies {
					b.Fatal("not laid", err)
				}
			}
		})
	}
}

func BenchmarkPrepare(b *testing.B) {
	p := draftedProblem(40, 1)
	for b.Loop() {
		if _, err := prepare(p, nil, nil, nil); err != nil {
			b.Fatal(err)
		}
	}
}
