package view

import (
	"fmt"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/report"
)

// Seam is a row of the truing report, and the edges that it is about.
type Seam struct {
	Garment  string `json:"garment"`
	Seam     string `json:"seam"`
	Of       string `json:"of"`
	Against  string `json:"against"`
	Sound    bool   `json:"sound"`
	Verdict  string `json:"verdict"`
	Sentence string `json:"sentence"`
	// DifferenceMM is how much longer Of is than Against, and what is normal for it.
	DifferenceMM float64     `json:"difference_mm"`
	LeastMM      float64     `json:"least_mm"`
	MostMM       float64     `json:"most_mm"`
	Edges        []PieceEdge `json:"edges"`
}

// PieceEdge names an edge of a piece.
type PieceEdge struct {
	Piece string `json:"piece"`
	Edge  string `json:"edge"`
}

// truingOf a job, whose pieces are drawn.
func truingOf(work *job.Work, drawn []Piece) []Seam {
	out := []Seam{}
	for _, made := range work.Garments {
		for _, row := range report.TruingOf(made.Truing, work.Unit) {
			out = append(out, Seam{
				Garment: made.Name, Seam: row.Seam, Of: row.Of, Against: row.Against, Sound: row.Sound, Verdict: row.Verdict,
				Sentence: fmt.Sprintf("%s %s, %s %s: %s; normal is %s", row.Of, work.Format(row.OfMM), row.Against,
					work.Format(row.AgainstMM), row.Verdict, row.Normal),
				DifferenceMM: row.DifferenceMM, LeastMM: row.LeastMM, MostMM: row.MostMM,
				Edges: edgesOf(drawn, made.Name, row.Seam),
			})
		}
	}
	return out
}

// edgesOf a seam, in the pieces of a garment.
func edgesOf(drawn []Piece, garment, seam string) []PieceEdge {
	out := []PieceEdge{}
	for _, piece := range drawn {
		for _, edge := range piece.Edges {
			if piece.Garment == garment && edge.seam == seam {
				out = append(out, PieceEdge{piece.Name, edge.Name})
			}
		}
	}
	return out
}
