package main

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric"
	"ellwand/fabric/remnant"
	"ellwand/pieces/measure"
)

// remnantOptions are the options of the remnant command alone.
type remnantOptions struct {
	length, width, cloth, lay string
	leastSeam, shorten        string
	output, paper             string
}

// remnantTime is for one cloth: for the question, and as much again for what
// would make it fit.
const remnantTime = 20 * time.Second

func newRemnant(e *env) *cobra.Command {
	var s search
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
  ellwand remnant skirt.yaml --length 130cm --width 140cm --time 1m -o plan.pdf`,
		Args: one("a job file"),
		RunE: func(cmd *cobra.Command, args []string) error {
			return e.remnant(cmd, args[0], s, o)
		},
	}
	s.register(cmd)
	s.time = remnantTime
	flags := cmd.Flags()
	time := flags.Lookup("time")
	time.Usage, time.DefValue = "time to look for a layout, and as much again for what would make it fit", remnantTime.String()
	flags.StringVar(&o.length, "length", "", "length of the cloth, such as 1.6m or 1 3/4 yd; the job's if not given")
	flags.StringVar(&o.width, "width", "", "width of the cloth; the job's if not given")
	flags.StringVar(&o.cloth, "cloth", "", "which cloth of the job it is; every one that has a length if not given")
	flags.StringVar(&o.lay, "lay", "", layWords()+"; folded or open, whichever fits, if not given")
	flags.StringVar(&o.leastSeam, "least-seam", "", "least seam allowance to go down to; 1 cm or 3/8 in if not given")
	flags.StringVar(&o.shorten, "shorten", "", "most to shorten a garment by; 10 cm or 4 in if not given")
	flags.StringVarP(&o.output, "output", "o", "", "the PDF to draw the plan in; what would make it fit goes to NAME-1.pdf, NAME-2.pdf")
	flags.StringVar(&o.paper, "paper", "a4", "a4 or letter")
	return cmd
}

// asked is one cloth that is asked about, and what came of it.
type asked struct {
	cloth  fabric.Cloth
	length float64
	// pieces of cloth that are asked about together; empty for a single one.
	offcuts []fabric.Offcut
	row     []fabric.OffcutPlace
	fit     fabric.RemnantFit
	tried   []string // what might have made it fit, in words
	ways    []remnant.Remedy
}

func (e *env) remnant(cmd *cobra.Command, path string, s search, o remnantOptions) error {
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
	work, err := file.Resolve()
	if err != nil {
		return err
	}
	limits, err := o.limits(work)
	if err != nil {
		return err
	}
	all, err := o.cloths(work)
	if err != nil {
		return err
	}
	files := &files.Set{Force: s.force, Input: path}
	out := remnantFiles{s: s, o: o, paper: paper, work: work, files: files, cloths: len(all)}
	if err := out.check(all); err != nil {
		return err
	}
	e.warn(work)
	if o.output != "" {
		e.warnLetters(work)
	}
	for i := range all {
		if err := e.askRemnant(cmd, file, work, &all[i], s, lay, limits); err != nil {
			return err
		}
		if err := out.add(all[i], i); err != nil {
			return err
		}
	}
	if err := files.Commit(); err != nil {
		return err
	}
	if e.json {
		if err := e.printJSON(remnantReportOf(work, all)); err != nil {
			return err
		}
	} else {
		e.printRemnants(work, all, s.time)
	}
	return verdict(all)
}

// verdict is an error when a cloth is not enough.
func verdict(all []asked) error {
	var short []string
	for _, a := range all {
		if a.fit.Answer != fabric.Enough {
			short = append(short, a.cloth.Name)
		}
	}
	if len(short) == 0 {
		return nil
	}
	return &no{"the answer is no: " + strings.Join(short, " and ")}
}

// cloths says which pieces of cloth are asked about.
func (o remnantOptions) cloths(work *job.Work) ([]asked, error) {
	var names []string
	var offers []job.Offer
	for _, offer := range work.Cloths {
		names = append(names, offer.Cloth.Name)
		if o.cloth == "" || job.Slug(offer.Cloth.Name) == job.Slug(o.cloth) {
			offers = append(offers, offer)
		}
	}
	if len(offers) == 0 {
		return nil, fmt.Errorf("--cloth %q: the job has no such cloth; it has %s", o.cloth, strings.Join(names, " and "))
	}
	if o.length != "" || o.width != "" {
		if len(offers) > 1 {
			return nil, fmt.Errorf("the job has %d cloths; say which one the piece is of: --cloth %s", len(offers), strings.Join(names, " or --cloth "))
		}
	} else if len(offers) > 1 {
		offers = slices.DeleteFunc(offers, func(offer job.Offer) bool { return offer.Length == 0 && len(offer.Remnants) == 0 })
	}
	if len(offers) == 0 {
		return nil, fmt.Errorf("%s: no cloth has a length; add length: to the cloth that is there already, or ask with --cloth %s --length 1.6m", work.File, names[0])
	}
	var out []asked
	for _, offer := range offers {
		one, err := o.asked(work, offer)
		if err != nil {
			return nil, err
		}
		out = append(out, one)
	}
	return out, nil
}

func (o remnantOptions) asked(work *job.Work, offer job.Offer) (asked, error) {
	name := offer.Cloth.Name
	if len(offer.Remnants) > 0 && o.length == "" && o.width == "" {
		together, err := fabric.Together(offer.Cloth, offer.Remnants)
		if err != nil {
			return asked{}, fmt.Errorf("%s: %w", work.File, err)
		}
		return asked{cloth: together.Cloth, length: together.Length, offcuts: offer.Remnants, row: together.Offcuts}, nil
	}
	length, err := o.measure(work, "--length", o.length, offer.Length)
	switch {
	case err != nil:
		return asked{}, err
	case length == 0:
		return asked{}, fmt.Errorf("%s: the length of cloth %q is not known; add length: to it, or ask with --length 1.6m", work.File, name)
	case o.width == "" && len(offer.Widths) > 1:
		return asked{}, fmt.Errorf("%s: cloth %q has %d widths; say which one the piece has: --width %s", work.File, name, len(offer.Widths), strings.ReplaceAll(work.Format(offer.Widths[0]), " ", ""))
	}
	width, err := o.measure(work, "--width", o.width, offer.Widths[0])
	if err != nil {
		return asked{}, err
	}
	single := *work
	single.Cloths = []job.Offer{{Cloth: offer.Cloth, Widths: []float64{width}}}
	cloths, err := clothsAt(&single, nil)
	if err != nil {
		return asked{}, err
	}
	return asked{cloth: cloths[0], length: length}, nil
}

// measure reads a positive length of the command line; the usual one when it
// is not given.
func (o remnantOptions) measure(work *job.Work, flag, text string, usual float64) (float64, error) {
	if text == "" {
		return usual, nil
	}
	value, err := measure.Parse(text, work.Unit)
	if err != nil {
		return 0, fmt.Errorf("%s: %w", flag, err)
	}
	if value <= 0 {
		return 0, fmt.Errorf("%s: %s is no length; it must be above 0, such as 1.6m", flag, text)
	}
	return float64(value), nil
}

// remnantLimits of what may be given up.
type remnantLimits struct {
	remnant.Limits
	shorten float64
}

// limits reads them, or takes the usual ones (common practice): 2 cm, or
// 3/4 in, is the least of a hem that is turned twice.
func (o remnantOptions) limits(work *job.Work) (remnantLimits, error) {
	seam, shorten, hem, step := 10.0, 100.0, 20.0, 5.0
	if inches := work.Unit == measure.Inch || work.Unit == measure.Yard; inches {
		seam, shorten, hem, step = 25.4*3/8, 25.4*4, 25.4*3/4, 25.4/4
	}
	var err error
	out := remnantLimits{Limits: remnant.Limits{Hem: hem, Step: step}}
	if out.SeamAllowance, err = o.measure(work, "--least-seam", o.leastSeam, seam); err != nil {
		return out, err
	}
	out.shorten, err = o.measure(work, "--shorten", o.shorten, shorten)
	return out, err
}
