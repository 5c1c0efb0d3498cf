package plan

import (
	"fmt"
	"slices"
	"strings"

	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/marks"
)

// Matching is what matching the repeat costs in cloth, mm.
type Matching struct {
	// Plain is the length that the same lay takes on plain cloth, Matched that
	// with every match kept.
	Plain, Matched float64
	// Repeats is the cost in repeats along the warp; 0 when there are none.
	Repeats float64
	// RuleOfThumb is the length by hand reckoning: the plain amount and one
	// whole repeat more [source.CommonPractice]; a repeat along the warp where there
	// is one, otherwise one across.
	RuleOfThumb float64
}

// Extra is how much more cloth the matched lay takes, mm.
func (m Matching) Extra() float64 { return m.Matched - m.Plain }

// costOfMatching lays the pieces on plain cloth in the same lay. The matched
// layout is one of plain cloth too, and is where that search starts, so that
// matching never comes out as a saving. It returns as well the lay on plain cloth.
func (t *Table) costOfMatching(matched lay.Plan) (*Matching, []lay.Plan, error) {
	plain := *t
	plain.Cloth = t.Cloth.Plain()
	plain.Options.Known, plain.Options.Kept = []lay.Plan{matched}, t.Options.KeptPlain
	plain.solved, plain.shortest = nil, nil
	plan, err := plain.planLay(matched.Lay)
	if err != nil {
		return nil, nil, err
	}
	var found []lay.Plan
	out := &Matching{Plain: matched.Taken, Matched: matched.Taken}
	if plan.Possible() {
		out.Plain = min(plan.Taken, matched.Taken)
		found = append(found, plan)
	}
	repeat := t.Cloth.Repeat
	out.RuleOfThumb = out.Plain + repeat.Along
	if repeat.Along > 0 {
		out.Repeats = out.Extra() / repeat.Along
	} else {
		out.RuleOfThumb = out.Plain + repeat.Across
	}
	return out, found, nil
}

// FillMatches gathers what all beds keep on the repeat, and says what could
// not be kept.
func FillMatches(p *lay.Plan, found *SolvedLay) {
	if p.Cloth.Repeat.IsPlain() {
		return
	}
	p.Places = found.places(p.Cloth)
	var dropped []string
	for _, one := range found.Beds {
		matched := one.matching(p.Cloth)
		for _, match := range matched.Kept {
			p.Matches = mergedMatch(p.Matches, match)
		}
		for _, match := range matched.Dropped {
			p.Dropped = mergedMatch(p.Dropped, match)
			dropped = append(dropped, droppedAs(p.Asked, match))
		}
	}
	slices.Sort(dropped)
	if dropped = slices.Compact(dropped); len(dropped) > 0 {
		p.Notes = append(p.Notes, "Not everything can be matched at once: "+strings.Join(dropped, "; ")+".")
	}
}

// droppedAs says of one piece what cannot be kept.
func droppedAs(asked []pieces.Piece, match lay.Match) string {
	way, name := "along the warp", asked[match.Pieces[0]].Name
	if match.Across {
		way = "across"
	}
	if match.Name == marks.None {
		return fmt.Sprintf("right and left of %s cannot be matched %s as well as the other points", name, way)
	}
	return fmt.Sprintf("%s of %s cannot be matched %s as well as the others", match.Name, name, way)
}

func mergedMatch(all []lay.Match, more lay.Match) []lay.Match {
	for i, match := range all {
		if match.Name != more.Name || match.Across != more.Across || match.Name == marks.None && match.Pieces[0] != more.Pieces[0] {
			continue
		}
		for _, source := range more.Pieces {
			if !slices.Contains(all[i].Pieces, source) {
				all[i].Pieces = append(slices.Clip(all[i].Pieces), source)
			}
		}
		return all
	}
	return append(all, more)
}
