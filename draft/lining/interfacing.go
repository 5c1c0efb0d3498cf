package lining

import (
	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/role"
)

// Interfacing of a piece.
type Interfacing struct {
	// Reduce is how much less than the shell's each allowance is; nil leaves
	// them out, so that the interfacing ends at the seam line.
	Reduce *float64
	// Cut is how many are cut; 0 for as many as of the shell.
	Cut int
}

// Interface derives the interfacing of a piece of the shell that has its
// allowances. The error is a sentence that names what cannot be.
func Interface(shell pieces.Piece, o Interfacing) (pieces.Piece, construct.Sheet, error) {
	if o.Reduce != nil && *o.Reduce < 0 {
		return pieces.Piece{}, construct.Sheet{},
			construct.About(subject.Reduce).Refuse("interfacing: each allowance "+
				"is reduced by %s; that cannot be negative",
				"Einlage: jede Nahtzugabe ist um %s schmaler; das kann nicht negativ sein",
				construct.Length(*o.Reduce))
	}
	piece := shell
	piece.Name, piece.Role, piece.Kind = shell.Name+" interfacing", role.None, pieces.Interfacing
	piece.Edges = append([]pieces.Edge{}, shell.Edges...)
	for i := range piece.Edges {
		edge := &piece.Edges[i]
		if o.Reduce == nil {
			edge.Allowance = 0
			continue
		}
		edge.Allowance = max(0, edge.Allowance-*o.Reduce)
	}
	if o.Cut > 0 {
		piece.Cut = o.Cut
	}
	piece.Pair = piece.Pair && piece.Cut%2 == 0
	s := construct.Sheet{Piece: piece.Name}
	if o.Reduce == nil {
		s.Draw("trace the seam line of the "+shell.Name+"; it has no allowances", "so that the seams stay thin")
	} else {
		s.Draw("trace the "+shell.Name+", each allowance narrower by {}", "so that it does not show at the edges",
			*o.Reduce)
	}
	return piece, s, nil
}
