package app

import (
	"context"
	"fmt"
	"reflect"
	"strings"

	"ellwand/cmd/ellwand/job"
	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/sheet"
	piecewords "ellwand/pieces/words"
)

// Drafted is a job drafted as it stands, or in several sizes.
type Drafted struct {
	// Works has the job in each size; one when it is drafted as it stands.
	Works []*job.Work
	// InSizes says that sizes were asked for, be it only one.
	InSizes bool
}

// First is the job as it stands, or in the first size.
func (d Drafted) First() *job.Work { return d.Works[0] }

// ReadSizes reads a job, and drafts it in each of the sizes asked for; without
// any, as it stands.
func ReadSizes(ctx context.Context, path string, sizes []string) (Drafted, error) {
	file, err := job.Read(path)
	if err != nil {
		return Drafted{}, err
	}
	return DraftSizes(file.Within(ctx), path, sizes)
}

// DraftSizes drafts a job, read from a path, in each of the sizes asked for; without any,
// as it stands.
func DraftSizes(file *job.File, path string, sizes []string) (Drafted, error) {
	if len(sizes) == 0 {
		work, err := file.Resolve()
		return Drafted{Works: []*job.Work{work}}, err
	}
	if file.Size == "" && len(file.SizesInOrder()) == 0 {
		return Drafted{}, refuseAt(path, "%s needs a job that is drafted from a table; add to it: size: %s and table: women",
			ArgumentSizes, strings.TrimSpace(sizes[0]))
	}
	works, err := inSizes(file, sizes)
	return Drafted{Works: works, InSizes: true}, err
}

// inSizes drafts a job in sizes of its table.
func inSizes(file *job.File, sizes []string) ([]*job.Work, error) {
	var out []*job.Work
	seen := map[string]bool{}
	for _, size := range sizes {
		size = strings.TrimSpace(size)
		if size == "" {
			return nil, refuse("%s has a comma too many; write them as: %[1]s 10,12,14", ArgumentSizes)
		}
		if seen[size] {
			return nil, refuse("%s names size %s twice", ArgumentSizes, size)
		}
		seen[size] = true
		work, err := file.InSize(size)
		if err != nil {
			return nil, fmt.Errorf("in size %s: %w", size, err)
		}
		out = append(out, work)
	}
	return out, nil
}

// DrawnPieces gathers the pieces of a job in one size or several: the same piece of
// every size into one drawn piece, and a piece that is cut from several cloths once,
// with a line for each.
func DrawnPieces(works []*job.Work) ([]sheet.DrawnPiece, error) {
	var out []sheet.DrawnPiece
	for g, made := range works[0].Garments {
		var drawn []pieces.Piece // the first size of each figure
		for _, piece := range made.Pieces {
			if i := sameShape(drawn, piece); i >= 0 {
				at := len(out) - len(drawn) + i
				out[at].Label = append(out[at].Label, drawing.CutText(piece))
				continue
			}
			drawn = append(drawn, piece)
			figure, err := sheet.NewDrawnPiece(inEverySize(works, g, piece)...)
			if err != nil {
				return nil, piecewords.Refused(err)
			}
			figure.Inches = works[0].InInches()
			out = append(out, figure)
		}
	}
	return out, nil
}

// sameShape finds a piece that differs in its cloth and how it is cut alone.
func sameShape(drawn []pieces.Piece, piece pieces.Piece) int {
	for i, other := range drawn {
		other.Cloth, other.Cut, other.Pair = piece.Cloth, piece.Cut, piece.Pair
		if reflect.DeepEqual(other, piece) {
			return i
		}
	}
	return -1
}

// inEverySize is the piece as it is drafted in every size.
func inEverySize(works []*job.Work, garment int, piece pieces.Piece) []pieces.Piece {
	if len(works) == 1 {
		return []pieces.Piece{piece}
	}
	var out []pieces.Piece
	for _, work := range works {
		for _, p := range work.Garments[garment].Pieces {
			if p.Name == piece.Name && p.Cloth == piece.Cloth {
				out = append(out, p)
			}
		}
	}
	return out
}
