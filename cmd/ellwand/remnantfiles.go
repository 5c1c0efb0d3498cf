package main

import (
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/marker"
	"ellwand/fabric/remnant"
	"ellwand/pieces/paper"
)

// remnantFiles says where plans and layouts go: the answer's under the name
// asked, those of what would make it fit with a number after it.
type remnantFiles struct {
	s      layFlags
	output string
	paper  paper.Paper
	work   *job.Work
	out    *files.Set
	cloths int
}

// check refuses places that cannot be written, before any search.
func (r remnantFiles) check(all []app.PieceOfCloth) error {
	for i, a := range all {
		plan, layout, err := r.names(a.Cloth, i)
		if err != nil {
			return err
		}
		for _, path := range []string{plan, layout} {
			if path == "" {
				continue
			}
			if err := r.out.Check(path); err != nil {
				return err
			}
		}
	}
	return nil
}

// names of the plan and of the layout of a cloth; empty when not asked for.
func (r remnantFiles) names(c cloth.Cloth, index int) (plan, layout string, err error) {
	if r.output != "" {
		plan = planName(r.output, c.Name, index)
	}
	if r.s.layout == "" {
		return plan, "", nil
	}
	paths, err := newLayoutPaths(r.s.layout, r.cloths)
	if err != nil {
		return "", "", err
	}
	if paths.single {
		return plan, r.s.layout, nil
	}
	return plan, filepath.Join(r.s.layout, fmt.Sprintf("%s-remnant.json", job.Slug(c.Name))), nil
}

// add plans the files of one cloth.
func (r remnantFiles) add(a app.RemnantAnswer, index int) error {
	plan, layout, err := r.names(a.Cloth, index)
	if err != nil {
		return err
	}
	if a.Fit.Answer == remnant.Enough {
		return r.addPlan(plan, layout, a.Fit.Plan)
	}
	for i, way := range a.Ways {
		if err := r.addPlan(numbered(plan, i+1), numbered(layout, i+1), way.Fit.Plan); err != nil {
			return err
		}
	}
	return nil
}

func (r remnantFiles) addPlan(plan, layout string, kind lay.Plan) error {
	if plan != "" {
		options := marker.Options{Job: r.work.Title(), Paper: r.paper, Remnant: true, Inches: r.work.InInches(),
			Youngest: r.work.Youngest}
		write := func(w io.Writer) error {
			return errors.Join(failure.Of(errors.Join(check.Plan(kind, kind.Asked), marker.Proven(kind, options))),
				marker.Write(w, kind, options))
		}
		if err := r.out.Add(plan, write); err != nil {
			return err
		}
	}
	if layout == "" {
		return nil
	}
	return r.out.Add(layout, layoutOf(kind))
}

// numbered puts a number behind the name of a file: plan-1.pdf.
func numbered(path string, n int) string {
	if path == "" {
		return ""
	}
	end := filepath.Ext(path)
	return fmt.Sprintf("%s-%d%s", strings.TrimSuffix(path, end), n, end)
}
