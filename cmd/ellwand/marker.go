package main

import (
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/screen"
	"ellwand/fabric"
	"ellwand/fabric/marker"
)

// markerOptions are the options of the marker command alone.
type markerOptions struct {
	output string
	widths []string
	full   fullOptions
	lay    string
}

func newMarker(e *env) *cobra.Command {
	var s search
	var m markerOptions
	cmd := &cobra.Command{
		Use:   "marker JOB -o plan.pdf",
		Short: "Print the plan of the lay, to be chalked with a tape measure",
		Long: `Marker lays the pieces of a job and draws the plan of the lay as a PDF, or for
the screen as plan.svg or plan.png. A job with several cloths gives a plan for
each: plan.pdf for the first, plan-lining.pdf for the lining. Each cloth is laid
in its first width unless --widths names another, and in the lay that needs the
least unless --lay does.

--full draws the marker at full size, to be laid on the cloth: for a plotter's
roll as PDF, SVG or HP-GL/2 (marker.plt), or on sheets that are joined. Where
the lay is longer than a page can be, it is cut where it cuts the fewest pieces.`,
		Example: `  ellwand marker blouse.yaml -o plan.pdf
  ellwand marker blouse.yaml -o plan.png
  ellwand marker blouse.yaml --full -o marker.plt --roll 1520mm
  ellwand marker blouse.yaml --full -o marker.pdf --paper a0
  ellwand marker blouse.yaml -o plan.pdf --widths 140cm --lay folded --paper letter`,
		Args: one("a job file"),
		RunE: func(cmd *cobra.Command, args []string) error {
			return e.marker(cmd, args[0], s, m)
		},
	}
	s.register(cmd)
	flags := cmd.Flags()
	flags.StringVarP(&m.output, "output", "o", "", "the file to write: plan.pdf, plan.svg or plan.png (required)")
	flags.StringSliceVar(&m.widths, "widths", nil, "width of the cloth instead of the job's; several: one for each cloth, in order")
	m.full.register(cmd)
	flags.StringVar(&m.lay, "lay", "", layWords()+"; the one that needs least cloth if not given")
	return cmd
}

func (e *env) marker(cmd *cobra.Command, path string, s search, m markerOptions) error {
	if err := s.check(); err != nil {
		return err
	}
	if m.output == "" {
		return fmt.Errorf("the plan needs a file to go to; for example: ellwand marker %s -o plan.pdf", path)
	}
	lay, err := parseLay(m.lay)
	if err != nil {
		return err
	}
	work, err := readJob(path)
	if err != nil {
		return err
	}
	files := &files.Set{Force: s.force, Input: path}
	if err := files.Check(m.output); err != nil {
		return err
	}
	cloths, err := markerCloths(work, m.widths)
	if err != nil {
		return err
	}
	as, err := m.planFile(cmd, work)
	if err != nil {
		return err
	}
	layouts, err := newLayoutPaths(s.layout, len(cloths))
	if err != nil {
		return err
	}
	if err := layouts.check(files, cloths); err != nil {
		return err
	}
	plans := make([]fabric.LayPlan, len(cloths))
	for i, cloth := range cloths {
		name := planName(m.output, cloth.Name, i)
		if err := files.Add(name, func(w io.Writer) error { return as.write(w, plans[i]) }); err != nil {
			return err
		}
		if err := as.checkPages(files, name); err != nil {
			return err
		}
	}
	e.warn(work)
	e.warnRemnants(work, path)
	e.warnLetters(work)
	for i, cloth := range cloths {
		need, err := e.require(cmd.Context(), work, cloth, s, nil, neededFor(lay)...)
		if err != nil {
			return err
		}
		if plans[i], err = planOf(need, lay); err != nil {
			return clothError(work, cloth, err)
		}
		if err := as.check(files, planName(m.output, cloth.Name, i), plans[i]); err != nil {
			return err
		}
		if lay != nil {
			need.Lays, need.Chosen = plans[i:i+1], 0
		}
		if err := layouts.add(files, need); err != nil {
			return err
		}
	}
	if err := files.Commit(); err != nil {
		return err
	}
	return e.printPlans(work, m.output, plans)
}

// parsePaper reads the name of a sheet.
func parsePaper(text string) (marker.Paper, error) {
	switch strings.ToLower(text) {
	case "a4":
		return marker.A4, nil
	case "letter":
		return marker.Letter, nil
	}
	return 0, fmt.Errorf("--paper %q is not known; use a4 or letter", text)
}

