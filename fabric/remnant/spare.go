package remnant

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/internal/freecloth"
	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/pieces/geometry"
)

// spareStep, mm, is how finely the free cloth is looked at [source.OwnChoice].
const spareStep = 2.0

// spareOf looks for what is left of a usable length.
func spareOf(p lay.Plan, usable float64) Spare {
	shift := 0.0
	if p.Lay == lay.FoldedAcross { // the fold is in the middle of all that there is
		shift = (usable - p.Taken) / 2
	}
	var outlines []orb.Ring
	first, last := usable, 0.0
	for _, l := range p.Pieces {
		for _, ply := range bed.PliesAt(p.Beds[l.Bed], l.Outline.Bound().Center()[1]) {
			var ring orb.Ring
			for _, q := range l.Outline {
				q = ply.ToCloth.Apply(q)
				ring = append(ring, orb.Point{q[0] + shift, q[1]})
			}
			outlines = append(outlines, ring)
			box := ring.Bound()
			first, last = math.Min(first, box.Min[0]), math.Max(last, box.Max[0])
		}
	}
	low, high := p.Cloth.Selvedge, bed.UsableWidth(lay.Open, p.Cloth)+p.Cloth.Selvedge
	for _, flaw := range p.Cloth.Flaws {
		parts, err := motion.Clipped(geometry.Closed(flaw.Outline), 0, low, usable, high)
		if err != nil {
			return Spare{CleanEnd: math.Max(0, math.Max(usable-last, first))}
		}
		outlines = append(outlines, parts...)
	}
	var out Spare
	free := freecloth.Of(orb.Point{0, low}, usable, high-low, spareStep)
	for _, ring := range outlines {
		free.Take(ring)
	}
	if box, found := free.Largest(0); found {
		out = Spare{X: box.Min[0], Y: box.Min[1], Length: box.Max[0] - box.Min[0], Width: box.Max[1] - box.Min[1]}
	}
	out.CleanEnd = math.Max(0, math.Max(usable-last, first))
	return out
}

// Overhangs lists the pieces of a lay that reach beyond the end of a length of
// cloth, mm, worst first.
func Overhangs(plan lay.Plan, usable float64) []Overhang {
	const least = 0.05 // mm [source.OwnChoice]
	length := plan.Length - (plan.Taken-usable)/bed.AcrossPlies(plan.Lay)
	var out []Overhang
	for _, l := range plan.Pieces {
		if by := l.Outline.Bound().Max[0] - length; by > least {
			out = append(out, Overhang{Name: l.Name, Garment: l.Garment, By: by})
		}
	}
	slices.SortStableFunc(out, func(a, b Overhang) int { return cmp.Compare(b.By, a.By) })
	return out
}
