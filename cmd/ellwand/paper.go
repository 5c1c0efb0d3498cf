package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/job"
	"ellwand/pieces/measure"
	"ellwand/pieces/paper"
)

// parsePaper reads the name of a sheet.
func parsePaper(text string) (paper.Paper, error) {
	switch strings.ToLower(text) {
	case "a4":
		return paper.A4, nil
	case "letter":
		return paper.Letter, nil
	}
	return paper.Paper{}, fmt.Errorf("--paper %q is not known; use a4 or letter", text)
}

// paperOptions describe the sheets of anything printed full size.
type paperOptions struct{ name, margin, overlap string }

func (p *paperOptions) register(cmd *cobra.Command, usual string) {
	flags := cmd.Flags()
	flags.StringVar(&p.name, "paper", usual, strings.Join(paper.Names(), ", ")+", or its sides: 600mmx900mm")
	p.registerEdges(cmd)
}

func (p *paperOptions) registerEdges(cmd *cobra.Command) {
	flags := cmd.Flags()
	flags.StringVar(&p.margin, "margin", "10mm", "what the printer leaves white on each side of a full-size sheet")
	flags.StringVar(&p.overlap, "overlap", "12mm", "what two full-size sheets both show where they are joined")
}

// paperUnit is the unit in which people of the job's units give paper.
func paperUnit(work *job.Work) measure.Unit {
	if work.InInches() {
		return measure.Inch
	}
	return measure.Millimetre
}

// paper reads the options.
func (p *paperOptions) paper(work *job.Work) (paper.Paper, error) {
	paper, err := paper.Parse(p.name, paperUnit(work))
	if err != nil {
		return paper, fmt.Errorf("--paper: %w", err)
	}
	if paper, err = p.edges(paper, work.Unit); err != nil {
		return paper, err
	}
	return paper, paper.Check()
}

// edges adds the margin and the overlap to a paper.
func (p *paperOptions) edges(paper paper.Paper, unit measure.Unit) (paper.Paper, error) {
	margin, err := measure.Parse(p.margin, unit)
	if err != nil {
		return paper, fmt.Errorf("--margin: %w", err)
	}
	overlap, err := measure.Parse(p.overlap, unit)
	if err != nil {
		return paper, fmt.Errorf("--overlap: %w", err)
	}
	paper.Margin, paper.Overlap = float64(margin), float64(overlap)
	return paper, nil
}

// called is the paper as people call it; empty for one given by its sides.
func (p *paperOptions) called() string {
	for _, name := range paper.Names() {
		if strings.EqualFold(name, strings.TrimSpace(p.name)) {
			return strings.ToUpper(name[:1]) + name[1:]
		}
	}
	return ""
}
