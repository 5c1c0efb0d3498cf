package marker

import (
	"fmt"
	"slices"
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/purchase"
	"ellwand/fabric/words"
	"ellwand/pieces/measure"
	"ellwand/pieces/safety"
)

// system in which lengths are said.
func (o Options) system() measure.System { return measure.SystemOf(o.Inches) }

// Short prints a length on the cloth: 41.5 cm, 16 3/8 in.
func (o Options) Short(mm float64) string { return o.system().Size(mm) }

// Long prints a length of cloth in a heading: from 2 m in metres, in which
// cloth is thought of, not in the cm of the ruler.
func (o Options) Long(mm float64) string {
	if mm >= 2000 {
		return o.system().Cloth(mm)
	}
	return o.Short(mm)
}

// atLeast prints a length of cloth that no lay is shorter than: as Long, but never more
// than it is.
func (o Options) atLeast(mm float64) string {
	if mm >= 2000 {
		return o.system().ClothAtLeast(mm)
	}
	return o.Short(float64(measure.RoundDown(measure.Length(mm), measure.Length(o.system().Step()))))
}

// bought prints a length to buy, never less than it is: 1.35 m, 2 1/8 yd.
func (o Options) bought(mm float64) string { return o.system().Purchase(mm) }

// unit is the unit of the table.
func (o Options) unit() string { return o.system().Unit().String() }

// bare is Short without its unit, for the table.
func (o Options) bare(mm float64) string {
	if mm > -0.5 && mm < 0 {
		mm = 0
	}
	return strings.TrimSuffix(o.Short(mm), " "+o.unit())
}

// nearEdge names the edge from which the table measures across.
func nearEdge(plan lay.Plan) string {
	if plan.Lay == lay.InStretches {
		return "fold or selvedge"
	}
	return edgeOf(plan, plan.BedOf(lay.Laid{}))
}

// edgeOf names the edge nearest to the cutter where a part lies.
func edgeOf(plan lay.Plan, part lay.Bed) string {
	if isFromFold(plan, part) {
		return "fold"
	}
	return "selvedge"
}

// isFromFold reports whether distances across are measured from a fold, at
// y = 0, and not from the outer edge of a selvedge.
func isFromFold(plan lay.Plan, part lay.Bed) bool {
	switch plan.Lay {
	case lay.FoldedAlong, lay.SelvedgeIn, lay.BothSelvedgesIn:
		return true
	case lay.InStretches:
		return part.FoldLow
	}
	return false
}

// fromEdge is the distance of y from the edge that a tape can reach: the fold,
// or the outer edge of the selvedge.
func fromEdge(plan lay.Plan, part lay.Bed, y float64) float64 {
	if isFromFold(plan, part) {
		return y
	}
	return y + plan.Cloth.Selvedge
}

// leftEnd names the end from which distances along are measured.
func leftEnd(plan lay.Plan) string {
	if plan.Lay == lay.FoldedAcross {
		return "fold"
	}
	return "cut end"
}

func pliesInWords(plan lay.Plan) string {
	switch {
	case plan.Plies == 1:
		return "1, right side up"
	case plan.Lay == lay.SelvedgeIn || plan.Lay == lay.InStretches:
		return "2 and 1"
	}
	return "2, right sides together"
}

// laying says how to place the pieces with a tape measure.
func laying(plan lay.Plan, options Options) []string {
	edge := nearEdge(plan)
	out := []string{
		"Lay the pieces in the order of their numbers.",
		fmt.Sprintf("Pin the near end of the grainline at its distances from the %s and from the %s; then swing the "+
			"piece until the far end is at its own distance from the %s, and pin it. The arrow must point as the table says.",
			leftEnd(plan), edge, edge),
		"A piece whose arrow points to an edge or away from it lies square to it: swing it until both ends of its " +
			"grainline are as far from the " + leftEnd(plan) + ".",
		"Hatched pieces: the template lies face down.",
		"The solid line is the cutting line, the dashed line the seam line."}
	out = append(out, matching(plan, options)...)
	switch plan.Cloth.Nap {
	case cloth.OneWay:
		out = append(out, "This cloth has one way: stroke it or look along it, and let every arrow along the warp point "+
			"to the same end.")
	case cloth.OneWayPerGarment:
		out = append(out, "This cloth has a nap: all pieces of one garment point the same way. Keep the garments apart "+
			"when you bundle them.")
	}
	switch plan.Lay {
	case lay.FoldedAlong, lay.BothSelvedgesIn:
		all := "Fold edges lie exactly on the fold and are not cut. Every other piece gives a right and a left at once"
		if slices.ContainsFunc(plan.Pieces, func(l lay.Laid) bool { return l.FromLower }) {
			all += ", but for what the table says is cut from the lower layer"
		}
		out = append(out, all+".")
	case lay.FoldedAcross:
		out = append(out, "Every piece gives a right and a left at once. Cut through both layers, along the fold as well "+
			"where a piece reaches it.")
	case lay.CutAcross:
		out = append(out, "Every piece gives a right and a left at once. Cut through both layers.")
	case lay.SelvedgeIn, lay.InStretches:
		out = append(out, "Fold edges lie exactly on the fold and are not cut. Where the cloth is double every other "+
			"piece gives a right and a left at once; where it is single, one.")
	}
	if plan.Lay != lay.FoldedAcross &&
		slices.ContainsFunc(plan.Pieces, func(l lay.Laid) bool { return reachesFold(plan, l) }) {
		out = append(out, "Where a piece reaches the fold without lying on it, slit the fold open there.")
	}
	return out
}

