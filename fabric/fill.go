package fabric

import (
	"fmt"
	"math"

	"ellwand/pieces/measure"
)

// Straightening both cut ends takes this much, mm (common practice).
const (
	leastStraightening = 20.0
	mostStraightening  = 50.0
)

// fill sets what follows from a solved lay.
func (p *LayPlan) fill(found lain) {
	p.Pieces = laidOut(found.templates, found.problem, found.layout)
	p.Length = found.layout.Length
	p.Bound = math.Min(found.bound, p.Length)
	p.Density = efficiency(*p)
	p.Buy = toBuy(p.Cloth, p.Length)
	if spare := p.Buy - p.Length; spare < leastStraightening {
		p.Notes = append(p.Notes, fmt.Sprintf("The length to buy is only %s more than the lay takes. "+
			"Straightening the cut ends takes %.0f to %.0f mm: buy a little more, unless the shop cuts along a thread.",
			measure.Length(spare).Format(measure.Millimetre), leastStraightening, mostStraightening))
	}
}

// toBuy is the length with the straightening of the ends, rounded up to the
// step of the shop.
func toBuy(cloth Cloth, length float64) float64 {
	want := length + cloth.Straighten
	if cloth.Step == 0 {
		return want
	}
	return float64(measure.RoundUp(measure.Length(want), measure.Length(cloth.Step)))
}

// efficiency is the area of what is cut over the usable cloth taken. A
// template and the usable width count in each ply alike; a half on the fold
// gives its other half in the other ply.
func efficiency(p LayPlan) float64 {
	if p.Length <= 0 || p.Width <= 0 {
		return 0
	}
	var area float64
	for _, l := range p.Pieces {
		area += math.Abs(areaOf(l.Outline))
	}
	return area / (p.Length * p.Width)
}

// say prints a length in mm for a message.
func say(mm float64) string { return measure.Length(mm).Format(measure.Centimetre) }
