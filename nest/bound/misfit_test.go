package bound

import (
	"fmt"
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/nest/layout"
)

func TestMisfit(t *testing.T) {
	tests := []struct {
		name string
		p    layout.Problem
		want string
	}{
		{"open strip", strip(10, item("a", oblong(0, 0, 99, 10), 9)), ""},
		{"no proof", layout.Problem{Width: 10, Length: 10, Items: []layout.Item{item("a", square(5), 4)}}, ""},
		{"too long", layout.Problem{Width: 10, Length: 10, Items: []layout.Item{item("belt", oblong(0, 0, 12, 1), 1)}},
			"belt is too large in every turn that is allowed: at least 12 along and 1 across"},
		{
			"too long one way, too wide the other",
			layout.Problem{
				Width:  10,
				Length: 15,
				Items:  []layout.Item{item("a", oblong(0, 0, 16, 9), 1, layout.Turn{}, layout.Turn{Degrees: 90})},
			},
			"a is too large in every turn that is allowed: at least 9 along and 9 across",
		},
		{"area", layout.Problem{Width: 10, Length: 10, Items: []layout.Item{item("a", square(5), 5)}},
			"the pieces have 25.00 % more area than there is to lay them on"},
		{"queue along", layout.Problem{Width: 10, Length: 10, Items: []layout.Item{item("a", oblong(0, 0, 4, 6), 3)}},
			"the pieces cannot be laid shorter than 12 on this width, and the sheet is 10 long"},
		{"queue across", layout.Problem{Width: 10, Length: 10, Items: []layout.Item{item("a", oblong(0, 0, 6, 4), 3)}},
			"the pieces cannot be laid narrower than 12 on this length, and the sheet is 10 wide"},
		{
			"two sheets, area",
			layout.Problem{
				Sheets: []orb.Polygon{{square(5)}, {square(10), oblong(2, 2, 5, 5)}},
				Items:  []layout.Item{item("a", square(5), 5)},
			},
			"the pieces have 25.00 % more area than there is to lay them on",
		},
		{
			"two sheets, too large for both",
			layout.Problem{
				Sheets: []orb.Polygon{{oblong(0, 0, 20, 5)}, {oblong(0, 0, 5, 20)}},
				Items:  []layout.Item{item("a", square(6), 1)},
			},
			"a is too large in every turn",
		},
		{
			"one sheet, by its box",
			layout.Problem{
				Sheets: []orb.Polygon{{oblong(40, 40, 10, 10)}},
				Items:  []layout.Item{item("a", oblong(0, 0, 4, 6), 3)},
			},
			"the pieces cannot be laid shorter than 12 on this width",
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got := Misfit(test.p)
			if test.want == "" {
				require.Empty(t, got)
				return
			}
			require.Contains(t, got, test.want)
		})
	}
}

func BenchmarkBound(b *testing.B) {
	for _, items := range []int{12, 50, 500} {
		p := layout.Problem{Width: 1500}
		for i := range items {
			p.Items = append(
				p.Items,
				item(
					"leaf",
					wave(100, 100+float64(i%40)*10),
					2,
					layout.Turn{},
					layout.Turn{Degrees: 180},
					layout.Turn{Mirrored: true},
				),
			)
		}
		b.Run(fmt.Sprintf("items=%d", items), func(b *testing.B) {
			for b.Loop() {
				if bound := Length(p); math.IsNaN(bound) || bound <= 0 {
					b.Fatal("no bound")
				}
			}
		})
	}
}
