package plan

import (
	"errors"
	"slices"

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
		p.Dropped = append(p.Dropped, matched.Dropped...)
	}
	dropLonely(p)
	if len(p.Dropped) > 0 {
		p.Notes = append(p.Notes, lay.Note{Of: lay.Unmatched})
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

// dropped is what a maker is told of a match that cannot be kept.
type dropped struct {
	name   marks.Name
	across bool
	piece  string
}

func droppedAs(asked []pieces.Piece, match lay.Match) dropped {
	return dropped{match.Name, match.Across, asked[match.Pieces[0]].Name}
}

// inThisLay says why a lay does not do in which that cannot be kept.
func (d dropped) inThisLay() error {
	return lay.Reason{Of: lay.UnmatchedPoint, Piece: d.piece, Point: d.name, Across: d.across}
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
func (t *Planner) lessMatched(m *rules.Matching) error {
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
			faults = append(faults, droppedAs(t.Asked, match).inThisLay())
		}
	}
	return errors.Join(faults...)
}
