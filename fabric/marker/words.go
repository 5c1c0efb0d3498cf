package marker

import (
	"fmt"
	"strings"

	"ellwand/fabric"
	"ellwand/pieces/measure"
)

// short prints a length on the cloth: 41.5 cm, 16 3/8 in.
func (o Options) short(mm float64) string {
	if o.Inches {
		return measure.Length(mm).Format(measure.Inch)
	}
	return measure.Length(mm).Format(measure.Centimetre)
}

// bought prints a length to buy, never less than it is: 1.35 m, 2 1/8 yd.
func (o Options) bought(mm float64) string {
	if o.Inches {
		eighth := measure.Length(914.4 / 8)
		return measure.RoundUp(measure.Length(mm), eighth).Format(measure.Yard)
	}
	return measure.RoundUp(measure.Length(mm), 10).Format(measure.Metre)
}

// unit is the unit of the table.
func (o Options) unit() string {
	if o.Inches {
		return "in"
	}
	return "cm"
}

// bare is short without its unit, for the table.
func (o Options) bare(mm float64) string {
	if mm > -0.5 && mm < 0 {
		mm = 0
	}
	return strings.TrimSuffix(o.short(mm), " "+o.unit())
}

// nearEdge names the edge at y = 0, from which the table measures.
func nearEdge(plan fabric.LayPlan) string {
	if plan.Lay == fabric.FoldedAlong {
		return "fold"
	}
	return "selvedge"
}

// fromEdge is the distance of y from the edge that a tape can reach: the fold,
// or the outer edge of the selvedge.
func fromEdge(plan fabric.LayPlan, y float64) float64 {
	if plan.Lay == fabric.FoldedAlong {
		return y
	}
	return y + plan.Cloth.Selvedge
}

func pliesInWords(plan fabric.LayPlan) string {
	if plan.Lay == fabric.FoldedAlong {
		return "2, right sides together"
	}
	return "1, right side up"
}

// spreading says how to spread or fold the cloth.
func spreading(plan fabric.LayPlan) []string {
	first := "Straighten the cut end: cut along one weft thread, square to the selvedge."
	if plan.Lay == fabric.FoldedAlong {
		return []string{first,
			"Fold the cloth in half along its length, right sides together, until the two selvedges lie exactly on each other.",
			"Turn it so that the fold runs along the side of the table nearest to you and the cut end is on your left.",
			"Smooth it until the fold hangs without a ripple. Pin the selvedges together about every 30 cm (12 in).",
			"All distances across are measured from the fold."}
	}
	return []string{first,
		"Spread the cloth in one layer, right side up, with one selvedge along the side of the table nearest to you and the cut end on your left.",
		"Smooth it without stretching: the weft must lie square to the selvedge.",
		"All distances across are measured from the outer edge of the selvedge nearest to you."}
}

// laying says how to place the pieces with a tape measure.
func laying(plan fabric.LayPlan) []string {
	edge := nearEdge(plan)
	out := []string{
		"Lay the pieces in the order of their numbers.",
		fmt.Sprintf("Pin the near end of the grainline at its distances from the cut end and from the %s; then swing the piece until the far end is at its own distance from the %s, and pin it. The arrow must point as the table says.", edge, edge),
		"Hatched pieces: the template lies face down.",
		"The solid line is the cutting line, the dashed line the seam line."}
	switch plan.Cloth.Nap {
	case fabric.OneWay:
		out = append(out, "This cloth has one way: stroke it or look along it, and let every arrow along the warp point to the same end.")
	case fabric.OneWayPerGarment:
		out = append(out, "This cloth has a nap: all pieces of one garment point the same way. Keep the garments apart when you bundle them.")
	}
	if plan.Lay == fabric.FoldedAlong {
		out = append(out, "Fold edges lie exactly on the fold and are not cut. Every other piece gives a right and a left at once.")
	}
	return out
}

// cautions before and while cutting.
func cautions(plan fabric.LayPlan, options Options) []string {
	between := "between the selvedges"
	if plan.Lay == fabric.FoldedAlong {
		between = "from the fold to the selvedges"
	}
	out := []string{
		"Measure twice, cut once. Lay every piece before the first cut.",
		fmt.Sprintf("Check the true width of the cloth in the shop: this plan needs %s %s.", options.short(plan.Width), between),
		"Wash or steam the cloth before cutting, as the finished garment will be washed. If it shrinks, buy more.",
		"Look for flaws on the right side, and mark them before laying.",
		"Blades: cut away from yourself, keep fingers behind the ruler, close the rotary cutter whenever you put it down, and keep blades from children.",
		"Irons: plate and steam burn. Stand the iron on its heel, keep its cord off the floor, and unplug it when you leave.",
	}
	return append(out, plan.Notes...)
}
