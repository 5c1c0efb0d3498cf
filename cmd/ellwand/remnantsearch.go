package main

import (
	"fmt"
	"reflect"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/screen"
	"ellwand/fabric"
	"ellwand/fabric/remnant"
	"ellwand/nest"
)

// askRemnant asks about one cloth, and when it is not enough, for ways out.
func (e *env) askRemnant(cmd *cobra.Command, file *job.File, work *job.Work, a *asked, s search, lay *fabric.Lay, limits remnantLimits) error {
	bar := screen.NewProgress(e.err, e.quiet)
	defer bar.Done()
	ctx := cmd.Context()
	question := remnant.Question{Cloth: a.cloth, Length: a.length, Offcuts: a.row, Pieces: work.PiecesOf(a.cloth.Name)}
	if lay != nil {
		question.Lays = []fabric.Lay{*lay}
	}
	if fabric.MustLieOpen(a.offcuts) {
		if lay != nil && *lay != fabric.Open {
			return fmt.Errorf("%s: the remnants of cloth %q are of unlike widths or no rectangles, so that no one fold halves them; leave --lay out", work.File, a.cloth.Name)
		}
		question.Lays = []fabric.Lay{fabric.Open}
	}
	var err error
	a.fit, err = fabric.Fit(ctx, fabric.Remnant{Cloth: a.cloth, Length: a.length, Offcuts: a.row}, question.Pieces, fabric.Options{
		Time: s.time, Seed: s.seed, Workers: s.workers, Lays: question.Lays,
		Progress: func(lay fabric.Lay, p nest.Progress) {
			title := fmt.Sprintf("%s %s, %s", a.cloth.Name, work.Format(a.cloth.Width), lay)
			bar.Show(title, work.FormatLong(p.Length), work.FormatLong(p.Bound), p.Elapsed)
		},
	})
	switch {
	case err != nil:
		return clothError(work, a.cloth, err)
	case a.fit.Answer == fabric.Enough:
		return nil
	case ctx.Err() != nil:
		bar.Done()
		e.note("note: %s: the search was ended early; what would make it fit was not looked for", a.cloth.Name)
		return nil
	}
	changes := remnant.Changes(question, limits.Limits, shortenings(file, work, limits), smallerSizes(file))
	a.ways, err = remnant.Search(ctx, question, changes, remnant.Options{
		Time: s.time, Seed: s.seed, Workers: s.workers, Known: a.fit.Plan,
		Trying: func(c remnant.Change) {
			what := c.Say(c.Most, work.Format)
			a.tried = append(a.tried, what)
			bar.Trying(what)
		},
	})
	if err != nil {
		return clothError(work, a.cloth, err)
	}
	return nil
}

// mostShortens is the share of its length that a garment is shortened by at
// most: more would be another garment.
const mostShortens = 0.15

// shortenings draft each part of a garment shorter.
func shortenings(file *job.File, work *job.Work, limits remnantLimits) []remnant.Change {
	var out []remnant.Change
	for _, s := range work.Shortenings {
		what := fmt.Sprintf("%s of the %s", s.Part, s.Garment)
		if s.Part == "whole" || s.Part == s.Garment {
			what = s.Garment
		}
		out = append(out, remnant.Change{
			Kind: "shorten", Step: limits.Step, Most: remnant.WholeSteps(min(limits.shorten, mostShortens*s.Length), limits.Step),
			Make: func(q remnant.Question, by float64) (remnant.Question, bool) {
				shorter, err := file.Shortened(s, by)
				return redrafted(q, shorter, err)
			},
			Say: func(by float64, length func(float64) string) string {
				return fmt.Sprintf("shorten the %s by %s", what, length(by))
			},
		})
	}
	return out
}

// smallerSizes are the next two down.
func smallerSizes(file *job.File) []remnant.Change {
	const most = 2
	var out []remnant.Change
	for i, size := range file.SmallerSizes() {
		if i == most {
			break
		}
		out = append(out, remnant.Change{
			Kind: "size",
			Make: func(q remnant.Question, _ float64) (remnant.Question, bool) {
				smaller, err := file.InSize(size)
				return redrafted(q, smaller, err)
			},
			Say: func(float64, func(float64) string) string {
				return fmt.Sprintf("make size %s instead of %s", size, string(file.Size))
			},
		})
	}
	return out
}

// redrafted puts new pieces into a question. What cannot be drafted, or leaves
// the pieces of this cloth as they are, changes nothing.
func redrafted(q remnant.Question, work *job.Work, err error) (remnant.Question, bool) {
	if err != nil {
		return q, false
	}
	before := q.Pieces
	q.Pieces = work.PiecesOf(q.Cloth.Name)
	return q, !reflect.DeepEqual(before, q.Pieces)
}