// reachesFold reports whether a piece that is not cut on the fold touches one.
func reachesFold(plan lay.Plan, l lay.Laid) bool {
	part, box := plan.BedOf(l), l.Outline.Bound()
	const touching = 1.0 // mm
	return !l.OnFold && (part.FoldLow && box.Min[1] < part.Y+touching ||
		part.FoldHigh && box.Max[1] > part.Y+part.Width-touching)
}

// matching says how to lay on a cloth with a repeat.
func matching(plan lay.Plan, options Options) []string {
	if !hasRepeat(plan) {
		return nil
	}
	repeat := plan.Cloth.Repeat
	var every []string
	if repeat.Along > 0 {
		every = append(every, options.Short(repeat.Along)+" along the cloth")
	}
	if repeat.Across > 0 {
		every = append(every, options.Short(repeat.Across)+" across")
	}
	out := []string{fmt.Sprintf("Dotted lines lie on the same line of the pattern of the cloth, every %s. Before you "+
		"pin a piece, see that the pattern meets it where the dotted lines do on the plan.", strings.Join(every, " and "))}
	if repeat.Across > 0 && plan.Plies == 2 && plan.Lay != lay.FoldedAcross {
		out = append(out, "Where the cloth is double, the dotted lines along it are those of the upper layer, which you see.")
	}
	if repeat.Along > 0 && plan.Lay != lay.InStretches {
		out = append(out, fmt.Sprintf("The %s lies on such a line, and all distances along begin there.", leftEnd(plan)))
	}
	return out
}

// cautions before and while cutting.
func cautions(plan lay.Plan, options Options) []string {
	between := map[lay.Kind]string{
		lay.FoldedAlong: "from the fold to the selvedges", lay.SelvedgeIn: "from the fold to the selvedge",
		lay.BothSelvedgesIn: "from fold to fold",
	}[plan.Lay]
	if between == "" {
		between = "between the selvedges"
	}
	out := append(buying(plan, options),
		"Measure twice, cut once. Lay every piece before the first cut.",
		fmt.Sprintf("Check the true width of the cloth in the shop: this plan needs %s %s.", options.Short(plan.Width),
			between),
		washing(plan.Cloth.Shrinkage),
		"Look for flaws on the right side, and mark them before laying.",
	)
	if rough := words.Rough(plan.Asked, options.system().Accuracy); rough != "" {
		out = append(out, rough+" Chalk round the paper pieces themselves.")
	}
	out = append(out, safety.Cutting(options.Youngest)...)
	return append(out, words.Notes(plan)...)
}

// washing says when the cloth is washed, before cutting or after.
func washing(s cloth.Shrinkage) string {
	switch {
	case s.CutFirst:
		return fmt.Sprintf("Do not wash the cloth before cutting. The pieces are drawn larger here by what it will lose, "+
			"%.3g %% along and %.3g %% across: chalk round the marker printed at full size, not round pieces printed by "+
			"themselves.", 100*s.Warp, 100*s.Weft)
	case s.Warp > 0 || s.Weft > 0:
		return fmt.Sprintf("Wet and dry the cloth before cutting: the plan reckons with %.3g %% lost along and %.3g %% "+
			"across, and is laid on what is left.", 100*s.Warp, 100*s.Weft)
	}
	return "Wash or steam the cloth before cutting, as the finished garment will be washed. If it shrinks, buy more."
}

// leastPart of a length to buy is worth a word, mm [source.OwnChoice].
const leastPart = 0.5

// buying says what the length to buy is the sum of; nothing of cloth that is there.
func buying(plan lay.Plan, options Options) []string {
	if options.Remnant || plan.There > 0 {
		return nil
	}
	parts := purchase.AdditionsTo(plan)
	said := []string{options.Long(plan.Taken) + " for the lay"}
	for _, part := range []struct {
		length float64
		what   string
	}{
		{parts.HandLaying, "for laying by hand"}, {parts.Straighten, "for straightening the ends"},
		{parts.Shrinkage, "that it shrinks"}, {parts.Safety, "to be safe"}, {parts.Rounding, "up to what the shop cuts"},
	} {
		if part.length >= leastPart {
			said = append(said, options.Short(part.length)+" "+part.what)
		}
	}
	return []string{"Buy " + options.bought(plan.Buy) + ": " + strings.Join(said, ", ") + "."}
}
