package report

import (
	"math"
	"strings"

	"ellwand/cmd/ellwand/app"
	"ellwand/pieces"
	"ellwand/pieces/measure"
	"ellwand/pieces/seams"
)

// Pieces is what show and export print as JSON.
type Pieces struct {
	Title  string       `json:"title"`
	Pieces []ShownPiece `json:"pieces"`
	Truing []Truing     `json:"truing"`
	Notes  []string     `json:"notes"`
	Files  []string     `json:"files"`
}

// ShownPiece is a piece with what its outline has of its allowance: "included 1.5 cm",
// "added 1.5 cm", "unknown".
type ShownPiece struct {
	Piece
	Size       string  `json:"size,omitempty"`
	Allowance  string  `json:"allowance"`
	AreaMM2    int     `json:"area_mm2"` // within the cutting outline; of a half, that of the half
	AccuracyMM float64 `json:"accuracy_mm"`
}

// PiecesOf a collection.
func PiecesOf(c app.Collection) (Pieces, error) {
	out := Pieces{Title: c.Title, Pieces: []ShownPiece{}, Truing: []Truing{}, Notes: append([]string{}, c.Notes...),
		Files: []string{}}
	for _, p := range c.Pieces {
		shown, err := shownOf(p, c.Unit)
		if err != nil {
			return out, err
		}
		out.Pieces = append(out.Pieces, shown)
	}
	out.Truing = append(out.Truing, TruingOf(c.Truing, c.Unit)...)
	return out, nil
}

func shownOf(p pieces.Piece, unit measure.Unit) (ShownPiece, error) {
	plain, err := pieceOf(p)
	if err != nil {
		return ShownPiece{}, err
	}
	outline, err := p.CuttingOutline(drawn)
	if err != nil {
		return ShownPiece{}, err
	}
	sum := 0.0
	for i := 1; i < len(outline); i++ {
		sum += outline[i-1][0]*outline[i][1] - outline[i][0]*outline[i-1][1]
	}
	return ShownPiece{Piece: plain, Size: p.Size, Allowance: allowanceOf(p, unit), AreaMM2: int(math.Round(sum / 2)),
		AccuracyMM: tidy(p.Accuracy)}, nil
}

// allowanceOf says for each way in which edges have their allowance how wide it is, from
// the narrowest to the widest: "included 1.5 cm to 4 cm".
func allowanceOf(p pieces.Piece, unit measure.Unit) string {
	widths := map[string][2]float64{}
	var kinds []string
	for _, e := range p.Edges {
		if p.Fold != seams.None && e.Name == p.Fold {
			continue
		}
		kind, width := "added", e.Allowance
		switch {
		case e.Unknown:
			kind, width = "unknown", 0
		case e.Included > 0:
			kind, width = "included", e.Included
		case e.Allowance == 0:
			kind = "none"
		}
		between, known := widths[kind]
		if !known {
			kinds, between = append(kinds, kind), [2]float64{width, width}
		}
		widths[kind] = [2]float64{min(between[0], width), max(between[1], width)}
	}
	say := unit.System().Size
	for i, kind := range kinds {
		switch w := widths[kind]; {
		case w[1] == 0:
		case w[0] == w[1]:
			kinds[i] += " " + say(w[0])
		default:
			kinds[i] += " " + say(w[0]) + " to " + say(w[1])
		}
	}
	return strings.Join(kinds, ", ")
}
