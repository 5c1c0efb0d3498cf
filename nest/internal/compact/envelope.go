package compact

import "math"

// envelope is a symmetric matrix of which each row is kept from its first
// entry to the diagonal (skyline storage; Jennings 1966). Pieces numbered from
// left to right meet only near numbers, so rows are short; the last row, the
// length, is long.
type envelope struct {
	first []int // first column of each row
	at    []int // where each row begins in data, less its first column
	data  []float64
}

func newEnvelope(l *linear) envelope {
	e := envelope{first: make([]int, l.variables), at: make([]int, l.variables)}
	for k := range e.first {
		e.first[k] = k
	}
	for _, r := range l.rows {
		terms := l.of(r)
		least := l.variables
		for _, t := range terms {
			least = min(least, t.variable)
		}
		for _, t := range terms {
			e.first[t.variable] = min(e.first[t.variable], least)
		}
	}
	size := 0
	for k, f := range e.first {
		e.at[k] = size - f
		size += k - f + 1
	}
	e.data = make([]float64, size)
	return e
}

func (e *envelope) clear() { clear(e.data) }

func (e *envelope) add(i, j int, v float64) {
	if i < j {
		i, j = j, i
	}
	e.data[e.at[i]+j] += v
}

func (e *envelope) row(i int) []float64 { return e.data[e.at[i]+e.first[i] : e.at[i]+i+1] }

// cholesky factorises in place; false when the matrix is not positive
// definite.
func (e *envelope) cholesky() bool {
	for i := range e.first {
		ri, fi := e.row(i), e.first[i]
		for j := fi; j < i; j++ {
			rj, fj := e.row(j), e.first[j]
			from := max(fi, fj)
			sum := ri[j-fi]
			a, b := ri[from-fi:j-fi], rj[from-fj:j-fj]
			for k, v := range a {
				sum -= float64(v * b[k])
			}
			ri[j-fi] = sum / rj[j-fj]
		}
		d := ri[i-fi]
		for _, v := range ri[:i-fi] {
			d -= float64(v * v)
		}
		if !(d > 0) || math.IsInf(d, 0) {
			return false
		}
		ri[i-fi] = math.Sqrt(d)
	}
	return true
}

// solve replaces v by the solution, after cholesky.
func (e *envelope) solve(v []float64) {
	for i := range v {
		r, f := e.row(i), e.first[i]
		sum := v[i]
		for k, a := range r[:i-f] {
			sum -= float64(a * v[f+k])
		}
		v[i] = sum / r[i-f]
	}
	for i := len(v) - 1; i >= 0; i-- {
		r, f := e.row(i), e.first[i]
		v[i] /= r[i-f]
		for k, a := range r[:i-f] {
			v[f+k] -= float64(a * v[i])
		}
	}
}
