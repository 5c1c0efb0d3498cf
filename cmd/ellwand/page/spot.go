package page

import (
	"strconv"
	"strings"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/page/view"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

// spot is what is looked at: a cloth in a width, spread in a lay.
type spot struct {
	Cloth string `json:"cloth"`
	Width string `json:"width"`
	Lay   string `json:"lay"`
}

// question is what a spot asks for in a job.
type question struct {
	spot
	work  *job.Work
	cloth cloth.Cloth
	kind  lay.Kind
}

// questionOf a spot; what is wrong with it otherwise.
func questionOf(work *job.Work, at spot) (question, error) {
	out := question{spot: at, work: work}
	kind, known := lay.Named(at.Lay)
	if !known {
		return out, errNoSpot
	}
	out.kind = kind
	width, err := strconv.ParseFloat(strings.TrimSuffix(at.Width, "mm"), 64)
	if err != nil {
		return out, errNoSpot
	}
	cloths, err := app.Cloths(work, nil)
	if err != nil {
		return out, err
	}
	for _, c := range cloths {
		if c.Name == at.Cloth && view.Address(c.Width) == view.Address(width) {
			out.cloth = c
			return out, nil
		}
	}
	return out, errNoSpot
}
