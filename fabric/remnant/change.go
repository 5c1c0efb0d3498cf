// Package remnant looks for what would make a piece of cloth enough that is
// not: what could be given up, in the order of least harm, each tried with a
// layout.
//
// Lengths are millimetres.
package remnant

import (
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
	"slices"
	"strings"
)

// Question is what is to be cut, and how.
type Question struct {
	Cloth cloth.Cloth
	// Length of the cloth that there is, mm.
	Length float64
	// Offcuts that lie in a row on the cloth, when it is several remnants.
	Offcuts []lay.OffcutPlace
	Pieces  []pieces.Piece
	// Lays that may be used; empty means every way.
	Lays []lay.Kind
}

// Change is one thing that could be given up.
type Change struct {
	// Gives is what is given up: one thing, or two at once.
	Gives []Given
	// Most is the most that it can be changed by, and Step how finely it is
	// tried, mm. Most 0: it is changed or not.
	Most, Step float64
	// Make changes the question by so much. It reports false when it has
	// nothing to change.
	Make func(q Question, by float64) (Question, bool)
}

// plain is a change without a measure.
func plain(given Given, make func(q Question) (Question, bool)) Change {
	return Change{Gives: []Given{given}, Make: func(q Question, _ float64) (Question, bool) { return make(q) }}
}

// Measured is a change by up to so much, mm, tried in steps.
func Measured(given Given, most, step float64, make func(q Question, by float64) (Question, bool)) Change {
	given.Most = most
	return Change{Gives: []Given{given}, Most: most, Step: step, Make: make}
}

// Kind names what a change gives up, for programs: "hem", or of two at once both: "hem
// and cross grain".
func (c Change) Kind() string {
	words := make([]string, len(c.Gives))
	for i, given := range c.Gives {
		words[i] = given.Of.String()
	}
	return strings.Join(words, " and ")
}

// sought is which of the things given up has the measure that is looked for: the last
// that has one. Of two measures the other is given up whole. -1 when none has.
func (c Change) sought() int {
	for i := len(c.Gives) - 1; i >= 0; i-- {
		if c.Gives[i].Most > 0 {
			return i
		}
	}
	return -1
}

// With says what is given up when the change is by so much, mm.
func (c Change) With(by float64) []Given {
	out := slices.Clone(c.Gives)
	for i := range out {
		out[i].By = out[i].Most
	}
	if i := c.sought(); i >= 0 {
		out[i].By = by
	}
	return out
}

// upTo limits the measure of a change.
func (c Change) upTo(most float64) Change {
	c.Most, c.Gives = most, slices.Clone(c.Gives)
	if i := c.sought(); i >= 0 {
		c.Gives[i].Most = most
	}
	return c
}

// eachPiece changes some pieces and leaves the others.
func eachPiece(q Question, change func(p pieces.Piece) (pieces.Piece, bool)) (Question, bool) {
	out, any := q, false
	out.Pieces = nil
	for _, p := range q.Pieces {
		changed, ok := change(p)
		any = any || ok
		if ok {
			p = changed
		}
		out.Pieces = append(out.Pieces, p)
	}
	return out, any
}

// withEdges is a piece whose edges may be changed without touching the first.
func withEdges(p pieces.Piece) pieces.Piece {
	p.Edges = append([]pieces.Edge{}, p.Edges...)
	return p
}
