package report

import (
	"fmt"
	"strings"

	"ellwand/cmd/ellwand/job"
)

// Sizes is what draft --sizes prints as JSON.
type Sizes struct {
	Job   string   `json:"job"`
	Sizes []Size   `json:"sizes"`
	Files []string `json:"files"`
}

// Size is the job as drafted in one size.
type Size struct {
	Size     string             `json:"size"`
	Body     map[string]float64 `json:"body_mm"`
	Garments []Garment          `json:"garments"`
	Notes    []string           `json:"notes"`
}

// Extent is how large the piece of a name and cloth is: "31.9 x 49.3 cm".
func (g Garment) Extent(work *job.Work, like Piece) string {
	for _, p := range g.Pieces {
		if p.Name == like.Name && p.Cloth == like.Cloth {
			return work.Format(p.WidthMM) + " x " + work.Format(p.HeightMM)
		}
	}
	return "none"
}

// Verdict names the seams that do not match.
func (g Garment) Verdict() string {
	var faults []string
	for _, r := range g.Truing {
		if !r.Sound {
			faults = append(faults, fmt.Sprintf("%s: the %s is %s against the %s", r.Seam, r.Of, r.Verdict, r.Against))
		}
	}
	if len(faults) > 0 {
		return strings.Join(faults, "; ")
	}
	return "every seam matches"
}

// SizesOf a job in several sizes. An error is the program's own fault.
func SizesOf(works []*job.Work) (Sizes, error) {
	out := Sizes{Job: works[0].Name, Sizes: []Size{}}
	for _, work := range works {
		one, err := DraftOf(work)
		if err != nil {
			return out, err
		}
		out.Sizes = append(out.Sizes, Size{work.Size, one.Body, one.Garments, one.Notes})
	}
	return out, nil
}