// layNames are the lays as they are written on the command line.
var layNames = []struct {
	name string
	lay  fabric.Lay
}{
	{"open", fabric.Open}, {"folded", fabric.FoldedAlong}, {"across", fabric.FoldedAcross}, {"turned", fabric.CutAcross},
	{"selvedge", fabric.SelvedgeIn}, {"middle", fabric.BothSelvedgesIn}, {"part", fabric.InStretches},
}

func layWords() string {
	var names []string
	for _, n := range layNames {
		names = append(names, n.name)
	}
	return strings.Join(names, ", ")
}

// parseLay reads the name of a lay, short or in full; nil leaves the choice
// open.
func parseLay(text string) (*fabric.Lay, error) {
	if text == "" {
		return nil, nil
	}
	for _, n := range layNames {
		if strings.EqualFold(text, n.name) || strings.EqualFold(text, n.lay.String()) {
			return &n.lay, nil
		}
	}
	return nil, fmt.Errorf("--lay %q is not known; use one of: %s", text, layWords())
}

// markerCloths gives each cloth its one width.
func markerCloths(work *job.Work, texts []string) ([]fabric.Cloth, error) {
	widths, err := parseWidths(texts, work.Unit)
	if err != nil {
		return nil, err
	}
	if len(widths) > 1 && len(widths) != len(work.Cloths) {
		return nil, fmt.Errorf("--widths names %d widths, but the job has %d cloths; give one width for all, or one for each", len(widths), len(work.Cloths))
	}
	single := *work
	single.Cloths = make([]job.Offer, len(work.Cloths))
	for i, offer := range work.Cloths {
		width := offer.Widths[0]
		switch len(widths) {
		case 0:
		case 1:
			width = widths[0]
		default:
			width = widths[i]
		}
		single.Cloths[i] = job.Offer{Cloth: offer.Cloth, Widths: []float64{width}}
	}
	return clothsAt(&single, nil)
}

// planName is the file of a cloth's plan: the name asked for the first cloth,
// with the cloth's name added for the others.
func planName(output, cloth string, index int) string {
	if index == 0 {
		return output
	}
	extension := filepath.Ext(output)
	return strings.TrimSuffix(output, extension) + "-" + slug(cloth) + extension
}

// neededFor a lay are the lays to solve: that one, and for a lay of two parts
// those that it may come down to. None means all.
func neededFor(lay *fabric.Lay) []fabric.Lay {
	switch {
	case lay == nil:
		return nil
	case *lay == fabric.SelvedgeIn || *lay == fabric.InStretches:
		return []fabric.Lay{fabric.Open, fabric.FoldedAlong, *lay}
	}
	return []fabric.Lay{*lay}
}

// planOf takes the lay that is asked for, or the recommended one.
func planOf(need fabric.Requirement, lay *fabric.Lay) (fabric.LayPlan, error) {
	if lay == nil {
		return need.Lays[need.Chosen], nil
	}
	for _, plan := range need.Lays {
		if plan.Lay != *lay {
			continue
		}
		if one := plan.Throughout; one != nil {
			one.Notes = append(one.Notes, fmt.Sprintf("Asked for was the lay %s: %s.", plan.Lay, plan.Impossible))
			return *one, nil
		}
		if !plan.Possible() {
			return plan, fmt.Errorf("it cannot be laid %s: %s", plan.Lay.Way(), plan.Impossible)
		}
		return plan, nil
	}
	return fabric.LayPlan{}, failure.Of(fmt.Errorf("the lay %s was not tried", *lay))
}

// plansReport is what marker prints as JSON.
type plansReport struct {
	Job   string       `json:"job"`
	Plans []planReport `json:"plans"`
}

type planReport struct {
	Cloth    string  `json:"cloth"`
	Lay      string  `json:"lay"`
	LengthMM float64 `json:"length_mm"`
	BuyMM    float64 `json:"buy_mm"`
	Pieces   int     `json:"pieces"`
	File     string  `json:"file"`
}

func (e *env) printPlans(work *job.Work, output string, plans []fabric.LayPlan) error {
	report := plansReport{Job: work.Name}
	t := screen.Table("cloth", "width", "lay", "length", "to buy", "plan")
	for i, plan := range plans {
		file := planName(output, plan.Cloth.Name, i)
		t.AppendRow(screen.Row(plan.Cloth.Name, work.Format(plan.Cloth.Width), plan.Lay.String(),
			work.FormatLong(plan.Taken), buyText(work, plan.Cloth, plan), file))
		report.Plans = append(report.Plans, planReport{
			Cloth: plan.Cloth.Name, Lay: plan.Lay.String(), LengthMM: tidy(plan.Taken),
			BuyMM: tidy(plan.Buy), Pieces: len(plan.Pieces), File: file,
		})
	}
	if e.json {
		return e.printJSON(report)
	}
	fmt.Fprintln(e.out, t.Render())
	return nil
}
