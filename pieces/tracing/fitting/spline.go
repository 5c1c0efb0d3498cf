package fitting

import (
	"math"
	"slices"

	"github.com/paulmach/orb"
	"gonum.org/v1/gonum/mat"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// spline is a smooth chain of cubics with places and directions at its knots, which are
// evenly spaced along the way from 0 to 1.
type spline struct {
	places, directions []orb.Point
}

// basis of the cubic between two knots (Hermite), for the places and the directions at
// its ends.
func basis(t float64) [4]float64 {
	s := 1 - t
	return [4]float64{(1 + 2*t) * s * s, t * s * s, t * t * (3 - 2*t), -t * t * s}
}

func (s spline) at(along float64) orb.Point {
	pieces := len(s.places) - 1
	k := min(max(int(along*float64(pieces)), 0), pieces-1)
	b := basis(along*float64(pieces) - float64(k))
	var out orb.Point
	for axis := range 2 {
		out[axis] = b[0]*s.places[k][axis] + b[1]*s.directions[k][axis] + b[2]*s.places[k+1][axis] +
			b[3]*s.directions[k+1][axis]
	}
	return out
}

// length of the spline, nearly.
func (s spline) length() float64 {
	const each = 8 // chords a cubic [source.OwnChoice]
	n := each * (len(s.places) - 1)
	sum := 0.0
	for i := range n {
		sum += geometry.Distance(s.at(float64(i)/float64(n)), s.at(float64(i+1)/float64(n)))
	}
	return sum
}

// path of the spline, a Bezier curve between two knots.
func (s spline) path() pieces.Path {
	var out pieces.Path
	for k := range len(s.places) - 1 {
		a, b := s.places[k], s.places[k+1]
		out = append(out, pieces.Bezier{
			P0: a, P1: geometry.Add(a, geometry.Times(s.directions[k], 1./3)),
			P2: geometry.Sub(b, geometry.Times(s.directions[k+1], 1./3)), P3: b,
		})
	}
	return out
}

// smoothest spline that lies within the tolerance (mm) of the points as far as noise
// lets them be seen: the one with fewest knots, by least squares (de Boor 1978: A
// practical guide to splines).
func (s stretch) smoothest(e ends, tolerance float64) spline {
	var best spline
	least := math.Inf(1)
	each := pointsAKnot
	if e.how == free {
		each = pointsFree
	}
	most := max(1, min(mostKnots, len(s.points)/each))
	for count := 1; count <= most; count++ {
		if e.how == closed && count < leastClosed {
			continue
		}
		fit, ok := s.spline(e, count)
		if !ok || fit.length() > mostLonger*s.length {
			continue
		}
		off := s.off(fit.at)
		if off < least*enough {
			best, least = fit, off
		}
		if off <= tolerance {
			break
		}
	}
	return best
}

// How a spline is fitted [source.OwnChoice].
const (
	mostKnots   = 24  // of one edge
	pointsAKnot = 12  // at least
	pointsFree  = 40  // where it is drawn on beyond its ends
	leastClosed = 4   // cubics that close smoothly
	mostLonger  = 1.2 // times the way along the points: what is longer swings where none are
	enough      = 0.9 // of the error before: what one more knot must bring
	rounds      = 4   // of weights against points that are far off
)

// spline of so many cubics by least squares.
func (s stretch) spline(e ends, count int) (spline, bool) {
	if len(s.points) == 0 {
		return spline{}, false
	}
	weights := s.weights()
	var fit spline
	for range rounds {
		var ok bool
		if fit, ok = s.weighted(e, count, weights); !ok {
			return fit, false
		}
		reweigh(weights, s, fit)
	}
	return fit, true
}

// reweigh counts points that are far off less (Tukey's biweight, Beaton and Tukey 1974).
func reweigh(weights []float64, s stretch, fit spline) {
	off := make([]float64, len(s.points))
	for i, p := range s.points {
		off[i] = geometry.Distance(p, fit.at(s.along[i]))
	}
	var sorted []float64
	for _, i := range s.firm() {
		sorted = append(sorted, off[i])
	}
	slices.Sort(sorted)
	cut := math.Max(4.685*1.4826*sorted[len(sorted)/2], 1e-6)
	for i, d := range off {
		weights[i] = 1e-3
		if u := d / cut; u < 1 {
			weights[i] += (1 - u*u) * (1 - u*u)
		}
		weights[i] *= s.trust[i]
	}
}

func (s stretch) weighted(e ends, count int, weights []float64) (spline, bool) {
	place, direction, unknowns := e.how.numbering(count)
	normal, right := mat.NewSymDense(unknowns, nil), mat.NewDense(unknowns, 2, nil)
	for i, p := range s.points {
		t := s.along[i] * float64(count)
		k := min(max(int(t), 0), count-1)
		b := basis(t - float64(k))
		columns := [4]int{place(k), direction(k), place(k + 1), direction(k + 1)}
		rest := p
		for j, column := range columns {
			if column < 0 { // the ends are fixed
				end := e.from
				if column == fixedEnd {
					end = e.to
				}
				rest = geometry.Sub(rest, geometry.Times(end, b[j]))
			}
		}
		for j, row := range columns {
			if row < 0 {
				continue
			}
			for axis := range 2 {
				right.Set(row, axis, right.At(row, axis)+weights[i]*b[j]*rest[axis])
			}
			for m, column := range columns {
				if column >= row {
					add := weights[i] * b[j] * b[m]
					normal.SetSym(row, column, normal.At(row, column)+add)
				}
			}
		}
	}
	for k := range unknowns { // where no point lies, nothing is left open
		normal.SetSym(k, k, normal.At(k, k)*(1+1e-9)+1e-9)
	}
	var cholesky mat.Cholesky
	var solution mat.Dense
	if !cholesky.Factorize(normal) || cholesky.SolveTo(&solution, right) != nil {
		return spline{}, false
	}
	var out spline
	value := func(column int) orb.Point {
		switch column {
		case fixedStart:
			return e.from
		case fixedEnd:
			return e.to
		}
		return orb.Point{solution.At(column, 0), solution.At(column, 1)}
	}
	for k := range count + 1 {
		out.places = append(out.places, value(place(k)))
		out.directions = append(out.directions, value(direction(k)))
	}
	return out, true
}

// ends of a spline.
type ends struct {
	how      fixing
	from, to orb.Point // where fixed
}

// fixing is how a spline begins and ends.
type fixing int

const (
	free   fixing = iota // wherever the points lead
	fixed                // at given places
	closed               // where it began, smoothly
)

// Places that are no unknowns.
const (
	fixedStart = -1 // [source.Geometry]
	fixedEnd   = -2 // [source.Geometry]
)

// numbering gives the unknowns of a spline of so many cubics their numbers: the places
// at its knots, then the directions there.
func (f fixing) numbering(count int) (place, direction func(int) int, unknowns int) {
	switch f {
	case closed:
		return func(k int) int { return k % count }, func(k int) int { return count + k%count }, 2 * count
	case free:
		return func(k int) int { return k }, func(k int) int { return count + 1 + k }, 2 * (count + 1)
	}
	place = func(k int) int {
		switch k {
		case 0:
			return fixedStart
		case count:
			return fixedEnd
		}
		return k - 1
	}
	return place, func(k int) int { return count - 1 + k }, 2 * count
}

// end of a spline along a stretch of that length, mm, as a parabola drawn on beyond it:
// its first end, or its last. The way is counted from that end.
func (s spline) end(last bool, length float64) parabola {
	n := len(s.places) - 1
	k, t := 0, 0.0
	if last {
		k, t = n-1, 1
	}
	a, b, u, v := s.places[k], s.places[k+1], s.directions[k], s.directions[k+1]
	d := geometry.Sub(b, a)
	// Second derivatives of the cubic (Hermite) at its ends.
	bend := geometry.Sub(geometry.Times(d, 6), geometry.Add(geometry.Times(u, 4), geometry.Times(v, 2)))
	place, direction := a, u
	if t == 1 {
		bend = geometry.Sub(geometry.Add(geometry.Times(u, 2), geometry.Times(v, 4)), geometry.Times(d, 6))
		place, direction = b, v
	}
	speed := float64(n) / length
	return parabola{place, geometry.Times(direction, speed), geometry.Times(bend, speed*speed/2)}
}
