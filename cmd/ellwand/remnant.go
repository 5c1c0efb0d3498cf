package main

import (
	"context"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/screen"
	"ellwand/cmd/ellwand/words"
	"ellwand/fabric/cloth"
	"ellwand/fabric/remnant"
)

// remnantOptions are the options of the remnant command alone.
type remnantOptions struct {
	length, width, cloth, lay string
	leastSeam, shorten        string
	output, paper             string
	why                       bool
}

func newRemnant(e *env) *cobra.Command {
	var s layFlags
	var o remnantOptions
	cmd := &cobra.Command{
		Use:   "remnant JOB",
		Short: "Ask whether a piece of cloth is enough",
		Long: `Remnant asks whether a piece of cloth that is there already is enough for a
job, and answers in one of three ways: yes, with the layout and what is left
over; it cannot be, with the proof; or not found within the time, with the
closest try. When it is not yes, it looks for what would make it fit, in the
order of least harm, and shows the first few that do, each proven by a layout.

The length of the cloth stands in the job, as length: under its cloth, or after
--length. The exit status is 0 for yes and 3 for no.`,
		Example: `  ellwand remnant blouse.yaml --cloth shell --length 1.6m
  ellwand remnant skirt.yaml --length 130cm --width 140cm --effort long -o plan.pdf`,
		Args: one("a job file"),
		RunE: func(cmd *cobra.Command, args []string) error {
			return e.remnant(cmd.Context(), args[0], s, o)
		},
	}
	s.register(cmd)
	s.from.registerFix(cmd, &s.Search)
	flags := cmd.Flags()
	flags.StringVar(&o.length, "length", "", "length of the cloth, such as 1.6m or 1 3/4 yd; the job's if not given")
	flags.StringVar(&o.width, "width", "", "width of the cloth; the job's if not given")
	flags.StringVar(&o.cloth, "cloth", "", "which cloth of the job it is; every one that has a length if not given")
	flags.StringVar(&o.lay, "lay", "", layWords()+"; folded or open, whichever fits, if not given")
	flags.StringVar(&o.leastSeam, "least-seam", "", "least seam allowance to go down to; 1 cm or 3/8 in if not given")
	flags.StringVar(&o.shorten, "shorten", "", "most to shorten a garment by; 10 cm or 4 in if not given")
	flags.StringVarP(&o.output, "output", "o", "",
		"the PDF to draw the plan in; what would make it fit goes to NAME-1.pdf, NAME-2.pdf")
	flags.BoolVar(&o.why, "why", false, "say as well why another lay cannot be, and all that was tried")
	flags.StringVar(&o.paper, "paper", "a4", "a4 or letter")
	return cmd
}

func (e *env) remnant(ctx context.Context, path string, s layFlags, o remnantOptions) error {
	if err := s.check(); err != nil {
		return err
	}
	paper, err := parsePaper(o.paper)
	if err != nil {
		return err
	}
	lay, err := parseLay(o.lay)
	if err != nil {
		return err
	}
	file, err := job.Read(path)
	if err != nil {
		return err
	}
	ctx, cancel := s.within(ctx)
	defer cancel()
	file = file.Within(ctx)
	work, err := file.Resolve()
	if err != nil {
		return err
	}
	if err := s.from.read(&s.Search); err != nil {
		return err
	}
	limits, err := o.limits(work)
	if err != nil {
		return err
	}
	cloths, err := o.cloths(work)
	if err != nil {
		return err
	}
	if err := checkStays(ctx, work, cloths, s.Search); err != nil {
		return err
	}
	out := remnantFiles{s: s, output: o.output, paper: paper, work: work, out: &files.Set{Force: s.force, Input: path},
		cloths: len(cloths)}
	if err := out.check(cloths); err != nil {
		return err
	}
	e.warnPaper(work, o.output != "")
	answers := make([]app.RemnantAnswer, len(cloths))
	for i, cloth := range cloths {
		ask := func(watch app.Watch) (app.RemnantAnswer, error) {
			return app.Remnant(ctx, file, work, cloth, lay, limits, s.Search, watch)
		}
		if answers[i], err = e.ask(work, ask); err != nil {
			return err
		}
		if err := words.ProvenRemnant(work, answers[i]); err != nil {
			return failure.Of(err)
		}
		if err := out.add(answers[i], i); err != nil {
			return err
		}
	}
	if err := out.out.Commit(); err != nil {
		return err
	}
	if err := e.tellRemnants(work, answers, s.Search, o.why); err != nil {
		return err
	}
	return verdict(answers)
}

// checkStays refuses to keep what no layout has, or what lies on another cloth.
func checkStays(ctx context.Context, work *job.Work, all []app.PieceOfCloth, search app.Search) error {
	if len(search.Fix) == 0 {
		return nil
	}
	var cloths []cloth.Cloth
	for _, one := range all {
		cloths = append(cloths, one.Cloth)
	}
	return app.CheckFrom(ctx, work, cloths, search)
}

// tellRemnants shows the answers, as a document where that is asked for.
func (e *env) tellRemnants(work *job.Work, answers []app.RemnantAnswer, search app.Search, why bool) error {
	if e.json {
		return e.printJSON(report.RemnantOf(work, answers))
	}
	screen.Remnants(e.screen, work, answers, search, why)
	return nil
}

// ask about one cloth, and show how it goes.
func (e *env) ask(work *job.Work, ask func(app.Watch) (app.RemnantAnswer, error)) (app.RemnantAnswer, error) {
	watch, done := e.watch(work)
	defer done()
	answer, err := ask(watch)
	if answer.Ended.Early {
		done()
		how := "was not looked for"
		if len(answer.Tried) > 0 {
			how = "was not looked for to the end"
		}
		e.note("note: %s: the search was ended early; what would make it fit %s", answer.Cloth.Name, how)
	}
	return answer, err
}

// verdict is an error when a cloth is not enough.
func verdict(all []app.RemnantAnswer) error {
	var short []string
	for _, a := range all {
		if a.Fit.Answer != remnant.Enough {
			short = append(short, a.Cloth.Name)
		}
	}
	if len(short) == 0 {
		return nil
	}
	return &no{"the answer is no: " + strings.Join(short, " and ")}
}

// cloths says which pieces of cloth are asked about.
func (o remnantOptions) cloths(work *job.Work) ([]app.PieceOfCloth, error) {
	length, err := parseLength("--length", o.length, work.Unit)
	if err == nil {
		err = inMetres("--length", o.length, work.Unit)
	}
	if err != nil {
		return nil, err
	}
	width, err := parseLength("--width", o.width, work.Unit)
	if err == nil {
		err = inMetres("--width", o.width, work.Unit)
	}
	if err != nil {
		return nil, err
	}
	return app.PiecesOfCloth(work, app.RemnantQuestion{Cloth: o.cloth, Length: length, Width: width})
}

// limits of what may be given up: the usual ones, but for those given.
func (o remnantOptions) limits(work *job.Work) (app.Limits, error) {
	out := app.UsualLimits(work)
	seam, err := parseLength("--least-seam", o.leastSeam, work.Unit)
	if err != nil {
		return out, err
	}
	shorten, err := parseLength("--shorten", o.shorten, work.Unit)
	if err != nil {
		return out, err
	}
	if seam > 0 {
		out.SeamAllowance = seam
	}
	if shorten > 0 {
		out.Shorten = shorten
	}
	return out, nil
}
