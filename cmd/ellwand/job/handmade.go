package job

import (
	"fmt"

	"ellwand/cmd/ellwand/patternfile"
	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/seams"
)

// handmade makes the pieces that a garment gives itself.
func (r *resolver) handmade(path Path, garment Garment, cloth string, widths allowances) []pieces.Piece {
	m := patternfile.Maker{
		Values: r.values.Values, Say: r.work.Format, Usual: widths.usual, Every: widths.seams(),
		Cloth: func(path Path, what language.Sentence, name Text) string {
			return r.clothNamed(path, what, name, cloth)
		},
	}
	var out []pieces.Piece
	for i, piece := range garment.Pieces {
		inner := path.Key("pieces").Entry(i)
		if piece.Name == "" {
			r.fault(inner, strict.Missing, "piece %d of garment %s has no name; add one, such as: name: collar",
				"Teil %d von %s hat keinen Namen; geben Sie ihm einen, etwa: Kragen", i+1,
				quoted(garment.Name))
			continue
		}
		if piece.Size != "" {
			r.fault(inner.Key("size"), strict.Contradiction,
				"piece %s: sizes belong into a file of pieces; see ellwand "+
					"help pattern", "Teil %s: Größen gehören in eine Schnittdatei; siehe ellwand help pattern",
				quoted(piece.Name))
			continue
		}
		out = append(out, m.Piece(inner, piece)...)
	}
	return out
}

// usual is the allowance that an edge is given where nothing else is said of it.
func (a allowances) usual(edge seams.Name) float64 { return draft.AllowanceOf(edge.Role(), a) }

// named finds a cloth of the job for a file of pieces.
func (r *resolver) named(usual string) func(name string) (string, error) {
	return func(name string) (string, error) {
		if name == "" {
			return usual, nil
		}
		if known, found := strict.KnownAs(name, r.clothNames()); found {
			return known, nil
		}
		return usual, fmt.Errorf("there is no cloth %q under cloths: of %s; %s", name, r.file.name,
			strict.Hint(name, r.clothNames()))
	}
}
