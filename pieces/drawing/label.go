package drawing

import (
	"fmt"

	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// LabelLines are what is written on a piece: its name, its garment and size,
// and what to cut from which cloth.
func LabelLines(p pieces.Piece) []string {
	lines := []string{p.Name}
	of := p.Garment
	switch {
	case p.Size != "" && of != "":
		of += ", size " + p.Size
	case p.Size != "":
		of = "size " + p.Size
	}
	if of != "" {
		lines = append(lines, of)
	}
	return append(lines, CutText(p))
}

// CutText says how many are cut, and from what: "cut 2, a pair, from shell".
func CutText(p pieces.Piece) string {
	text := fmt.Sprintf("cut %d", p.Cut)
	switch {
	case p.Fold != seams.None:
		text += " on fold"
	case p.Pair && p.Cut == 2:
		text += ", a pair"
	case p.Pair:
		text += fmt.Sprintf(", %d pairs", p.Cut/2)
	}
	if p.Cloth != "" {
		text += ", from " + p.Cloth
	}
	return text
}

// GrainText names the grainline: "straight grain, this end up".
func GrainText(p pieces.Piece) string {
	return map[pieces.GrainLie]string{
		pieces.StraightGrain: "straight grain",
		pieces.CrossGrain:    "cross grain",
		pieces.Bias:          "bias",
		pieces.EitherGrain:   "straight or cross grain",
	}[p.Grain.Lie] + ", this end up"
}
