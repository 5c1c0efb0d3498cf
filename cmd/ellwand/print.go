package main

import (
	"fmt"
	"io"
	"reflect"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/packing"
	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/measure"
	"ellwand/pieces/sheet"
)

// printOptions are the options of the print command.
type printOptions struct {
	output  string
	paper   paperOptions
	sizes   []string
	seams   string
	time    time.Duration
	seed    uint64
	workers int
	force   bool
}

func newPrint(e *env) *cobra.Command {
	p := printOptions{time: 4 * time.Second}
	cmd := &cobra.Command{
		Use:   "print JOB -o pieces.pdf",
		Short: "Print the pieces full size, on sheets to be joined",
		Long: `Print draws the pieces of a job at full size, with their seam allowances, on as
few sheets as it can, and writes them as a PDF. Every sheet has its name (B3 is
the third in the second row), trim lines, and marks that meet those of its
neighbours; sheets that would be blank are left out. The first page has squares
of 10 cm and 4 in by which to measure the print, and a map of the sheets.

--sizes drafts the job in several sizes of its table and nests them: each size
has dashes of its own, and --seams names the one whose seam lines are drawn too.
Print at 100 %, and measure the square before you cut.`,
		Example: `  ellwand print blouse.yaml -o pieces.pdf
  ellwand print blouse.yaml -o pieces.pdf --paper a0
  ellwand print blouse.yaml -o nested.pdf --paper letter --sizes 10,12,14`,
		Args: one("a job file"),
		RunE: func(cmd *cobra.Command, args []string) error {
			return e.print(cmd, args[0], p)
		},
	}
	flags := cmd.Flags()
	flags.StringVarP(&p.output, "output", "o", "", "the PDF to write (required)")
	p.paper.register(cmd, "a4")
	flags.StringSliceVar(&p.sizes, "sizes", nil, "sizes of the job's table to nest, smallest first: 10,12,14")
	flags.StringVar(&p.seams, "seams", "", "with --sizes: the size whose seam lines are drawn; the first if not given")
	flags.Var((*span)(&p.time), "time", "time to search for few sheets: 4s, 1m, or a number of seconds")
	flags.Uint64Var(&p.seed, "seed", 1, "seed of the search")
	flags.IntVar(&p.workers, "workers", 0, "processor cores to use; 0 is all of them")
	flags.BoolVar(&p.force, "force", false, "overwrite files that exist")
	return cmd
}

// paperOptions describe the sheets of anything printed full size.
type paperOptions struct{ name, margin, overlap string }

