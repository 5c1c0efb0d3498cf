package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"slices"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/screen"
	"ellwand/cmd/ellwand/words"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

// markerOptions are the options of the marker command alone.
type markerOptions struct {
	output string
	width  []string
	widths []string // as scripts of old give them
	cloth  string
	offers []string
	full   fullOptions
	lay    string
}

func newMarker(e *env) *cobra.Command {
	var s layFlags
	var m markerOptions
	cmd := &cobra.Command{
		Use:   "marker JOB -o plan.pdf",
		Short: "Print the plan of the lay, to be chalked with a tape measure",
		Long: `Marker lays the pieces of a job and draws the plan of the lay as a PDF, or for
the screen as plan.svg or plan.png. A job with several cloths gives a plan for
each: plan.pdf for the first, plan-lining.pdf for the lining; --cloth draws one.
Each cloth is laid as it was quoted, on the same offer and in the same lay; on
the cheapest offer where it was not quoted; or as --offer, --width or --lay
says. The plan has the mark of the quote that it belongs to, and when the job
has changed since, you are told.

--full draws the marker at full size, to be laid on the cloth: for a plotter's
roll as PDF, SVG, DXF or HP-GL/2 (.plt), or on sheets that are joined. Where
the lay is longer than a page can be, it is cut where it cuts the fewest pieces.`,
		Example: `  ellwand marker blouse.yaml -o plan.pdf
  ellwand marker blouse.yaml -o plan.png
  ellwand marker blouse.yaml --full -o marker.plt --roll 1520mm
  ellwand marker blouse.yaml --full -o marker.pdf --paper a0
  ellwand marker blouse.yaml -o plan.pdf --width lining=140cm --lay folded --paper letter`,
		Args: one("a job file"),
		RunE: func(cmd *cobra.Command, args []string) error {
			return e.marker(cmd, args[0], s, m)
		},
	}
	s.register(cmd)
	s.from.registerFix(cmd, &s.Search)
	flags := cmd.Flags()
	flags.StringVarP(&m.output, "output", "o", "", "the file to write: "+endingsOf(false)+" (required)")
	flags.StringArrayVar(&m.width, "width", nil,
		"width to lay instead of the job's: 140cm for every cloth, lining=140cm for one")
	flags.StringArrayVar(&m.widths, "widths", nil, "one width for every cloth, or one for each, in order")
	_ = flags.MarkHidden("widths")
	flags.Var(limit.EntriesOf(&m.offers, limit.Offers), "offer",
		"offers to draw, by name, in place of those that the job is quoted on")
	flags.StringVar(&m.cloth, "cloth", "", "the cloth whose plan to draw; every one if not given")
	m.full.register(cmd)
	flags.StringVar(&m.lay, "lay", "", layWords()+"; the one that needs least cloth if not given")
	return cmd
}

func (e *env) marker(cmd *cobra.Command, path string, s layFlags, m markerOptions) error {
	if err := s.check(); err != nil {
		return err
	}
	if m.output == "" {
		return fmt.Errorf("the plan needs a file to go to; for example: ellwand marker %s -o plan.pdf", path)
	}
	kind, err := parseLay(m.lay)
	if err != nil {
		return err
	}
	ctx, cancel := s.within(cmd.Context())
	defer cancel()
	work, err := app.ReadJob(ctx, path)
	if err != nil {
		return err
	}
	out := &files.Set{Force: s.force, Input: path}
	if err := out.Check(m.output); err != nil {
		return err
	}
	drawn, err := e.toDraw(ctx, work, &s, m)
	if err != nil {
		return err
	}
	as, err := m.full.planFile(m.output, cmd, work)
	if err != nil {
		return err
	}
	d := planning{drawnCloths: drawn, work: work, s: s, kind: kind, as: as, out: out,
		plans: make([]app.Planned, len(drawn.cloths)), sinceQuote: drawn.quoted && len(m.offers) == 0 && kind == nil}
	if err := d.nameFiles(m.output); err != nil {
		return err
	}
	e.warn(work)
	e.notes(words.Remnants(work))
	e.notes(words.Letters(work))
	for i := range drawn.cloths {
		if err := e.draw(ctx, d, i); err != nil {
			return err
		}
	}
	if err := words.ProvenPlans(work, d.plans); err != nil {
		return failure.Of(err)
	}
	if err := out.Commit(); err != nil {
		return err
	}
	if e.json {
		return e.printJSON(report.PlansOf(work, d.plans, d.names))
	}
	screen.Plans(e.screen, work, d.plans, d.names)
	return nil
}

