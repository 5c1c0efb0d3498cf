// Package circles finds files of one package that refer to each other in a circle. Files
// that refer one way can be read from the bottom up, each with what it rests on.
package circles

import (
	"go/token"
	"maps"
	"path/filepath"
	"slices"

	"ellwand/testdata/typed"
)

// Circle is some files of a package, each of which refers to all the others, itself or
// through them.
type Circle struct {
	Package string
	Files   []string // sorted
}

// uses are the files that each file takes declarations from.
type uses map[string]map[string]bool

// Of finds the circles of packages, tests left out. The patterns are those of go list.
// Errors: a package that does not compile.
func Of(patterns ...string) ([]Circle, error) {
	packages, files, err := typed.Packages(patterns...)
	if err != nil {
		return nil, err
	}
	var out []Circle
	for _, p := range packages {
		for _, circle := range usesOf(p, files).circles() {
			out = append(out, Circle{p.Path, circle})
		}
	}
	return out, nil
}

func usesOf(p typed.Package, files *token.FileSet) uses {
	at := func(pos token.Pos) string { return filepath.Base(files.Position(pos).Filename) }
	out := uses{}
	for use, object := range p.Info.Uses {
		if object.Pkg() != p.Types || !object.Pos().IsValid() {
			continue
		}
		if from, to := at(use.Pos()), at(object.Pos()); from != to {
			if out[from] == nil {
				out[from] = map[string]bool{}
			}
			out[from][to] = true
		}
	}
	return out
}

// circles are the files that reach each other, largest sets only.
func (u uses) circles() [][]string {
	reached := map[string]map[string]bool{}
	for file := range u {
		reached[file] = map[string]bool{}
		u.reach(file, reached[file])
	}
	var out [][]string
	seen := map[string]bool{}
	for _, file := range slices.Sorted(maps.Keys(u)) {
		if seen[file] || !reached[file][file] {
			continue
		}
		var circle []string
		for other := range reached[file] {
			if reached[other][file] {
				circle, seen[other] = append(circle, other), true
			}
		}
		slices.Sort(circle)
		out = append(out, circle)
	}
	return out
}

// reach notes every file that one leads to.
func (u uses) reach(from string, found map[string]bool) {
	for to := range u[from] {
		if !found[to] {
			found[to] = true
			u.reach(to, found)
		}
	}
}
