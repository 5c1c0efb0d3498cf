package plan

import (
	"slices"

	"ellwand/fabric/lay"
	"ellwand/pieces"
)

// noteUnsaid says what is wrong cloth if it is not meant so: pieces that are all cut the same
// way up though they have a right and a left, and outlines of unknown allowance.
func noteUnsaid(p *lay.Plan) {
	note := func(kind lay.NoteKind, is func(pieces.Piece) bool) {
		var names []string
		for _, piece := range p.Asked {
			if !slices.Contains(names, piece.Name) && is(piece) {
				names = append(names, piece.Name)
			}
		}
		if len(names) > 0 {
			p.Notes = append(p.Notes, lay.Note{Of: kind, Pieces: names})
		}
	}
	note(lay.OneHanded, p.Cloth.LacksLeft)
	note(lay.AllowanceUnknown, func(piece pieces.Piece) bool {
		return slices.ContainsFunc(piece.Edges, func(e pieces.Edge) bool { return e.Unknown })
	})
}
