package plan

import (
	"ellwand/fabric/bed"
	"ellwand/fabric/lay"
	"ellwand/nest/bound"
	"ellwand/nest/layout"
)

// hopelessShare is how much longer than the shortest lay another may be after a
// brief search, so that it is searched further: the rest of the search gains a
// few hundredths at most [source.OwnChoice].
const hopelessShare = 0.08

// isHopeless reports that more work on a lay cannot make it the shortest, or is
// very unlikely to.
func (t *Planner) isHopeless(found *SolvedLay) bool {
	return t.shortest != nil && found.Taken > t.shortest.Taken*(1+hopelessShare)
}

// hopelessEffort is the share of its effort that a lay still has which cannot be the
// shortest: it is shown, not taken [source.OwnChoice].
const hopelessEffort = 0.1

// cannotBeShortest reports that no layout of a bed comes near the shortest lay known, by
// a length that none can beat.
func (t *Planner) cannotBeShortest(b bed.Bed, least float64) bool {
	return t.shortest != nil && b.Before+b.Taken(t.Cloth, least) > t.shortest.Taken*(1+hopelessShare)
}

// boundFor is a length that no layout of a bed can beat. Beds of a lay of two are tried in
// many ways, and it is not their bounds that are shown.
func boundFor(kind lay.Kind, problem layout.Problem) float64 {
	if kind == lay.SelvedgeIn || kind == lay.InStretches {
		return bound.Brief(problem)
	}
	return bound.Length(problem)
}
