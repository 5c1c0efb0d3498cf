package camera

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"
)

// Problem is a fit: parameters, the camera's first, that make residuals small.
type Problem struct {
	// Count of the residuals.
	Count int
	// Residuals fills them in, each in pixels.
	Residuals func(parameters, into []float64)
	// Steps are by how much each parameter is moved to see what it does.
	Steps []float64
	// Prior is how large each parameter is likely to be, one standard deviation about 0;
	// 0 for one of which nothing is known.
	Prior []float64
}

// Fit is what was found.
type Fit struct {
	Parameters []float64
	// Sigma is the standard deviation of the residuals, pixels, without those that are
	// far off.
	Sigma float64
	// Covariance of the parameters.
	Covariance *mat.SymDense
}

// leastSigma keeps what is reported honest where residuals vanish, pixels
// [source.OwnChoice].
const leastSigma = 0.02

// Solve minimises the residuals by the method of Levenberg and Marquardt (Marquardt
// 1963), as Zhang (2000: A flexible new technique for camera calibration) does for
// cameras, with the weights of Huber (1964) against those that are far off. The
// error is ErrUnsolvable.
func (p Problem) Solve(start []float64) (Fit, error) {
	fit := Fit{Parameters: slices.Clone(start)}
	if p.Count == 0 {
		return fit, ErrUnsolvable
	}
	residuals := make([]float64, p.Count)
	p.Residuals(fit.Parameters, residuals)
	fit.Sigma = spread(residuals)
	damping := 1e-3
	for range 60 {
		normal, gradient, cost := p.normal(fit.Parameters, fit.Sigma)
		better, next := p.descend(fit, normal, gradient, cost, &damping)
		if next == nil {
			break
		}
		fit.Parameters = next
		p.Residuals(fit.Parameters, residuals)
		fit.Sigma = spread(residuals)
		if better < 1e-7 {
			break
		}
	}
	normal, _, _ := p.normal(fit.Parameters, fit.Sigma)
	inverse, ok := inverted(normal)
	if !ok || !finite(fit.Parameters) || !finite([]float64{fit.Sigma}) {
		return fit, ErrUnsolvable
	}
	fit.Covariance = inverse
	return fit, nil
}

// descend takes a step that lowers the cost, and says by which share.
func (p Problem) descend(fit Fit, normal *mat.SymDense, gradient []float64, cost float64, damping *float64) (float64,
	[]float64) {
	for range 12 {
		step, ok := solved(normal, gradient, *damping)
		if ok {
			next := slices.Clone(fit.Parameters)
			for i := range next {
				next[i] += step[i]
			}
			if now := p.cost(next, fit.Sigma); now < cost {
				*damping = math.Max(*damping/10, 1e-12)
				return (cost - now) / cost, next
			}
		}
		*damping *= 10
	}
	return 0, nil
}

// huber is beyond how many standard deviations a residual counts less (Huber 1964) [source.Geometry].
const huber = 1.345

func weight(residual float64) float64 {
	if a := math.Abs(residual); a > huber {
		return huber / a
	}
	return 1
}

// cost in squares of the standard deviation.
func (p Problem) cost(parameters []float64, sigma float64) float64 {
	residuals := make([]float64, p.Count)
	p.Residuals(parameters, residuals)
	sum := 0.0
	for _, r := range residuals {
		r /= sigma
		if a := math.Abs(r); a > huber {
			sum += huber * (2*a - huber)
		} else {
			sum += r * r
		}
	}
	for i, prior := range p.Prior {
		if prior > 0 {
			sum += parameters[i] * parameters[i] / prior / prior
		}
	}
	if math.IsNaN(sum) {
		return math.Inf(1)
	}
	return sum
}

// normal equations at the parameters.
func (p Problem) normal(parameters []float64, sigma float64) (*mat.SymDense, []float64, float64) {
	n := len(parameters)
	base, moved := make([]float64, p.Count), make([]float64, p.Count)
	p.Residuals(parameters, base)
	columns := make([][]float64, n)
	at := slices.Clone(parameters)
	for k := range n {
		at[k] = parameters[k] + p.Steps[k]
		p.Residuals(at, moved)
		at[k] = parameters[k]
		columns[k] = make([]float64, p.Count)
		for i := range moved {
			columns[k][i] = (moved[i] - base[i]) / p.Steps[k] / sigma
		}
	}
	weights := make([]float64, p.Count)
	for i, r := range base {
		weights[i] = weight(r / sigma)
	}
	normal, gradient := mat.NewSymDense(n, nil), make([]float64, n)
	for k := range n {
		for l := k; l < n; l++ {
			sum := 0.0
			for i, w := range weights {
				sum += w * columns[k][i] * columns[l][i]
			}
			if prior := p.Prior[k]; k == l && prior > 0 {
				sum += 1 / prior / prior
				gradient[k] -= parameters[k] / prior / prior
			}
			normal.SetSym(k, l, sum)
		}
		for i, w := range weights {
			gradient[k] -= w * columns[k][i] * base[i] / sigma
		}
	}
	return normal, gradient, p.cost(parameters, sigma)
}

// solved is the step of the damped equations, each parameter in its own measure.
func solved(normal *mat.SymDense, gradient []float64, damping float64) ([]float64, bool) {
	n := len(gradient)
	scaled, right, size := mat.NewSymDense(n, nil), mat.NewVecDense(n, nil), make([]float64, n)
	for k := range n {
		size[k] = math.Sqrt(normal.At(k, k)) + 1e-300
	}
	for k := range n {
		for l := k; l < n; l++ {
			v := normal.At(k, l) / size[k] / size[l]
			if k == l {
				v += damping
			}
			scaled.SetSym(k, l, v)
		}
		right.SetVec(k, gradient[k]/size[k])
	}
	var cholesky mat.Cholesky
	if !cholesky.Factorize(scaled) {
		return nil, false
	}
	var step mat.VecDense
	if cholesky.SolveVecTo(&step, right) != nil {
		return nil, false
	}
	out := make([]float64, n)
	for k := range n {
		out[k] = step.AtVec(k) / size[k]
	}
	return out, finite(out)
}

func inverted(normal *mat.SymDense) (*mat.SymDense, bool) {
	n := normal.SymmetricDim()
	size, scaled := make([]float64, n), mat.NewSymDense(n, nil)
	for k := range n {
		size[k] = math.Sqrt(normal.At(k, k)) + 1e-300
	}
	for k := range n {
		for l := k; l < n; l++ {
			scaled.SetSym(k, l, normal.At(k, l)/size[k]/size[l])
		}
	}
	var cholesky mat.Cholesky
	if !cholesky.Factorize(scaled) {
		return nil, false
	}
	out := mat.NewSymDense(n, nil)
	if cholesky.InverseTo(out) != nil {
		return nil, false
	}
	for k := range n {
		for l := k; l < n; l++ {
			out.SetSym(k, l, out.At(k, l)/size[k]/size[l])
		}
	}
	return out, true
}

// spread is a standard deviation that a few values far off do not change: 1.4826 times
// the median of the sizes, as of a normal distribution (Hampel 1974).
func spread(values []float64) float64 {
	sizes := make([]float64, len(values))
	for i, v := range values {
		sizes[i] = math.Abs(v)
	}
	slices.Sort(sizes)
	return math.Max(1.4826*sizes[len(sizes)/2], leastSigma)
}

func finite(values []float64) bool {
	for _, v := range values {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return false
		}
	}
	return true
}
