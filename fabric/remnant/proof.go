package remnant

import (
	"context"
	"fmt"
	"math"
	"slices"
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/geometry"
	"ellwand/fabric/plan"
	"ellwand/fabric/rules"
	"ellwand/nest/bound"
	"ellwand/nest/layout"
)

// misfit proves in a sentence that the pieces do not fit on a sheet, or
// returns "". Every proof is one of nest's; this finds the words and the
// fewest pieces that prove it.
func misfit(ctx context.Context, s setting, sheet layout.Problem) string {
	if bound.Misfit(sheet) == "" {
		return ""
	}
	for i, t := range s.templates {
		if bound.Misfit(some(sheet, onlyOne(len(sheet.Items), i))) != "" {
			return tooLarge(s, t)
		}
	}
	need, have := 0.0, sheet.Width*sheet.Length
	for i, t := range s.templates {
		need += math.Abs(geometry.Area(t.Outline)) * float64(sheet.Items[i].Copies)
	}
	if plies := float64(s.bed.Plies()); need > have*(1+plan.ProofMargin) {
		return fmt.Sprintf("the pieces cover %s with their allowances, and there are only %s of usable cloth",
			sayArea(s.cloth, need*plies, have*plies, 0.5), sayArea(s.cloth, have*plies, need*plies, 0.5))
	}
	counts := fewest(ctx, sheet)
	subset := some(sheet, counts)
	strip := subset
	strip.Length = 0
	names := s.named(counts)
	if least := bound.Length(strip); least > sheet.Length*(1+plan.ProofMargin) {
		return fmt.Sprintf("%s cannot lie side by side closely enough: however they are laid they take %s of length, "+
			"and there are %s",
			names, atLeast(s.cloth, least), s.cloth.Say(sheet.Length))
	}
	return fmt.Sprintf("%s together are too wide for %s of cloth on a length of %s", names, s.cloth.Say(sheet.Width),
		s.cloth.Say(sheet.Length))
}

// tooLarge says why a single piece does not fit.
func tooLarge(s setting, t rules.Template) string {
	along := math.Inf(1)
	for _, turn := range t.Turns {
		along = math.Min(along, plan.LengthAlong(t, turn))
	}
	if along > s.length*(1+plan.ProofMargin) {
		return fmt.Sprintf("%s is %s long in every way its grain allows, and there are only %s of cloth", t.Piece.Name,
			s.cloth.Say(along), s.cloth.Say(s.length))
	}
	return fmt.Sprintf("%s does not fit on %s by %s clear of the flaws in any way its grain allows", t.Piece.Name,
		s.cloth.Say(s.length), s.cloth.Say(s.bed.Width))
}

// sayArea prints an area with the digits that tell it from another.
func sayArea(c cloth.Cloth, area, other, least float64) string {
	unit, name := 1e6, "m2"
	if c.Inches {
		unit, name = 914.4*914.4, "sq yd"
	}
	digits := 2
	for ; digits < 6 && math.Abs(area-other)/unit*math.Pow10(digits) < least; digits++ {
	}
	return fmt.Sprintf("%.*f %s", digits, area/unit, name)
}

// atLeast prints a bound so that it does not look like the length that it
// exceeds.
func atLeast(c cloth.Cloth, mm float64) string {
	unit := 1.0
	if c.Inches {
		unit = 25.4 / 16
	}
	return "at least " + c.Say(math.Ceil(mm/unit)*unit)
}

func onlyOne(n, i int) []int {
	counts := make([]int, n)
	counts[i] = 1
	return counts
}

// some is the problem with so many copies of each item.
func some(p layout.Problem, counts []int) layout.Problem {
	out := p
	out.Items = nil
	for i, item := range p.Items {
		if counts[i] > 0 {
			item.Copies = counts[i]
			out.Items = append(out.Items, item)
		}
	}
	return out
}

// fewest leaves out copies for as long as the rest still proves it.
func fewest(ctx context.Context, p layout.Problem) []int {
	const mostTrials = 60 // [source.OwnChoice]
	counts := make([]int, len(p.Items))
	order := make([]int, len(p.Items))
	for i, item := range p.Items {
		counts[i], order[i] = item.Copies, i
	}
	slices.SortStableFunc(order, func(a, b int) int {
		return int(math.Copysign(1, math.Abs(geometry.Area(p.Items[a].Outline))-math.Abs(geometry.Area(p.Items[b].Outline))))
	})
	trials := 0
	for _, i := range order {
		for counts[i] > 0 && trials < mostTrials && ctx.Err() == nil {
			trials++
			had := counts[i]
			counts[i] = 0 // all of it, or else one after the other
			if bound.Misfit(some(p, counts)) != "" {
				break
			}
			counts[i] = had - 1
			if counts[i] == 0 || bound.Misfit(some(p, counts)) == "" {
				counts[i] = had
				break
			}
		}
	}
	return counts
}

// named lists templates with their counts: "front, back and 2 sleeves" is
// written "front, back, sleeve (2)".
func (s setting) named(counts []int) string {
	var names []string
	total := map[string]int{}
	for i, n := range counts {
		name := s.templates[i].Piece.Name
		if n > 0 && total[name] == 0 {
			names = append(names, name)
		}
		total[name] += n
	}
	for i, name := range names {
		if total[name] > 1 {
			names[i] = fmt.Sprintf("%s (%d)", name, total[name])
		}
	}
	if len(names) == 1 {
		return names[0]
	}
	return strings.Join(names[:len(names)-1], ", ") + " and " + names[len(names)-1]
}
