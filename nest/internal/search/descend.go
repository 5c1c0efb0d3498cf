package search

import (
	"math"
)

const (
	// descendSteps bounds the steps of a descent; most take two or three.
	descendSteps = 10
	// descendTo is the share of the radius at which a descent ends.
	descendTo = 1e-3
	// descendGain is the share of the cost below which a step is not worth it.
	descendGain = 1e-3
)

// descend goes from a spot to the lowest cost nearby by steps that are best
// for the planes of the neighbours, none longer than the radius, which shrinks
// when they mislead (sequential linear programming: Griffith and Stewart 1961,
// doi 10.1287/mnsc.7.4.379). Where the planes allow, it ends in exact contact.
func (s *state) descend(i int, from evaluated, radius float64) evaluated {
	best, home, reach := from, from.at, 2*radius
	near := s.gather(i, home.Shape, home.X, home.Y, reach, s.scratch.moved[:0])
	rangeX, rangeY := s.spans(i, home.Shape)
	smallest := radius * descendTo
	for range descendSteps {
		at := best.at
		s.scratch.linear = linearize(near, at.X, at.Y, radius, s.scratch.linear[:0])
		to := bestStep(s.scratch.linear, windowOf(rangeX, rangeY, at, radius), s.m.Touch/10)
		if to.cost >= best.cost*(1-descendGain) {
			break
		}
		at.X, at.Y = rangeX.snap(at.X+to.x), rangeY.snap(at.Y+to.y)
		if math.Abs(at.X-home.X) > reach || math.Abs(at.Y-home.Y) > reach {
			home = best.at
			near = s.gather(i, home.Shape, home.X, home.Y, reach, near[:0])
		}
		cost := costAmong(near, at.X, at.Y, best.cost)
		if cost < best.cost {
			best = evaluated{at, cost}
			continue
		}
		radius = 0.4 * min(radius, max(math.Abs(to.x), math.Abs(to.y)))
		if radius < smallest {
			break
		}
	}
	s.scratch.moved = near
	return best
}

// windowOf returns the steps within the radius that stay on the strip. A
// coordinate on a lattice stays where it is.
func windowOf(x, y span, at Spot, radius float64) window {
	var w window
	if x.period == 0 {
		w.x0, w.x1 = max(x.low-at.X, -radius), min(x.high-at.X, radius)
	}
	if y.period == 0 {
		w.y0, w.y1 = max(y.low-at.Y, -radius), min(y.high-at.Y, radius)
	}
	return w
}

// evaluated is a spot with its cost.
type evaluated struct {
	at   Spot
	cost float64
}
