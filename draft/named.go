package draft

import (
	"slices"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/role"
)

// named finds the pieces of each name, or all those of a part, each once. A name that
// has become several pieces means all of them, so that none is lost; a panel alone is
// asked for by its own name.
func (g *garment) named(what string, names []string) ([]pieces.Piece, error) {
	var out []pieces.Piece
	for _, name := range names {
		meant := g.meantBy(name)
		if len(meant) == 0 {
			return nil, construct.About(subject.Of).Refuse("%s: there is no piece %q; the pieces are %s",
				"%s: ein Teil %q gibt es nicht; die Teile sind %s", what, name,
				joined(g.pieceNames()))
		}
		for _, piece := range meant {
			if !slices.ContainsFunc(out, func(p pieces.Piece) bool { return p.Name == piece.Name }) {
				out = append(out, piece)
			}
		}
	}
	return out, nil
}

// meantBy a name are some of the pieces so far.
func (g *garment) meantBy(name string) []pieces.Piece {
	var out []pieces.Piece
	meant := role.Asked(name)
	for _, piece := range g.result.Pieces {
		if piece.Name == name || slices.Contains(meant, piece.Role) || g.isOfPart(piece.Name, name) {
			out = append(out, piece)
		}
	}
	return out
}

func (g *garment) pieceNames() []string {
	var out []string
	for _, piece := range g.result.Pieces {
		out = append(out, piece.Name)
	}
	return out
}

// isOfPart says that a piece belongs to the part of a name.
func (g *garment) isOfPart(piece, name string) bool {
	for _, p := range g.parts {
		if p.Name != name && (p.Name != "" || string(p.Kind) != name) {
			continue
		}
		for _, made := range p.pieces {
			if made.Name == piece {
				return true
			}
		}
	}
	return false
}
