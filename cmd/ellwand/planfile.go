package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/check"
	"ellwand/fabric/lay"
	"ellwand/fabric/marker"
	"ellwand/fabric/plotter"
	"ellwand/pieces/drawing"
	"ellwand/pieces/paper"
)

// planFile says as what a lay is drawn: the plan to scale, or the marker at
// full size, in the kind of file that its name ends in.
type planFile struct {
	format  format
	full    bool
	plan    marker.Options
	plotter plotter.Options
}

// fullOptions are the options of a marker at full size.
type fullOptions struct {
	full  bool
	roll  string
	frame string
	paper paperOptions // its name is that of the plan's paper too
}

func (f *fullOptions) register(cmd *cobra.Command) {
	flags := cmd.Flags()
	flags.StringVar(&f.paper.name, "paper", "a4", "a4 or letter; with --full, tiles of "+strings.Join(paper.Names(),
		", ")+" or 600mmx900mm")
	flags.BoolVar(&f.full, "full", false,
		"draw the marker at full size, for a plotter's roll or, with --paper, on sheets to be joined")
	flags.StringVar(&f.roll, "roll", "",
		"with --full: width of the roll, 610, 914, 1067, 1520 or 1830 mm (24, 36, 42, 60 or 72in); the narrowest that "+
			"holds the lay if not given")
	flags.StringVar(&f.frame, "frame", "",
		"with --full: longest page of the roll; in a PDF 5080mm, which viewers show at most")
	f.paper.registerEdges(cmd)
}

// planFile reads the options.
func (f fullOptions) planFile(output string, cmd *cobra.Command, work *job.Work) (planFile, error) {
	format, err := formatOf(output, f.full)
	if err != nil {
		return planFile{}, err
	}
	inches := work.InInches()
	out := planFile{format: format, full: f.full}
	changed := cmd.Flags().Changed
	if !out.full {
		for _, name := range []string{"roll", "frame", "margin", "overlap"} {
			if changed(name) {
				return out, fmt.Errorf("--%s is for a marker at full size; add --full", name)
			}
		}
		paper, err := parsePaper(f.paper.name)
		out.plan = marker.Options{Job: work.Title(), Paper: paper, Inches: inches, Youngest: work.Youngest}
		return out, err
	}
	out.plotter = plotter.Options{Job: work.Title(), Inches: inches, Youngest: work.Youngest}
	if changed("paper") && changed("roll") {
		return out, fmt.Errorf("--paper and --roll cannot both be given: sheets or a roll")
	}
	if changed("paper") {
		out.plotter.Paper, err = f.paper.paper(work)
		return out, err
	}
	unit := paperUnit(work)
	if out.plotter.Longest, err = parseLength("--frame", f.frame, unit); err != nil {
		return out, err
	}
	height, err := parseLength("--roll", f.roll, unit)
	if err != nil {
		return out, err
	}
	if out.plotter.Paper, err = f.paper.edges(paper.Paper{Height: height, Unit: unit}, work.Unit); err != nil {
		return out, err
	}
	return out, out.plotter.Check()
}

// write draws a plan, proven once more, into its file; of pages that each need a
// file of their own, the first.
func (p planFile) write(w io.Writer, plan lay.Plan) error {
	if err := errors.Join(check.Plan(plan, plan.Asked), marker.Proven(plan, p.plan)); err != nil {
		return failure.Of(err)
	}
	switch {
	case !p.full:
		return p.format.plan(w, plan, p.plan)
	case p.format.whole != nil:
		return p.format.whole(w, plan, p.plotter)
	}
	pages, err := plotter.Pages(plan, p.plotter)
	if err != nil {
		return err
	}
	return p.page(w, plan, pages[0])
}

func (p planFile) page(w io.Writer, plan lay.Plan, page drawing.Page) error {
	return p.format.page(w, plotter.Title(plan, p.plotter), page)
}

// check plans a file for each page after the first where a file holds one
// page: plan-2.svg, plan-3.svg.
func (p planFile) check(out *files.Set, path string, plan lay.Plan) error {
	if !p.full {
		return nil
	}
	pages, err := plotter.Pages(plan, p.plotter)
	if err != nil || p.format.whole != nil {
		return err
	}
	for i := 1; i < len(pages); i++ {
		if err := out.Add(pageName(path, i+1), func(w io.Writer) error { return p.page(w, plan, pages[i]) }); err != nil {
			return err
		}
	}
	return nil
}

// mostPages that are looked for before the search.
const mostPages = 50

// checkPages refuses, before the search, a file that exists where a page after
// the first may go: how many there will be is known only when the lay is
// found, and a page left from a longer marker would be plotted with this one.
func (p planFile) checkPages(out *files.Set, path string) error {
	if !p.full || p.format.whole != nil {
		return nil
	}
	for number := 2; number <= mostPages; number++ {
		name := pageName(path, number)
		if _, err := os.Lstat(name); err != nil {
			continue
		}
		if err := out.Check(name); err != nil {
			return err
		}
	}
	return nil
}

// pageName is the file of a page after the first.
func pageName(path string, number int) string {
	return strings.TrimSuffix(path, files.Extension(path)) + fmt.Sprintf("-%d", number) + files.Extension(path)
}
