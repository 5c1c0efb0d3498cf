package app

import (
	"context"
	"fmt"
	"slices"
	"strings"
	"time"

	"ellwand/cmd/ellwand/app/packing"
	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/plan"
	"ellwand/pieces/drawing"
	"ellwand/pieces/paper"
	"ellwand/pieces/safety"
	"ellwand/pieces/sheet"
)

// Printing is pieces to be printed at full size, before they are packed.
type Printing struct {
	// Paper, and what people call it; empty for one given by its sides.
	Paper     paper.Paper
	PaperName string
	title     string
	// children wear what is printed.
	youngest safety.Wearer
	figures  []sheet.DrawnPiece
}

// Printed is pieces at full size on sheets that are joined.
type Printed struct {
	Title string
	Pages []drawing.Page
	// Pieces that were printed, and the sheets that they take.
	Pieces, Sheets int
	// Ended says whether the search was ended early.
	Ended plan.Ended
}

// PreparePrinting gathers the pieces of a job in one size or several. The seam
// lines drawn are those of the size named, or of the first.
func PreparePrinting(drafted Drafted, seams string, paper paper.Paper, paperName string) (*Printing, error) {
	figures, err := DrawnPieces(drafted.Works)
	if err != nil {
		return nil, err
	}
	if err := chooseSeams(figures, drafted.Works, strings.TrimSpace(seams)); err != nil {
		return nil, err
	}
	first := drafted.First()
	return &Printing{Paper: paper, PaperName: paperName, title: first.Title(), youngest: first.Youngest,
		figures: figures}, nil
}

// chooseSeams has the figures draw the seam lines of the size asked for.
func chooseSeams(figures []sheet.DrawnPiece, works []*job.Work, seams string) error {
	if seams == "" {
		return nil
	}
	if !slices.ContainsFunc(works, func(work *job.Work) bool { return work.Size == seams }) {
		return refuse("%s %s is none of the sizes that are printed; name it in %s as well", ArgumentSeams, seams,
			ArgumentSizes)
	}
	for i, f := range figures {
		at := slices.IndexFunc(f.Sizes, func(d sheet.Drawn) bool { return d.Piece.Size == seams })
		figures[i].Seams = max(0, at)
	}
	return nil
}

// packingPasses of the usual effort, for each way of joining the sheets
// [source.OwnChoice].
const packingPasses = 400

// Pack lays the pieces so that they take few sheets, and draws the pages.
func (p *Printing) Pack(ctx context.Context, search Search) (Printed, error) {
	begun, work := time.Now(), plan.Work{}
	kept := packingKept(ctx, p.figures, p.Paper, search)
	layout, err := packing.Pack(ctx, p.figures, p.Paper, packing.Options{
		Passes: search.passes(packingPasses), Seed: search.Seed, Workers: search.Workers,
		Kept: kept.arrangement(), Found: kept.found,
		Counted: func(due, made int) { work = work.Plus(plan.Work{Due: due, Made: made}) },
	})
	if err != nil {
		return Printed{}, blamed(err)
	}
	layout.Title, layout.PaperName, layout.Youngest = p.title, p.PaperName, p.youngest
	ended := search.ended(ctx, work, begun)
	if ended.Early {
		layout.Notes = append(layout.Notes, ended.Say())
	}
	pages, err := layout.Pages()
	if err != nil {
		return Printed{}, err
	}
	if err := layout.Proven(p.figures, pages); err != nil {
		return Printed{}, failure.Of(fmt.Errorf("the print is wrong and is not shown: %w", err))
	}
	plane, tiling := layout.Plane()
	return Printed{Title: p.title, Pages: pages, Pieces: len(layout.Figures), Sheets: tiling.Sheets(plane),
		Ended: ended}, nil
}
