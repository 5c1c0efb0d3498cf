package main

import (
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"github.com/jedib0t/go-pretty/v6/table"
	"github.com/paulmach/orb"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/screen"
	"ellwand/draft/steps"
	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/sheet"
)

// draftSizes drafts the job in several sizes of its table: drawings and sheet
// have them one over the other.
func (e *env) draftSizes(path string, d draftOptions) error {
	works, err := readSizes(path, d.sizes)
	if err != nil {
		return err
	}
	files := &files.Set{Force: d.force, Input: path}
	if err := addNests(files, works, d.folder); err != nil {
		return err
	}
	drawings := len(files.Paths())
	if err := addSheet(files, works, d); err != nil {
		return err
	}
	report := sizesReport{Job: works[0].Name, Sizes: []sizeReport{}}
	for i, work := range works {
		one, err := draftOf(work)
		if err != nil {
			return failure.Of(err)
		}
		report.Sizes = append(report.Sizes, sizeReport{strings.TrimSpace(d.sizes[i]), one.Body, one.Garments, one.Notes})
	}
	if err := files.Commit(); err != nil {
		return err
	}
	report.Files = files.Paths()
	if e.json {
		return e.printJSON(report)
	}
	e.printSizes(works, report)
	e.saidWritten(d, drawings)
	for i, work := range works {
		for _, sentence := range work.Notes {
			e.note("note: size %s: %s", report.Sizes[i].Size, sentence)
		}
	}
	return nil
}

// sizesReport is what draft --sizes prints as JSON.
type sizesReport struct {
	Job   string       `json:"job"`
	Sizes []sizeReport `json:"sizes"`
	Files []string     `json:"files"`
}

type sizeReport struct {
	Size     string             `json:"size"`
	Body     map[string]float64 `json:"body_mm"`
	Garments []garmentReport    `json:"garments"`
	Notes    []string           `json:"notes"`
}

// addNests plans an SVG drawing of every piece at true scale, its sizes one
// over the other, unless there is no folder to write them to.
func addNests(files *files.Set, works []*job.Work, folder string) error {
	if folder == "" {
		return nil
	}
	figures, err := figuresOf(works)
	if err != nil {
		return err
	}
	for _, figure := range figures {
		piece := figure.Sizes[0].Piece
		name := fmt.Sprintf("%s-%s.svg", job.Slug(piece.Garment), job.Slug(piece.Name))
		page := nestPage(figure)
		write := func(w io.Writer) error { return drawing.WriteSVG(w, piece.Name, page) }
		if err := files.Add(filepath.Join(folder, name), write); err != nil {
			return err
		}
	}
	return nil
}

// nestPage is a page as large as a figure, y down, with a margin round it.
func nestPage(figure sheet.Figure) drawing.Page {
	const margin = 10
	turned := figure.Map(pieces.MirrorY())
	box := turned.Around().Bound()
	from := orb.Point{box.Min[0] - margin, box.Min[1] - margin}
	page := drawing.Page{Width: box.Max[0] - box.Min[0] + 2*margin, Height: box.Max[1] - box.Min[1] + 2*margin}
	turned.Map(pieces.Move(-from[0], -from[1])).Draw(&page.Picture)
	return page
}

// printSizes prints how large each piece is in each size, and whether the
// seams match.
func (e *env) printSizes(works []*job.Work, report sizesReport) {
	work := works[0]
	fmt.Fprintln(e.out, work.Title())
	heads := []any{"piece", "cloth"}
	for _, one := range report.Sizes {
		heads = append(heads, "size "+one.Size)
	}
	for i, made := range work.Garments {
		t := screen.Table(heads...)
		for _, p := range report.Sizes[0].Garments[i].Pieces {
			cells := table.Row{p.Name, p.Cloth}
			for _, one := range report.Sizes {
				cells = append(cells, one.Garments[i].extent(work, p))
			}
			t.AppendRow(cells)
		}
		fmt.Fprintf(e.out, "\n%s, width and height with the seam allowances\n%s\n", made.Name, t.Render())
		for _, one := range report.Sizes {
			fmt.Fprintf(e.out, "size %s: %s\n", one.Size, one.Garments[i].verdict())
		}
	}
	fmt.Fprintln(e.out)
}

// extent is how large the piece of a name and cloth is: "31.9 x 49.3 cm".
func (g garmentReport) extent(work *job.Work, like pieceReport) string {
	for _, p := range g.Pieces {
		if p.Name == like.Name && p.Cloth == like.Cloth {
			return work.Format(p.WidthMM) + " x " + work.Format(p.HeightMM)
		}
	}
	return "none"
}

// verdict names the seams that do not match.
func (g garmentReport) verdict() string {
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

// nestOfSheets is the draft sheet of several sizes.
func nestOfSheets(works []*job.Work, sizes []string) steps.Nest {
	nest := steps.Nest{}
	for i, work := range works {
		nest.Sizes = append(nest.Sizes, strings.TrimSpace(sizes[i]))
		nest.Documents = append(nest.Documents, documentOf(work))
	}
	return nest
}
