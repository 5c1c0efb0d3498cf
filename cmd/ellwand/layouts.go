package main

import (
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/layoutfile"
	"ellwand/fabric/plan"
)

// layoutPaths says where the layouts go: into a folder, every lay its own
// file; or, when the option names a .json file, the recommended lay of the
// only cloth and width.
type layoutPaths struct {
	option string
	single bool
}

func newLayoutPaths(option string, cloths int) (layoutPaths, error) {
	info, err := os.Stat(option)
	folder := err == nil && info.IsDir()
	single := option != "" && !folder && strings.HasSuffix(strings.ToLower(option), ".json")
	if single && cloths > 1 {
		return layoutPaths{}, fmt.Errorf("--layout %s is one file, but there are %d cloths and widths to lay; name a "+
			"folder: --layout layouts", option, cloths)
	}
	return layoutPaths{option: option, single: single}, nil
}

// check refuses places that cannot be written, before any search.
func (l layoutPaths) check(out *files.Set, cloths []cloth.Cloth) error {
	switch {
	case l.option == "":
		return nil
	case l.single:
		return out.Check(l.option)
	}
	for _, c := range cloths {
		for _, kind := range lay.Kinds() {
			if err := out.Check(filepath.Join(l.option, layoutName(lay.Plan{Cloth: c, Lay: kind}))); err != nil {
				return err
			}
		}
	}
	return nil
}

// layoutOf writes the layout of a plan.
func layoutOf(plan lay.Plan) func(io.Writer) error {
	return func(w io.Writer) error { return layoutfile.Write(w, plan) }
}

// add plans the layout files of one cloth and width.
func (l layoutPaths) add(out *files.Set, need plan.Requirement) error {
	switch {
	case l.option == "":
		return nil
	case l.single:
		return out.Add(l.option, layoutOf(need.Lays[need.Chosen]))
	}
	for _, p := range need.Lays {
		if !p.Possible() {
			continue
		}
		if err := out.Add(filepath.Join(l.option, layoutName(p)), layoutOf(p)); err != nil {
			return err
		}
	}
	return nil
}

// layoutName names the layout file of a lay: "shell-1400mm-open.json".
func layoutName(plan lay.Plan) string {
	return fmt.Sprintf("%s-%.0fmm-%s.json", job.Slug(plan.Cloth.Name), plan.Cloth.Width, job.Slug(plan.Lay.String()))
}
