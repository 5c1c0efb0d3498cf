package marker

import (
	"cmp"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/internal/freecloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/purchase"
)

// leftover is a rectangle of cloth that no piece touches, in the frame of the
// lay.
type leftover struct {
	box   orb.Bound
	plies int
}

const (
	// centimetreCell and inchCell are how finely left-over cloth is looked for,
	// mm: to the centimetre or the half inch below.
	centimetreCell, inchCell = 10.0, 12.7
	// leastSide and mostLeftovers keep to what is worth folding away.
	leastSide     = 100.0
	mostLeftovers = 8
)

// leftovers finds the largest rectangles that are left over, one after the
// other, none over another and none over the edge of a part, in whole cells of
// that size. They are not the best division of the rest, but what one sees.
func leftovers(plan lay.Plan, cell float64) []leftover {
	var out []leftover
	for i, part := range partsOf(plan) {
		free := freecloth.Of(orb.Point{part.X, part.Y}, part.Length, part.Width, cell)
		for _, l := range plan.Pieces {
			if l.Bed == i || len(plan.Beds) < 2 {
				free.Take(orb.Ring(l.Outline))
			}
		}
		for _, zone := range plan.Zones {
			free.Take(zone)
		}
		for range mostLeftovers {
			box, ok := free.Largest(leastSide)
			if !ok {
				break
			}
			out = append(out, leftover{box, part.Plies})
			free.Take(ringOf(box))
		}
	}
	slices.SortStableFunc(out, func(a, b leftover) int { return cmp.Compare(areaOf(b.box), areaOf(a.box)) })
	return out[:min(len(out), mostLeftovers)]
}

// partsOf are the parts of the lay to the end of the cloth.
func partsOf(plan lay.Plan) []lay.Bed {
	parts := slices.Clone(plan.Beds)
	if len(parts) == 0 {
		parts = []lay.Bed{plan.BedOf(lay.Laid{})}
	}
	for i, p := range parts {
		if p.X+p.Length > plan.Length-1 {
			parts[i].Length = purchase.OnTable(plan) - p.X
		}
	}
	return parts
}

func ringOf(b orb.Bound) orb.Ring {
	return orb.Ring{b.Min, {b.Max[0], b.Min[1]}, b.Max, {b.Min[0], b.Max[1]}, b.Min}
}

func areaOf(b orb.Bound) float64 { return (b.Max[0] - b.Min[0]) * (b.Max[1] - b.Min[1]) }
