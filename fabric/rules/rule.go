package rules

import (
	"errors"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/nest/layout"
	"ellwand/pieces"
)

// rule is a rule of the cloth: all that it makes of the pieces that keep it. What it
// has nothing to say about is nil. Each stands in a file of its own, which registers
// it; its proof is in fabric/check, its words are in fabric/words.
type rule struct {
	// pieces that keep it, by name, and what they are named for. A rule without pieces binds none, and has zones only.
	pieces func(c cloth.Cloth) []string
	task   lay.Task
	// asCut is a piece as the rule has it cut.
	asCut func(c cloth.Cloth, piece pieces.Piece) pieces.Piece
	// refusal says why a piece can keep the rule in no lay.
	refusal func(c cloth.Cloth, piece pieces.Piece) error
	// turns of a template that keep the rule, pins to an edge of the bed among
	// them; or why there is none.
	turns func(c cloth.Cloth, b bed.Bed, t Template) ([]layout.Turn, error)
	// bind ties template i to its place on the repeat, or says why it cannot.
	bind func(m *Matching, a axis, i int) error
	// place gives an item its places in a bed of that width, or says why there is
	// none.
	place func(c cloth.Cloth, b bed.Bed, t Template, item *layout.Item, width float64) error
	// zones of a bed, as far as that, in which nothing may lie.
	zones func(c cloth.Cloth, b bed.Bed, far float64) ([]orb.Ring, error)
	// points of a piece as it is cut, whose places on the open cloth the rule
	// fixes, for who checks a lay by hand.
	points func(c cloth.Cloth, piece pieces.Piece) []Fixed
}

// Fixed is where a point of a piece lies on the open cloth, along it or across.
type Fixed struct {
	At     orb.Point // in the frame of the piece
	Across bool
	// From and To, mm, from the cut end or from the outer edge of the selvedge
	// nearest to the cutter; and again after every Period, unless that is 0.
	From, To, Period float64
}

// registered are all rules, by the names of their files: they bind in that order.
var registered []rule

func register(r rule) bool {
	registered = append(registered, r)
	return true
}

// keeps reports whether a piece of that name keeps the rule.
func (r rule) keeps(c cloth.Cloth, piece string) bool {
	return r.pieces != nil && slices.Contains(r.pieces(c), piece)
}

// Task is a list of names of pieces, and what they are named for.
type Task struct {
	Pieces []string
	For    lay.Task
}

// Tasks of the pieces of a cloth.
func Tasks(c cloth.Cloth) []Task {
	var out []Task
	for _, r := range registered {
		if r.pieces != nil {
			out = append(out, Task{Pieces: r.pieces(c), For: r.task})
		}
	}
	return out
}

// Refusals are the reasons why pieces cannot keep a rule in any lay.
func Refusals(c cloth.Cloth, all []pieces.Piece) error {
	var faults []error
	for _, r := range registered {
		for _, piece := range all {
			if r.refusal != nil && r.keeps(c, piece.Name) {
				faults = append(faults, r.refusal(c, piece))
			}
		}
	}
	return errors.Join(faults...)
}

// asRuled are the pieces as the rules have them cut.
func asRuled(c cloth.Cloth, all []pieces.Piece) []pieces.Piece {
	out := slices.Clone(all)
	for _, r := range registered {
		for i, piece := range out {
			if r.asCut != nil && r.keeps(c, piece.Name) {
				out[i] = r.asCut(c, piece)
			}
		}
	}
	return out
}

// turnsKept are the turns of a template that keep every rule.
func turnsKept(c cloth.Cloth, b bed.Bed, t Template) ([]layout.Turn, error) {
	var err error
	for _, r := range registered {
		if r.turns != nil && r.keeps(c, t.Asked.Name) {
			if t.Turns, err = r.turns(c, b, t); err != nil {
				return nil, err
			}
		}
	}
	return t.Turns, nil
}

// bindRules ties the templates that keep a rule, before anything is matched.
func (m *Matching) bindRules(a axis) {
	for _, r := range registered {
		for i, t := range m.templates {
			if r.bind != nil && r.keeps(m.cloth, t.Asked.Name) {
				m.err = errors.Join(m.err, r.bind(m, a, i))
			}
		}
	}
}

// placeByRules gives the items their places by every rule.
func placeByRules(c cloth.Cloth, b bed.Bed, templates []Template, problem *layout.Problem) error {
	var faults []error
	for _, r := range registered {
		for i, t := range templates {
			if r.place != nil && r.keeps(c, t.Asked.Name) {
				faults = append(faults, r.place(c, b, t, &problem.Items[i], problem.Width))
			}
		}
	}
	return errors.Join(faults...)
}

// zonesOfRules are the zones of a bed by every rule.
func zonesOfRules(c cloth.Cloth, b bed.Bed, far float64) ([]orb.Ring, error) {
	var out []orb.Ring
	for _, r := range registered {
		if r.zones == nil {
			continue
		}
		zones, err := r.zones(c, b, far)
		if err != nil {
			return nil, err
		}
		out = append(out, zones...)
	}
	return out, nil
}
