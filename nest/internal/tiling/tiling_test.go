package tiling

import (
	"context"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func squares(sides ...float64) []Rect {
	var rects []Rect
	for _, s := range sides {
		rects = append(rects, Rect{s, s, Both})
	}
	return rects
}

// requireTiling checks a tiling without trusting the search: every rectangle
// inside, in an allowed turn, none over another; with equal areas nothing can
// then be left free.
func requireTiling(t testing.TB, width, length float64, rects []Rect, at []Position) {
	t.Helper()
	require.Len(t, at, len(rects))
	near := 1e-7 * max(width, length)
	area := 0.0
	boxes := make([][4]float64, len(rects))
	for i, r := range rects {
		x, y := r.X, r.Y
		if at[i].Quarter {
			x, y = y, x
			require.NotEqual(t, Upright, r.Turns, "rectangle %d may not be turned", i)
		} else {
			require.NotEqual(t, Quarter, r.Turns, "rectangle %d must be turned", i)
		}
		area += x * y
		boxes[i] = [4]float64{at[i].X, at[i].Y, at[i].X + x, at[i].Y + y}
		require.GreaterOrEqual(t, boxes[i][0], -near)
		require.GreaterOrEqual(t, boxes[i][1], -near)
		require.LessOrEqual(t, boxes[i][2], length+near)
		require.LessOrEqual(t, boxes[i][3], width+near)
		for j, b := range boxes[:i] {
			apart := max(b[0]-boxes[i][2], boxes[i][0]-b[2], b[1]-boxes[i][3], boxes[i][1]-b[3])
			require.GreaterOrEqual(t, apart, -near, "rectangles %d and %d overlap", i, j)
		}
	}
	require.InEpsilon(t, width*length, area, 1e-8)
}

func TestSquaredRectangles(t *testing.T) {
	tests := []struct {
		name          string
		width, length float64
		sides         []float64
	}{
		{"Moron 1925, 33 x 32", 32, 33, []float64{1, 4, 7, 8, 9, 10, 14, 15, 18}},
		{"nine squares, 61 x 69 (published; the areas add up to 4209)", 61, 69, []float64{2, 5, 7, 9, 16, 25, 28, 33, 36}},
		{"order 21 squared square, 112 x 112 (Duijvestijn 1978, from memory)", 112, 112,
			[]float64{2, 4, 6, 7, 8, 9, 11, 15, 16, 17, 18, 19, 24, 25, 27, 29, 33, 35, 37, 42, 50}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			for _, scale := range []float64{1, 25.4, 1 / 3.0} {
				rects := squares(test.sides...)
				for i := range rects {
					rects[i].X *= scale
					rects[i].Y *= scale
				}
				at, outcome := Tile(context.Background(), test.width*scale, test.length*scale, rects, 10_000_000)
				require.Equal(t, Tiled, outcome)
				requireTiling(t, test.width*scale, test.length*scale, rects, at)
			}
		})
	}
}

func TestNoTiling(t *testing.T) {
	tests := []struct {
		name          string
		width, length float64
		rects         []Rect
		want          Outcome
	}{
		{"area is not enough", 10, 10, squares(5, 5, 5), None},
		{"area fits, shapes do not", 6, 6, []Rect{{5, 5, Both}, {11, 1, Both}}, None},
		{"turned and not", 3, 6, []Rect{{4, 1, Both}, {4, 1, Both}, {4, 1, Both}, {3, 2, Both}}, Tiled},
		{"must be turned", 2, 6, []Rect{{2, 3, Upright}, {3, 2, Upright}}, None},
		{"may be turned", 2, 6, []Rect{{2, 3, Both}, {3, 2, Upright}}, Tiled},
		{"is always turned", 2, 6, []Rect{{2, 3, Quarter}, {3, 2, Upright}}, Tiled},
		// Along either axis, equal ones must lie on one another.
		{
			"equal ones stacked",
			6,
			6,
			[]Rect{{3, 3, Both}, {3, 3, Both}, {6, 1, Upright}, {6, 1, Upright}, {6, 1, Upright}},
			Tiled,
		},
		{"nothing", 2, 6, nil, None},
		{"no size", 2, 6, []Rect{{2, 6, Both}, {0, 1, Both}}, None},
		// Strips of 4 x 1 tile a rectangle only if a side is a multiple of 4
		// (Klarner, "Packing a rectangle with congruent n-ominoes", Journal of
		// Combinatorial Theory 7, 1969).
		{"strips of four", 6, 6, []Rect{{4, 1, Both}, {4, 1, Both}, {4, 1, Both}, {4, 1, Both}, {4, 1, Both},
			{4, 1, Both}, {4, 1, Both}, {4, 1, Both}, {4, 1, Both}}, None},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			at, outcome := Tile(context.Background(), test.width, test.length, test.rects, 1_000_000)
			require.Equal(t, test.want, outcome)
			if outcome == Tiled {
				requireTiling(t, test.width, test.length, test.rects, at)
				return
			}
			require.Nil(t, at)
		})
	}
}

func TestGivesUp(t *testing.T) {
	width, length, rects := cutUp(rand.New(rand.NewPCG(1, 1)), 20, true, Both)
	_, outcome := Tile(context.Background(), width, length, rects, 5)
	assert.Equal(t, GaveUp, outcome)
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	_, outcome = Tile(ctx, width, length, rects, math.MaxInt)
	assert.NotEqual(t, None, outcome)
}

// box is x, y, and sizes along them.
type box [4]float64

