package main

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/screen"
	"ellwand/fabric"
	"ellwand/nest"
	"ellwand/pieces/measure"
)

// readJob reads a job file and drafts its pieces.
func readJob(path string) (*job.Work, error) {
	file, err := job.Read(path)
	if err != nil {
		return nil, err
	}
	return file.Resolve()
}

// clothsAt gives the cloths of a job in the widths asked: those of the job, or
// the given ones in place of them.
func clothsAt(work *job.Work, widths []float64) ([]fabric.Cloth, error) {
	var out []fabric.Cloth
	for _, offer := range work.Cloths {
		chosen := offer.Widths
		if len(widths) > 0 {
			chosen = widths
		}
		for _, width := range chosen {
			cloth := offer.Cloth
			cloth.Width = width
			if width <= 2*cloth.Selvedge {
				return nil, fmt.Errorf("cloth %q: a width of %s leaves nothing between selvedges of %s; give the width from edge to edge",
					cloth.Name, measure.Length(width).Format(work.Unit), measure.Length(cloth.Selvedge).Format(work.Unit))
			}
			out = append(out, cloth)
		}
	}
	return out, nil
}

// parseWidths reads a list such as "115cm,140cm,150cm".
func parseWidths(list []string, unit measure.Unit) ([]float64, error) {
	var out []float64
	for _, text := range list {
		width, err := measure.Parse(strings.TrimSpace(text), unit)
		if err != nil {
			return nil, fmt.Errorf("--widths: %w", err)
		}
		if width <= 0 {
			return nil, fmt.Errorf("--widths: a width of %s is no cloth; give it from edge to edge, such as 140cm", text)
		}
		out = append(out, float64(width))
	}
	return out, nil
}

// require finds the lays of one cloth, all or those named, with progress under
// its name. Known plans, of a narrower width for instance, are where the
// searches start.
func (e *env) require(ctx context.Context, work *job.Work, cloth fabric.Cloth, s search, known []fabric.LayPlan, lays ...fabric.Lay) (fabric.Requirement, error) {
	bar := screen.NewProgress(e.err, e.quiet)
	defer bar.Done()
	need, err := fabric.Require(ctx, cloth, work.PiecesOf(cloth.Name), fabric.Options{
		Time: s.time, Seed: s.seed, Workers: s.workers, Lays: lays, Known: known,
		Progress: func(lay fabric.Lay, p nest.Progress) {
			title := fmt.Sprintf("%s %s, %s", cloth.Name, work.Format(cloth.Width), lay)
			bar.Show(title, work.FormatLong(p.Length), work.FormatLong(p.Bound), p.Elapsed)
		},
	})
	switch {
	case err != nil:
		return need, clothError(work, cloth, err)
	case ctx.Err() != nil:
		bar.Done()
		e.note("note: %s, %s wide: the search was ended early; this is the best it had found", cloth.Name, work.Format(cloth.Width))
	}
	return need, nil
}

// requireAll finds the lays of all cloths. A cloth in several widths is laid
// from the narrowest on, and what was found on a narrower one is where the next
// begins, so that no width takes more than a narrower one in the same lay.
func (e *env) requireAll(ctx context.Context, work *job.Work, cloths []fabric.Cloth, s search) ([]fabric.Requirement, error) {
	order := make([]int, len(cloths))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(cloths[a].Width, cloths[b].Width) })
	needs := make([]fabric.Requirement, len(cloths))
	narrower := map[string][]fabric.LayPlan{}
	for _, i := range order {
		name := cloths[i].Name
		need, err := e.require(ctx, work, cloths[i], s, narrower[name])
		if err != nil {
			return nil, err
		}
		needs[i] = need
		if cloths[i].Repeat.IsPlain() { // a repeat lies otherwise to the fold of another width
			narrower[name] = append(narrower[name], need.Lays...)
		}
	}
	return needs, nil
}

// clothError says which cloth an error is about, and sets apart those that are
// the program's own fault.
func clothError(work *job.Work, cloth fabric.Cloth, err error) error {
	if errors.Is(err, fabric.ErrInternal) {
		err = failure.Of(err)
	}
	return fmt.Errorf("%s: cloth %q, %s wide: %w", work.File, cloth.Name, work.Format(cloth.Width), err)
}

// layoutName names the layout file of a lay: "shell-1400mm-open.json".
func layoutName(plan fabric.LayPlan) string {
	return fmt.Sprintf("%s-%.0fmm-%s.json", slug(plan.Cloth.Name), plan.Cloth.Width, slug(plan.Lay.String()))
}

// slug makes a file name of a name: letters and digits of any script, with
// hyphens for the rest.
func slug(name string) string {
	return job.Slug(name)
}