func (p *paperOptions) register(cmd *cobra.Command, usual string) {
	flags := cmd.Flags()
	flags.StringVar(&p.name, "paper", usual, strings.Join(sheet.PaperNames(), ", ")+", or its sides: 600mmx900mm")
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
func (p *paperOptions) paper(work *job.Work) (sheet.Paper, error) {
	paper, err := sheet.ParsePaper(p.name, paperUnit(work))
	if err != nil {
		return paper, fmt.Errorf("--paper: %w", err)
	}
	if paper, err = p.edges(paper, work.Unit); err != nil {
		return paper, err
	}
	return paper, paper.Check()
}

// edges adds the margin and the overlap to a paper.
func (p *paperOptions) edges(paper sheet.Paper, unit measure.Unit) (sheet.Paper, error) {
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
	for _, name := range sheet.PaperNames() {
		if strings.EqualFold(name, strings.TrimSpace(p.name)) {
			return strings.ToUpper(name[:1]) + name[1:]
		}
	}
	return ""
}

func (e *env) print(cmd *cobra.Command, path string, p printOptions) error {
	switch {
	case p.output == "":
		return fmt.Errorf("the pieces need a file to go to; for example: ellwand print %s -o pieces.pdf", path)
	case !strings.EqualFold(files.Extension(p.output), ".pdf"):
		return fmt.Errorf("the sheets are written as a PDF, but %s is not named so; for example: -o pieces.pdf", p.output)
	case p.workers < 0:
		return fmt.Errorf("--workers is %d; it cannot be negative (0 uses every core)", p.workers)
	}
	works, err := readSizes(path, p.sizes)
	if err != nil {
		return err
	}
	paper, err := p.paper.paper(works[0])
	if err != nil {
		return err
	}
	figures, err := figuresOf(works)
	if err != nil {
		return err
	}
	if err := p.chooseSeams(figures); err != nil {
		return err
	}
	files := &files.Set{Force: p.force, Input: path}
	var pages []drawing.Page
	title := works[0].Title()
	if err := files.Add(p.output, func(w io.Writer) error { return drawing.WritePDF(w, title, pages) }); err != nil {
		return err
	}
	e.warn(works[0])
	e.warnLetters(works[0])
	layout, err := packing.Pack(cmd.Context(), figures, paper, packing.Options{Time: p.time, Seed: p.seed, Workers: p.workers})
	if err != nil {
		return err
	}
	layout.Title, layout.PaperName = title, p.paper.called()
	if pages, err = layout.Pages(); err != nil {
		return err
	}
	if err := files.Commit(); err != nil {
		return err
	}
	return e.reportPrint(works[0], layout, pages, p)
}

// chooseSeams has the figures draw the seam lines of the size asked for.
func (p printOptions) chooseSeams(figures []sheet.Figure) error {
	seams := strings.TrimSpace(p.seams)
	if seams == "" {
		return nil
	}
	if !slices.ContainsFunc(p.sizes, func(size string) bool { return strings.TrimSpace(size) == seams }) {
		return fmt.Errorf("--seams %s is none of the sizes that are printed; name it in --sizes as well", seams)
	}
	for i, f := range figures {
		at := slices.IndexFunc(f.Sizes, func(d sheet.Drawn) bool { return d.Piece.Size == seams })
		figures[i].Seams = max(0, at)
	}
	return nil
}

// readSizes reads a job, and drafts it in each of the sizes asked for.
func readSizes(path string, sizes []string) ([]*job.Work, error) {
	file, err := job.Read(path)
	if err != nil {
		return nil, err
	}
	if len(sizes) == 0 {
		work, err := file.Resolve()
		return []*job.Work{work}, err
	}
	if file.Size == "" {
		return nil, fmt.Errorf("%s: --sizes needs a job that is drafted from a table; add to it: size: %s and table: women", path, strings.TrimSpace(sizes[0]))
	}
	var out []*job.Work
	seen := map[string]bool{}
	for _, size := range sizes {
		size = strings.TrimSpace(size)
		if size == "" {
			return nil, fmt.Errorf("--sizes has a comma too many; write them as: --sizes 10,12,14")
		}
		if seen[size] {
			return nil, fmt.Errorf("--sizes names size %s twice", size)
		}
		seen[size] = true
		one := *file
		one.Size = job.Text(size)
		work, err := one.Resolve()
		if err != nil {
			return nil, fmt.Errorf("in size %s: %w", size, err)
		}
		out = append(out, work)
	}
	return out, nil
}

// figuresOf gathers the pieces: the same piece of every size into one figure,
// and a piece that is cut from several cloths once, with a line for each.
func figuresOf(works []*job.Work) ([]sheet.Figure, error) {
	var out []sheet.Figure
	for g, made := range works[0].Garments {
		var drawn []pieces.Piece // the first size of each figure
		for _, piece := range made.Pieces {
			if i := sameShape(drawn, piece); i >= 0 {
				at := len(out) - len(drawn) + i
				out[at].Label = append(out[at].Label, drawing.CutText(piece))
				continue
			}
			drawn = append(drawn, piece)
			f, err := sheet.NewFigure(nestOf(works, g, piece)...)
			if err != nil {
				return nil, err
			}
			f.Inches = works[0].InInches()
			out = append(out, f)
		}
	}
	return out, nil
}

// sameShape finds a piece that differs in its cloth and how it is cut alone.
func sameShape(drawn []pieces.Piece, piece pieces.Piece) int {
	for i, other := range drawn {
		other.Cloth, other.Cut, other.Pair = piece.Cloth, piece.Cut, piece.Pair
		if reflect.DeepEqual(other, piece) {
			return i
		}
	}
	return -1
}

// nestOf is the piece in every size, as each is drafted.
func nestOf(works []*job.Work, garment int, piece pieces.Piece) []pieces.Piece {
	if len(works) == 1 {
		return []pieces.Piece{piece}
	}
	var out []pieces.Piece
	for _, work := range works {
		for _, p := range work.Garments[garment].Pieces {
			if p.Name == piece.Name && p.Cloth == piece.Cloth {
				out = append(out, p)
			}
		}
	}
	return out
}

// printReport is what print gives as JSON.
type printReport struct {
	Job    string `json:"job"`
	Pieces int    `json:"pieces"`
	Pages  int    `json:"pages"`
	Sheets int    `json:"sheets"`
	Paper  string `json:"paper"`
	File   string `json:"file"`
}

func (e *env) reportPrint(work *job.Work, layout sheet.Layout, pages []drawing.Page, p printOptions) error {
	plane, tiling := layout.Plane()
	report := printReport{Job: work.Name, Pieces: len(layout.Figures), Pages: len(pages), Sheets: tiling.Sheets(plane), Paper: p.paper.name, File: p.output}
	if e.json {
		return e.printJSON(report)
	}
	fmt.Fprintf(e.out, "%d pieces on %s of %s, %s in all, written to %s\n", report.Pieces,
		counted(report.Sheets, "sheet"), p.paper.name, counted(report.Pages, "page"), report.File)
	square := "10 cm"
	if work.InInches() {
		square = "4 in"
	}
	fmt.Fprintf(e.out, "Print at 100 %%, not fitted to the page, and measure the square of %s on the first page before you cut.\n", square)
	return nil
}

func counted(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
