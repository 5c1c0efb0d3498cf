package main

import (
	"context"
	"errors"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/screen"
	"ellwand/cmd/ellwand/words"
	"ellwand/cmd/ellwand/words/reason"
)

func newEstimate(e *env) *cobra.Command {
	var s layFlags
	var widths []string
	var t tableOptions
	var why bool
	cmd := &cobra.Command{
		Use:   "estimate JOB",
		Short: "Say how much of each cloth to buy",
		Long: `Estimate lays the pieces of a job on each of its cloths, open and in every way
of folding, and says how long the cloth must be, how much to buy and how many
outlines there are to cut. "Never below" is a length that no way of laying can
beat.

With --table it prints what stands on a pattern's envelope: a row for each
garment, or for each size, with and without nap, and a column for each width.
What was found is kept in your cache folder, so that the same answer comes at
once the next time, from every command; --anew searches again.`,
		Example: `  ellwand estimate blouse.yaml
  ellwand estimate blouse.yaml --widths 115cm,140cm,150cm --effort long
  ellwand estimate skirt.yaml --table --sizes 8,12,16 --widths 115cm,150cm -o table.pdf`,
		Args: one("a job file"),
		RunE: func(cmd *cobra.Command, args []string) error {
			if !t.wanted {
				if err := t.unused(cmd); err != nil {
					return err
				}
				return e.estimate(cmd.Context(), args[0], s, widths, why)
			}
			if s.layout != "" {
				return errors.New("--layout goes with a plain estimate; a table has no layouts to write")
			}
			t.widths = widths
			return e.requirementTable(cmd, args[0], s.searchFlags, t)
		},
	}
	s.register(cmd)
	s.from.registerFix(cmd, &s.Search)
	cmd.Flags().StringArrayVar(&widths, "widths", nil, "widths to compare instead of the job's: 115cm,140cm or 45in,60in")
	cmd.Flags().BoolVar(&why, "why", false, "say as well why other lays cannot be, and how the cloth is spread")
	t.register(cmd)
	return cmd
}

func (e *env) estimate(ctx context.Context, path string, s layFlags, widthTexts []string, why bool) error {
	if err := s.check(); err != nil {
		return err
	}
	ctx, cancel := s.within(ctx)
	defer cancel()
	work, err := app.ReadJob(ctx, path)
	if err != nil {
		return err
	}
	widths, err := parseWidths(widthTexts, work.Unit)
	if err != nil {
		return err
	}
	cloths, err := app.Cloths(work, widths)
	if err != nil {
		return err
	}
	if err := s.from.bringIn(ctx, work, cloths, &s.Search); err != nil {
		return err
	}
	out := &files.Set{Force: s.force, Input: path}
	layouts, err := newLayoutPaths(s.layout, len(cloths))
	if err != nil {
		return err
	}
	if err := layouts.check(out, cloths); err != nil {
		return err
	}
	e.warn(work)
	e.notes(words.Remnants(work))
	watch, done := e.watch(work)
	defer done()
	found, err := app.Estimate(ctx, work, cloths, s.Search, watch)
	if err != nil {
		return err
	}
	done()
	if err := words.Proven(work, found); err != nil {
		return failure.Of(err)
	}
	for _, one := range found {
		if one.Ended.Early {
			e.note("note: %s", words.EndedEarly(work, one.Cloth, one.Ended))
		}
		if err := layouts.add(out, one.Requirement); err != nil {
			return err
		}
	}
	if err := out.Commit(); err != nil {
		return err
	}
	if e.json {
		e.noteImpossible(work, found)
		return e.printJSON(report.EstimateOf(work, found))
	}
	screen.Estimate(e.screen, work, found, why)
	return nil
}

// noteImpossible says beside the JSON, which lists the possible lays alone,
// why others are not.
func (e *env) noteImpossible(work *job.Work, found []app.Estimated) {
	for _, need := range found {
		for _, line := range reason.WhyNot(need.Lays) {
			e.note("note: %s, %s wide, %s", need.Cloth.Name, work.Format(need.Cloth.Width), line)
		}
	}
}
