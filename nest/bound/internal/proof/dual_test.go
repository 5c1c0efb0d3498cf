package proof

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// Weights of shares that fit side by side never exceed 1: shares are drawn
// from what is left of the whole, often as simple fractions of it, where the
// steps are.
func TestDualsAreFeasible(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		left := 1.0
		var shares []float64
		for left > 1e-3 && len(shares) < 12 {
			s := left * rapid.Float64Range(0.01, 1).Draw(t, "share")
			if rapid.Bool().Draw(t, "simple") {
				s = 1 / float64(rapid.IntRange(2, 14).Draw(t, "part"))
			}
			if s > left {
				s = left
			}
			shares = append(shares, s)
			left -= s
		}
		e := rapid.OneOf(rapid.Float64Range(0.01, 0.5), rapid.SampledFrom([]float64{0.5, 1. / 3, 0.25, 0.2, 0.1})).
			Draw(t, "e")
		tried := append(duals(shares), rounded(e), counted(e), stepped(rapid.IntRange(1, 30).Draw(t, "k")))
		for _, d := range tried {
			sum := 0.0
			for _, s := range shares {
				sum += d.weight(s)
			}
			require.LessOrEqual(t, sum, 1+1e-9, "%v with breaks %v", shares, d.breaks)
		}
	})
}

// The mean over a stretch must agree with adding up weights.
func TestMeanAgainstSampling(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.Float64Range(0, 1).Draw(t, "a"), rapid.Float64Range(0, 1).Draw(t, "b")
		e := rapid.Float64Range(0.02, 0.5).Draw(t, "e")
		for _, d := range []*dual{identity(), rounded(e), counted(e), stepped(5)} {
			const n = 4000
			sum := 0.0
			for i := range n {
				sum += d.weight(a + (b-a)*(float64(i)+0.5)/n)
			}
			// Each of up to 50 steps may be off by one sample.
			assert.InDelta(t, sum/n, d.mean(a, b), 50./n/2+1e-5)
		}
	})
}

func TestWeights(t *testing.T) {
	tests := []struct {
		name  string
		d     *dual
		share float64
		want  float64
	}{
		{"above half", rounded(0.5), 0.51, 1},
		{"half", rounded(0.5), 0.5, 0.5},
		{"half, by rounding", rounded(0.5), 0.5 - 1e-16, 0.5},
		{"half, by tolerance", rounded(0.5), 0.5 + 1e-7, 0.5},
		{"below half", rounded(0.5), 0.4999, 0},
		{"small", rounded(0.3), 0.29, 0},
		{"middle", rounded(0.3), 0.31, 0.31},
		{"large", rounded(0.3), 0.71, 1},
		{"of three parts, more than one", stepped(2), 0.34, 0.5},
		{"of three parts, one", stepped(2), 1. / 3, 1. / 3},
		{"of three parts, two", stepped(2), 0.67, 1},
		{"of at most three", counted(0.31), 0.31, 1. / 3},
		{"beside no more than none", counted(0.31), 0.70, 1},
		{"beside one more", counted(0.31), 0.68, 2. / 3},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			assert.InDelta(t, test.want, test.d.weight(test.share), 1e-12)
		})
	}
}

func TestSections(t *testing.T) {
	//  a "u" on its side: a wall of 10, two arms of 20 more, a slot of 3
	u := orb.Ring{{0, 0}, {30, 0}, {30, 10}, {10, 10}, {10, 13}, {30, 13}, {30, 20}, {0, 20}}
	assert.Equal(t, []slab{{0, 10, 20, 20}, {10, 30, 10, 10}, {10, 30, 7, 7}}, sections(u, 0))
	assert.Equal(t, []slab{{0, 10, 22, 22}, {10, 30, 12, 12}, {10, 30, 9, 9}}, sections(u, 2))
	assert.Equal(
		t,
		[]slab{{0, 10, 24, 24}, {10, 30, 12, 12}, {10, 30, 9, 9}},
		sections(u, 4),
		"the slot is narrower than the gap",
	)
	triangle := orb.Ring{{0, 0}, {8, 0}, {4, 6}}
	assert.Equal(t, []slab{{0, 4, 0, 6}, {4, 8, 6, 0}}, sections(triangle, 0))
}
