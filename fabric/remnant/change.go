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
	// Kind is the same for changes of one kind, in words for programs: "open",
	// "seam allowance", "hem", "shorten", "cross grain", "join", "facing",
	// "nap", "size", "straight ends", "close laying"; of two at once, both: "hem and cross grain".
	Kind string
	// Most is the most that it can be changed by, and Step how finely it is
	// tried, mm. Most 0: it is changed or not.
	Most, Step float64
	// Make changes the question by so much. It reports false when it has
	// nothing to change.
	Make func(q Question, by float64) (Question, bool)
	// Say tells the maker in a phrase what to do: "lay it open instead of
	// folded". It is given how much, and how to print a length.
	Say func(by float64, length func(float64) string) string
}

// plain is a change without a measure.
func plain(kind, phrase string, make func(q Question) (Question, bool)) Change {
	return Change{
		Kind: kind,
		Make: func(q Question, _ float64) (Question, bool) { return make(q) },
		Say:  func(float64, func(float64) string) string { return phrase },
	}
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
