package printing

import (
	"context"
	"errors"
	"io"
	"math"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	onpaper "ellwand/fabric/marker"
	"ellwand/fabric/plotter"
	"ellwand/pieces/paper"
)

// plan of a lay, to be chalked with a tape measure.
func plan(ctx context.Context, work *job.Work, asked Asked) (func(io.Writer) error, error) {
	planned, err := asked.planned(ctx, work)
	if err != nil {
		return nil, err
	}
	options := onpaper.Options{Job: work.Title(), Paper: asked.small(), Inches: work.InInches(), Youngest: work.Youngest}
	err = errors.Join(check.Plan(planned.Plan, planned.Plan.Asked), onpaper.Proven(planned.Plan, options))
	if err != nil {
		return nil, failure.Of(err)
	}
	return func(w io.Writer) error { return onpaper.Write(w, planned.Plan, options) }, nil
}

// marker at full size: on a plotter's roll, or on sheets when a paper is named.
func marker(ctx context.Context, work *job.Work, asked Asked) (func(io.Writer) error, error) {
	options := plotter.Options{Job: work.Title(), Inches: work.InInches(), Youngest: work.Youngest}
	options.Paper = paper.Paper{Margin: margin, Overlap: overlap}
	if asked.Paper != "" {
		sheets, _, err := asked.sheets(work)
		if err != nil {
			return nil, err
		}
		options.Paper = sheets
	}
	if err := options.Check(); err != nil {
		return nil, err
	}
	planned, err := asked.planned(ctx, work)
	if err != nil {
		return nil, err
	}
	if err := check.Plan(planned.Plan, planned.Plan.Asked); err != nil {
		return nil, failure.Of(err)
	}
	return func(w io.Writer) error { return plotter.Write(w, planned.Plan, options) }, nil
}

// planned is the lay that is printed: the one asked for; or as the job is quoted; or the
// best of the cloth's first width.
func (a Asked) planned(ctx context.Context, work *job.Work) (app.Planned, error) {
	kind, err := a.kind()
	if err != nil {
		return app.Planned{}, err
	}
	priced, several := app.IsPriced(work)
	if priced && a.Width == "" && (several || kind == nil) {
		found, err := app.QuotedOn(ctx, work, a.Cloth, nil, a.Search, app.Watch{})
		if err != nil {
			return app.Planned{}, err
		}
		return app.PlanOf(work, found[0], kind)
	}
	c, err := a.cloth(work)
	if err != nil {
		return app.Planned{}, err
	}
	return app.Plan(ctx, work, c, kind, a.Search, app.Watch{})
}

// kind of lay asked for; nil for the best.
func (a Asked) kind() (*lay.Kind, error) {
	if a.Lay == "" {
		return nil, nil
	}
	kind, known := lay.Named(a.Lay)
	if !known {
		return nil, errors.New("there is no such way of laying a cloth; go back to the lay, and choose one there")
	}
	return &kind, nil
}

// cloth in the width asked for, or in its first.
func (a Asked) cloth(work *job.Work) (cloth.Cloth, error) {
	cloths, err := app.OneWidthEach(work, nil)
	if a.Width != "" {
		cloths, err = app.Cloths(work, nil)
	}
	if err != nil {
		return cloth.Cloth{}, err
	}
	for _, c := range cloths {
		isNamed := a.Cloth == "" || c.Name == a.Cloth
		if isNamed && (a.Width == "" || math.Abs(c.Width-a.width()) < nearly) {
			return c, nil
		}
	}
	return cloth.Cloth{}, errors.New("the job has no such cloth any more; go back to the lay, and choose one there")
}

// nearly is how far a width in an address may lie off, mm [source.OwnChoice].
const nearly = 0.06
