package compact

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/optimize/convex/lp"
)

// randomProgram has the shape of a compaction: coordinates between bounds,
// differences kept apart, and a length above all of them.
func randomProgram(rng *rand.Rand, n int) (linear, []float64) {
	var l linear
	start := make([]float64, n+1)
	for k := range n {
		start[k] = 10 * rng.Float64()
		l.addRow(0, term{k, 1})
		l.addRow(-12, term{k, -1})
		l.addRow(rng.Float64(), term{n, 1}, term{k, -1})
	}
	for range 3 * n {
		i, j := rng.IntN(n), rng.IntN(n)
		if i == j {
			continue
		}
		a, b := rng.Float64(), rng.Float64()
		l.addRow(a*start[i]-b*start[j]-rng.Float64(), term{i, a}, term{j, -b})
	}
	l.variables, l.least = n+1, n
	start[n] = 13
	return l, start
}

// bySimplex solves the same program with the simplex method of gonum.
func bySimplex(t *testing.T, l linear) float64 {
	a := mat.NewDense(len(l.rows), l.variables, nil)
	b := make([]float64, len(l.rows))
	for i, r := range l.rows {
		for _, v := range l.of(r) {
			a.Set(i, v.variable, -v.factor)
		}
		b[i] = -r.b
	}
	cost := make([]float64, l.variables)
	cost[l.least] = 1
	c, A, B := lp.Convert(cost, a, b, nil, nil)
	best, _, err := lp.Simplex(c, A, B, 1e-10, nil)
	require.NoError(t, err)
	return best
}

func TestSolveAgainstSimplex(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 8))
	for n := 2; n < 14; n++ {
		l, start := randomProgram(rng, n)
		z, ok := l.solve(start)
		require.True(t, ok)
		require.InDelta(t, bySimplex(t, l), z[l.least], 1e-6)
		for _, r := range l.rows {
			require.GreaterOrEqual(t, l.dot(r, z)-r.b, -1e-9)
		}
	}
}

func BenchmarkSolve(b *testing.B) {
	rng := rand.New(rand.NewPCG(9, 10))
	l, start := randomProgram(rng, 200)
	for b.Loop() {
		if _, ok := l.solve(start); !ok {
			b.Fatal("not solved")
		}
	}
}
