package plan

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"ellwand/fabric/bed"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/pieces"
	"ellwand/pieces/marks"
)

// FillMatches gathers what all beds keep on the repeat, and says what could
// not be kept.
func FillMatches(p *lay.Plan, found *SolvedLay) {
	if p.Cloth.Repeat.IsPlain() {
		return
	}
	p.Places = found.places(p.Cloth)
	for _, one := range found.Beds {
		matched := one.matching(p.Cloth)
		for _, match := range matched.Kept {
			p.Matches = mergedMatch(p.Matches, match)
		}
		for _, match := range matched.Dropped {
			p.Dropped = append(p.Dropped, match)
		}
	}
	dropLonely(p)
	var dropped []string
	for _, match := range p.Dropped {
		dropped = append(dropped, droppedAs(p.Asked, match))
	}
	slices.Sort(dropped)
	if dropped = slices.Compact(dropped); len(dropped) > 0 {
		p.Notes = append(p.Notes, "Not everything can be matched at once: "+strings.Join(dropped, "; ")+".")
	}
}

// dropLonely drops what is kept on one piece alone of those that it would join: that
// matches nothing.
func dropLonely(p *lay.Plan) {
	joins := rules.JoinsOf(p.Cloth.Repeat, p.Asked)
	isLonely := func(match lay.Match) bool {
		return len(match.Pieces) == 1 && slices.ContainsFunc(joins, func(j rules.Join) bool {
			return j.Name == match.Name && j.Pieces[0] == match.Of && len(j.Pieces) > 1
		})
	}
	for _, match := range p.Matches {
		if isLonely(match) {
			p.Dropped = append(p.Dropped, match)
		}
	}
	p.Matches = slices.DeleteFunc(p.Matches, isLonely)
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
		if match.Name != more.Name || match.Across != more.Across || match.Of != more.Of {
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

// lessMatched is the reason why a lay is out of the question that cannot keep
// a match which the open lay keeps: it would answer an easier question.
func (t *Table) lessMatched(m *rules.Matching) error {
	if len(m.Dropped) == 0 {
		return nil
	}
	b := bed.Of(t.Cloth, lay.Open)
	templates, err := rules.TemplatesOf(t.Cloth, b, t.Wanted)
	if err != nil {
		return nil
	}
	open := rules.Match(t.Cloth, b, templates, t.joins(), lay.Places{})
	var faults []error
	for _, match := range m.Dropped {
		same := func(other lay.Match) bool { return droppedAs(t.Asked, match) == droppedAs(t.Asked, other) }
		if !slices.ContainsFunc(open.Dropped, same) {
			faults = append(faults, fmt.Errorf("%s in this lay; lay the cloth open", droppedAs(t.Asked, match)))
		}
	}
	return errors.Join(faults...)
}
