package patternfile

import (
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/seams"
)

// edgeOf finds an edge of a piece by what is written of it.
func (m Maker) edgeOf(path Path, what language.Sentence, name Text, piece pieces.Piece) (pieces.Edge, bool) {
	known, found := strict.KnownAs(string(name), edgeNames(piece))
	if !found {
		m.Fault(path, strict.Unknown, "%s has no edge %q; %s", "%s hat keine Kante %q; %s", what, string(name),
			strict.Hint(string(name), edgeNames(piece)))
		return pieces.Edge{}, false
	}
	return piece.Edge(seams.Called(known))
}

func edgeNames(piece pieces.Piece) []string {
	var out []string
	for _, e := range piece.Edges {
		out = append(out, e.Name.String())
	}
	return out
}
