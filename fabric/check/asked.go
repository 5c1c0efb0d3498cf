package check

import (
	"errors"
	"fmt"
	"slices"

	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

var _ = register(rule{whole: checkAsked})

// checkAsked: every match that was asked for, and the right and left of every pair, is
// kept on each repeat of the cloth, or said to be dropped.
func checkAsked(p lay.Plan, _ []openedPiece, asked []pieces.Piece) error {
	var faults []error
	for _, across := range []bool{false, true} {
		if period := []float64{p.Cloth.Repeat.Along, p.Cloth.Repeat.Across}; period[axisOf(across)] == 0 {
			continue
		}
		for i, piece := range asked {
			for _, name := range matchesOf(p, piece, asked) {
				if !names(p.Matches, name, across, i) && !names(p.Dropped, name, across, i) {
					faults = append(faults, fmt.Errorf("%s: its match %q is neither kept nor said to be dropped", piece.Name, name))
				}
			}
		}
	}
	return errors.Join(faults...)
}

// matchesOf a piece: the match points that are asked for by name, or else those that
// it shares with another; and None for its right and left.
func matchesOf(p lay.Plan, piece pieces.Piece, asked []pieces.Piece) []marks.Name {
	var out []marks.Name
	for _, notch := range piece.Notches {
		if _, ok := matchPoint(piece, notch.Match); !ok || notch.Match == marks.None || slices.Contains(out, notch.Match) {
			continue
		}
		sharing := 0
		for _, other := range asked {
			if _, ok := matchPoint(other, notch.Match); ok {
				sharing++
			}
		}
		named := p.Cloth.Repeat.Matches
		if slices.Contains(named, notch.Match) || len(named) == 0 && sharing > 1 {
			out = append(out, notch.Match)
		}
	}
	if piece.Pair && piece.Fold == seams.None {
		out = append(out, marks.None)
	}
	return out
}

func names(list []lay.Match, name marks.Name, across bool, piece int) bool {
	return slices.ContainsFunc(list, func(m lay.Match) bool {
		return m.Name == name && m.Across == across && slices.Contains(m.Pieces, piece)
	})
}