// cutUp cuts a rectangle into n: guillotine cuts, and pinwheels of five.
func cutUp(rng *rand.Rand, n int, whole bool, turns Turns) (width, length float64, rects []Rect) {
	width, length = float64(60+rng.IntN(60)), float64(60+rng.IntN(60))
	if !whole {
		width, length = width+rng.Float64(), length+rng.Float64()
	}
	cut := func(side float64) float64 {
		at := side * (0.2 + 0.6*rng.Float64())
		if whole {
			at = math.Round(at)
		}
		return at
	}
	boxes := []box{{0, 0, length, width}}
	for len(boxes) < n {
		largest := 0
		for i, b := range boxes {
			if b[2]*b[3]*(0.3+rng.Float64()) > boxes[largest][2]*boxes[largest][3] {
				largest = i
			}
		}
		b := boxes[largest]
		boxes = append(boxes[:largest], boxes[largest+1:]...)
		if rng.IntN(3) == 0 && len(boxes)+5 <= n && min(b[2], b[3]) > 10 {
			boxes = append(boxes, pinwheel(b, cut)...)
			continue
		}
		c := b
		if rng.Float64()*(b[2]+b[3]) < b[2] {
			b[2] = cut(b[2])
			c[0], c[2] = c[0]+b[2], c[2]-b[2]
		} else {
			b[3] = cut(b[3])
			c[1], c[3] = c[1]+b[3], c[3]-b[3]
		}
		boxes = append(boxes, b, c)
	}
	for _, b := range boxes {
		r := Rect{b[2], b[3], turns}
		if turns == Both && rng.IntN(2) == 0 {
			r.X, r.Y = r.Y, r.X
		}
		if r.X > 0 && r.Y > 0 {
			rects = append(rects, r)
		}
	}
	rng.Shuffle(len(rects), func(i, j int) { rects[i], rects[j] = rects[j], rects[i] })
	return width, length, rects
}

// pinwheel cuts a box into four arms about a middle.
func pinwheel(b box, cut func(float64) float64) []box {
	x0, x1 := cut(b[2]), cut(b[2])
	y0, y1 := cut(b[3]), cut(b[3])
	x0, x1 = min(x0, x1), max(x0, x1)
	y0, y1 = min(y0, y1), max(y0, y1)
	if x0 == x1 || y0 == y1 {
		return []box{b}
	}
	return []box{
		{b[0], b[1], x1, y0}, {b[0] + x1, b[1], b[2] - x1, y1},
		{b[0] + x0, b[1] + y1, b[2] - x0, b[3] - y1}, {b[0], b[1] + y0, x0, b[3] - y0},
		{b[0] + x0, b[1] + y0, x1 - x0, y1 - y0},
	}
}

func TestCutUpRectangles(t *testing.T) {
	for _, n := range []int{1, 2, 5, 9, 12, 16, 20} {
		for _, whole := range []bool{false, true} {
			for _, turns := range []Turns{Upright, Both} {
				t.Run(fmt.Sprintf("n=%d/whole=%v/turns=%d", n, whole, turns), func(t *testing.T) {
					for seed := range uint64(10) {
						width, length, rects := cutUp(rand.New(rand.NewPCG(seed, 9)), n, whole, turns)
						at, outcome := Tile(context.Background(), width, length, rects, 20_000_000)
						require.Equal(t, Tiled, outcome, "seed %d", seed)
						requireTiling(t, width, length, rects, at)
					}
				})
			}
		}
	}
}

// The sums must agree with counting through all choices.
func TestSumsAgainstCounting(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 2))
	for range 200 {
		sides, counts, left := make([][]int, 5), make([]int, 5), make([]int, 5)
		for i := range sides {
			sides[i] = []int{1 + rng.IntN(60)}
			if rng.IntN(2) == 0 {
				sides[i] = append(sides[i], 1+rng.IntN(60))
			}
			counts[i] = 1 + rng.IntN(2)
			left[i] = rng.IntN(counts[i] + 1)
		}
		want := map[int]bool{0: true}
		for i, count := range left {
			for range count {
				next := map[int]bool{}
				for s := range want {
					next[s] = true
					for _, side := range sides[i] {
						next[s+side] = true
					}
				}
				want = next
			}
		}
		bits, pairs := newBitSums(sides, 200), newPairSums(sides, counts, 0, 200)
		bits.remain(left)
		pairs.remain(left)
		for target := range 201 {
			require.Equal(t, want[target], bits.reach(target), "bits, %v of %v: %d", left, sides, target)
			require.Equal(t, want[target], pairs.reach(target), "pairs, %v of %v: %d", left, sides, target)
		}
	}
}

func BenchmarkTile(b *testing.B) {
	b.Run("moron", func(b *testing.B) {
		rects := squares(1, 4, 7, 8, 9, 10, 14, 15, 18)
		for b.Loop() {
			if _, outcome := Tile(context.Background(), 32, 33, rects, 10_000_000); outcome != Tiled {
				b.Fatal("a tiling exists")
			}
		}
	})
	for _, whole := range []bool{false, true} {
		for _, turns := range []Turns{Upright, Both} {
			b.Run(fmt.Sprintf("n=20/whole=%v/turns=%d", whole, turns), func(b *testing.B) {
				seed := uint64(0)
				for b.Loop() {
					width, length, rects := cutUp(rand.New(rand.NewPCG(seed%10, 9)), 20, whole, turns)
					if _, outcome := Tile(context.Background(), width, length, rects, 20_000_000); outcome != Tiled {
						b.Fatal("a tiling exists")
					}
					seed++
				}
			})
		}
	}
}
