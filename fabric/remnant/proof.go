package remnant

import (
	"cmp"
	"context"
	"fmt"
	"math"
	"slices"

	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/rules"
	"ellwand/nest/bound"
	"ellwand/nest/layout"
	"ellwand/pieces/geometry"
)

// misfit proves that the pieces do not fit on a sheet, or returns nothing. Every proof
// is one of nest's; this finds the fewest pieces that prove it.
func misfit(ctx context.Context, s setting, sheet layout.Problem) []lay.Reason {
	if bound.Misfit(sheet) == "" {
		return nil
	}
	for i, t := range s.templates {
		if bound.Misfit(some(sheet, onlyOne(len(sheet.Items), i))) != "" {
			return []lay.Reason{tooLarge(s, t)}
		}
	}
	need, have := 0.0, sheet.Width*sheet.Length
	for i, t := range s.templates {
		need += float64(math.Abs(geometry.Area(t.Outline)) * float64(sheet.Items[i].Copies))
	}
	if plies := float64(s.bed.Plies()); need > have*(1+plan.ProofMargin) {
		return []lay.Reason{{Of: lay.AreaShort, Takes: float64(need * plies), Room: float64(have * plies)}}
	}
	counts := fewest(ctx, sheet)
	strip := some(sheet, counts)
	strip.Length = 0
	out := lay.Reason{Of: lay.TooWideTogether, Pieces: s.named(counts), Room: sheet.Length, Width: sheet.Width}
	if least := bound.Length(strip); least > sheet.Length*(1+plan.ProofMargin) {
		out.Of, out.Takes = lay.LengthShort, least
	}
	return []lay.Reason{out}
}

// tooLarge says why a single piece does not fit.
func tooLarge(s setting, t rules.Template) lay.Reason {
	along := math.Inf(1)
	for _, turn := range t.Turns {
		along = math.Min(along, plan.LengthAlong(t, turn))
	}
	out := lay.Reason{Of: lay.NoPlace, Pieces: []string{t.Piece.Name}, Room: s.length, Width: s.bed.Width}
	if along > s.length*(1+plan.ProofMargin) {
		out.Of, out.Takes = lay.TooLong, along
	}
	return out
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
		return cmp.Compare(math.Abs(geometry.Area(p.Items[a].Outline)), math.Abs(geometry.Area(p.Items[b].Outline)))
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

// named lists templates, with their counts where there are several: "sleeve (2)".
func (s setting) named(counts []int) []string {
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
	return names
}
