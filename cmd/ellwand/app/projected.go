package app

import (
	"context"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/measure"
	"ellwand/pieces/projector"
	"ellwand/pieces/sheet"
	piecewords "ellwand/pieces/words"
)

// ReadSized reads a file of pieces, or a job in several of its sizes; without any as
// ReadCollection does.
func ReadSized(ctx context.Context, path string, sizes []string) (Collection, error) {
	if len(sizes) == 0 {
		return ReadCollection(ctx, path)
	}
	drafted, err := ReadSizes(ctx, path, sizes)
	if err != nil {
		return Collection{}, err
	}
	return drafted.Collection(), nil
}

// Projected draws the pieces to be projected onto the cloth, those of one name in their
// sizes over each other.
func (c Collection) Projected(o projector.Options) (drawing.Page, error) {
	var figures []sheet.DrawnPiece
	for _, sizes := range bySize(c.Pieces) {
		f, err := sheet.NewDrawnPiece(sizes...)
		if err != nil {
			return drawing.Page{}, piecewords.Refused(err)
		}
		f.Inches = o.Inches
		figures = append(figures, f)
	}
	return projector.Page(figures, o)
}

// Inches says that lengths are said in inches.
func (c Collection) Inches() bool { return c.Unit.System() == measure.Inch.System() }

// bySize puts pieces together that differ in their size alone, in the order in which
// they come.
func bySize(all []pieces.Piece) [][]pieces.Piece {
	type key struct{ name, garment, cloth string }
	at := map[key]int{}
	var out [][]pieces.Piece
	for _, p := range all {
		k := key{p.Name, p.Garment, p.Cloth}
		i, ok := at[k]
		if !ok || p.Size == "" || out[i][0].Size == p.Size {
			at[k] = len(out)
			out = append(out, []pieces.Piece{p})
			continue
		}
		out[i] = append(out[i], p)
	}
	return out
}
