package app

import (
	"context"
	"math"
	"slices"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/pieces"
)

// singles are the pieces of each garment that is cut from a cloth, by itself;
// none when there is only one garment.
func singles(work *job.Work, cloth string) [][]pieces.Piece {
	var out [][]pieces.Piece
	for _, made := range work.Garments {
		single := piecesOn(made, cloth)
		for i := range single {
			single[i].Garment = "" // equal garments are one problem, whatever their number
		}
		for range made.Quantity {
			if len(single) > 0 {
				out = append(out, single)
			}
		}
	}
	if len(out) < 2 {
		return nil
	}
	return out
}

// piecesOn are the pieces of one garment that are cut from a cloth.
func piecesOn(made job.Made, cloth string) []pieces.Piece {
	var out []pieces.Piece
	for _, piece := range made.Pieces {
		if piece.Cloth == cloth {
			out = append(out, piece)
		}
	}
	return out
}

// notAboveTheSum searches again where all garments together came to more than each
// alone, from the layouts of each alone.
func (s *solver) notAboveTheSum(ctx context.Context, together []problem, answers []answer, singly [][]answer) ([]answer,
	error) {
	for i, again := range together {
		var sum float64
		for _, single := range singly[i] {
			sum += least(single.need)
		}
		if len(singly[i]) == 0 || len(again.cloth.InItsWidth().ByHand) > 0 || answers[i].impossible != nil ||
			least(answers[i].need) <= sum+plan.SameLength {
			continue
		}
		again.known = oneBehindTheOther(singly[i], again.all)
		found, err := s.solve(ctx, again, s.search.Workers)
		if err != nil {
			return nil, err
		}
		answers[i] = found
	}
	return answers, nil
}

// oneBehindTheOther are layouts of all garments made of those of each alone, for
// the search for all together to start from.
func oneBehindTheOther(alone []answer, all []pieces.Piece) []lay.Plan {
	var garments []string
	for _, piece := range all {
		if !slices.Contains(garments, piece.Garment) {
			garments = append(garments, piece.Garment)
		}
	}
	if len(alone) != len(garments) {
		return nil
	}
	var needs []plan.Requirement
	for _, single := range alone {
		needs = append(needs, single.need)
	}
	var out []lay.Plan
	for _, kind := range lay.Kinds() {
		if p, ok := plan.Behind(kind, needs, garments); ok {
			out = append(out, p)
		}
	}
	return out
}

// least length of cloth that any lay of a requirement takes, mm.
func least(need plan.Requirement) float64 {
	out := math.Inf(1)
	for _, p := range need.Found {
		out = min(out, p.Taken)
	}
	return out
}
