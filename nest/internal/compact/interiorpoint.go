package compact

import "math"

const (
	maxSteps = 60
	// enough is the relative gap at which the program counts as solved. The
	// point returned keeps every row strictly, so the rest costs length only.
	enough = 1e-9
)

// solve is a primal-dual interior point method with Mehrotra's predictor and
// corrector (1992, doi 10.1137/0802028). start need not be feasible.
func (l *linear) solve(start []float64) ([]float64, bool) {
	p := newPoint(l, start)
	for step := 0; step < maxSteps; step++ {
		p.residuals()
		if p.done() {
			return p.z, true
		}
		if !p.factorise() {
			return nil, false
		}
		p.step()
	}
	p.residuals()
	return p.z, p.nearlyDone()
}

// point is an iterate: variables z, slacks s of the rows and multipliers u.
type point struct {
	l       *linear
	z, s, u []float64
	// residuals: of the rows (a.z - s - b), of the multipliers (cost - A'u)
	rows, cost  []float64
	mu          float64
	matrix      envelope
	dz, ds, du  []float64
	ds0, du0    []float64
	right, work []float64
	scale       float64
}

func newPoint(l *linear, start []float64) *point {
	m, n := len(l.rows), l.variables
	vec := func(k int) []float64 { return make([]float64, k) }
	p := &point{
		l: l, z: append([]float64(nil), start...), s: vec(m), u: vec(m), rows: vec(m), cost: vec(n),
		dz: vec(n), ds: vec(m), du: vec(m), ds0: vec(m), du0: vec(m), right: vec(n), work: vec(m),
	}
	p.matrix = newEnvelope(l)
	p.scale = max(1e-300, math.Abs(start[l.least]))
	// A fair distance from the walls: of the size of the ranges.
	floor := 1e-3 * p.scale
	for i, r := range l.rows {
		p.s[i] = max(l.dot(r, p.z)-r.b, floor)
		p.u[i] = 1 / float64(m)
	}
	return p
}

// residuals of the optimality conditions at the point.
func (p *point) residuals() {
	for k := range p.cost {
		p.cost[k] = 0
	}
	p.cost[p.l.least] = 1
	p.mu = 0
	for i, r := range p.l.rows {
		p.rows[i] = p.l.dot(r, p.z) - p.s[i] - r.b
		p.mu += float64(p.s[i] * p.u[i])
		for _, t := range p.l.of(r) {
			p.cost[t.variable] -= float64(t.factor * p.u[i])
		}
	}
	p.mu /= float64(len(p.l.rows))
}

func (p *point) gap() float64 { return p.mu * float64(len(p.l.rows)) / p.scale }

func (p *point) worstRow() float64 {
	worst := 0.0
	for _, r := range p.rows {
		worst = max(worst, math.Abs(r))
	}
	return worst / p.scale
}

func (p *point) done() bool       { return p.gap() < enough && p.worstRow() < 1e-11 }
func (p *point) nearlyDone() bool { return p.gap() < 1e-4 && p.worstRow() < 1e-10 }

func (p *point) factorise() bool {
	p.matrix.clear()
	for i, r := range p.l.rows {
		d := p.u[i] / p.s[i]
		terms := p.l.of(r)
		for a, t := range terms {
			for _, o := range terms[:a+1] {
				p.matrix.add(t.variable, o.variable, float64(d*t.factor*o.factor))
			}
		}
	}
	return p.matrix.cholesky()
}

// step makes a predictor and a corrector step.
func (p *point) step() {
	p.direction(func(i int) float64 { return p.s[i] * p.u[i] })
	primal, dual := stretch(p.s, p.ds), stretch(p.u, p.du)
	var ahead float64
	for i := range p.s {
		ahead += float64((p.s[i] + float64(primal*p.ds[i])) * (p.u[i] + float64(dual*p.du[i])))
	}
	ahead /= float64(len(p.s))
	centring := ahead / p.mu * (ahead / p.mu) * (ahead / p.mu)
	copy(p.ds0, p.ds)
	copy(p.du0, p.du)
	target := float64(centring * p.mu)
	p.direction(func(i int) float64 { return float64(p.s[i]*p.u[i]) + float64(p.ds0[i]*p.du0[i]) - target })
	primal, dual = 0.995*stretch(p.s, p.ds), 0.995*stretch(p.u, p.du)
	primal, dual = min(1, primal), min(1, dual)
	for k := range p.z {
		p.z[k] += float64(primal * p.dz[k])
	}
	for i := range p.s {
		p.s[i] += float64(primal * p.ds[i])
		p.u[i] += float64(dual * p.du[i])
	}
}

// direction solves for the step that cancels the residuals and the products
// s u - wanted.
func (p *point) direction(product func(int) float64) {
	copy(p.right, p.cost)
	for k := range p.right {
		p.right[k] = -p.right[k]
	}
	for i, r := range p.l.rows {
		p.work[i] = product(i)
		v := -(p.work[i] + float64(p.u[i]*p.rows[i])) / p.s[i]
		for _, t := range p.l.of(r) {
			p.right[t.variable] += float64(t.factor * v)
		}
	}
	copy(p.dz, p.right)
	p.matrix.solve(p.dz)
	for i, r := range p.l.rows {
		p.ds[i] = p.l.dot(r, p.dz) + p.rows[i]
		p.du[i] = -(p.work[i] + float64(p.u[i]*p.ds[i])) / p.s[i]
	}
}

// stretch is the longest step, at most 1/0.995, that keeps v positive.
func stretch(v, d []float64) float64 {
	most := 1 / 0.995
	for i := range v {
		if d[i] < 0 {
			most = min(most, -v[i]/d[i])
		}
	}
	return most
}