// toDraw are the cloths to draw, in the widths that are asked for; layouts that are
// brought in go into the search.
func (e *env) toDraw(ctx context.Context, work *job.Work, s *layFlags, m markerOptions) (drawnCloths, error) {
	if len(m.widths) > 0 {
		e.note("note: --widths is for the widths that estimate compares; here it is --width 140cm, " +
			"or --width lining=140cm for one cloth")
	}
	widths, err := m.clothWidths(work)
	if err != nil {
		return drawnCloths{}, err
	}
	drawn, err := m.drawn(work, widths, s.Fix)
	if err != nil {
		return drawn, err
	}
	if err := s.from.bringIn(ctx, work, app.EveryCloth(work, drawn.cloths), &s.Search); err != nil {
		return drawn, err
	}
	if drawn.quoted {
		err = e.quotedOn(ctx, work, &drawn, *s, m)
	}
	return drawn, err
}

// planning is how the plans of some cloths are drawn, and into which files.
type planning struct {
	drawnCloths
	work *job.Work
	s    layFlags
	// kind of lay; nil is the one that needs least.
	kind    *lay.Kind
	as      planFile
	layouts layoutPaths
	out     *files.Set
	names   []string
	plans   []app.Planned
	// sinceQuote says that the plans are told from those that were quoted.
	sinceQuote bool
}

// nameFiles gives each plan and its layout a file, all of which are checked.
func (d *planning) nameFiles(output string) error {
	var err error
	if d.layouts, err = newLayoutPaths(d.s.layout, len(d.cloths)); err != nil {
		return err
	}
	if err := d.layouts.check(d.out, d.cloths); err != nil {
		return err
	}
	for i, cloth := range d.cloths {
		name := planName(output, cloth.Name, i)
		d.names = append(d.names, name)
		if err := d.out.Add(name, func(w io.Writer) error { return d.as.write(w, d.plans[i].Plan) }); err != nil {
			return err
		}
		if err := d.as.checkPages(d.out, name); err != nil {
			return err
		}
	}
	return nil
}

// draw lays one of the cloths, and says what is to be known of it.
func (e *env) draw(ctx context.Context, d planning, i int) error {
	plan, err := e.plan(ctx, d.work, d.drawnCloths, i, d.kind, d.s)
	if err != nil {
		return err
	}
	if d.sinceQuote {
		plan.SinceQuote, plan.Quoted = app.SinceQuote(d.work, d.s.Search, plan)
		e.notes(words.SinceQuote(d.work, plan))
	}
	if plan.InsteadOf != nil {
		e.note("note: %s", words.InsteadOf(plan))
	}
	d.plans[i] = plan
	if err := d.as.check(d.out, d.names[i], plan.Plan); err != nil {
		return err
	}
	return d.layouts.add(d.out, plan.Need)
}

// clothWidths replace those of the job.
func (m markerOptions) clothWidths(work *job.Work) ([]float64, error) {
	if len(m.widths) > 0 {
		return parseWidths(m.widths, work.Unit)
	}
	return widthsByCloth(m.width, work)
}

// drawnCloths are the cloths to draw; those that the job is quoted on have been laid for that.
type drawnCloths struct {
	cloths []cloth.Cloth
	quoted bool
	found  []app.Estimated
}

// drawn are the cloths in the widths given; without any, those that the job is quoted
// on, or its first.
func (m markerOptions) drawn(work *job.Work, widths []float64, fix []string) (drawnCloths, error) {
	given := slices.Max(append(widths, 0)) > 0
	if given && len(m.offers) > 0 {
		return drawnCloths{}, errors.New("--width and --offer both say which cloth is drawn; give one of them")
	}
	cloths, err := app.OneWidthEach(work, widths)
	if err == nil {
		cloths, err = app.OnlyCloth(work, cloths, m.cloth)
	}
	priced, several := app.IsPriced(work)
	quoted := len(m.offers) > 0 || priced && (several || m.lay == "")
	return drawnCloths{cloths: cloths, quoted: quoted && !given && len(fix) == 0}, err
}

// quotedOn lays the cloths as the job is quoted.
func (e *env) quotedOn(ctx context.Context, work *job.Work, d *drawnCloths, s layFlags, m markerOptions) error {
	watch, done := e.watch(work)
	defer done()
	var err error
	d.found, err = app.QuotedOn(ctx, work, m.cloth, m.offers, s.Search, watch)
	d.cloths = nil
	for _, one := range d.found {
		d.cloths = append(d.cloths, one.Cloth)
	}
	return err
}

// plan lays one of the cloths drawn, and shows how it goes.
func (e *env) plan(ctx context.Context, work *job.Work, d drawnCloths, i int, kind *lay.Kind, s layFlags) (app.Planned,
	error) {
	watch, done := e.watch(work)
	defer done()
	var plan app.Planned
	var err error
	if d.quoted && kind == nil {
		plan, err = app.PlanOf(work, d.found[i], nil)
	} else {
		plan, err = app.Plan(ctx, work, d.cloths[i], kind, s.Search, watch)
	}
	if plan.Ended.Early {
		done()
		e.note("note: %s", words.EndedEarly(work, d.cloths[i], plan.Ended))
	}
	return plan, err
}
