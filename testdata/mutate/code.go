package main

import (
	"cmp"
	"go/ast"
	"go/parser"
	"go/token"
	"go/types"
	"os"
	"slices"
	"strings"

	"ellwand/testdata/typed"
)

// code is what is changed: packages with their types, and the texts of their files.
type code struct {
	files    *token.FileSet
	packages map[string]typed.Package // by import path
	sources  map[string]string        // by absolute path
}

// readCode reads the packages of the patterns, all when there is none.
func readCode(folder string, patterns []string) (*code, error) {
	if len(patterns) == 0 {
		patterns = []string{"..."}
	}
	var relative []string
	for _, pattern := range patterns {
		relative = append(relative, "./"+strings.TrimPrefix(pattern, "./"))
	}
	packages, files, err := typed.PackagesIn(folder, relative, switchImports...)
	if err != nil {
		return nil, err
	}
	c := &code{files: files, packages: map[string]typed.Package{}, sources: map[string]string{}}
	for _, p := range packages {
		c.packages[p.Path] = p
		for _, tree := range p.Files {
			path := c.path(tree)
			source, err := os.ReadFile(path)
			if err != nil {
				return nil, err
			}
			c.sources[path] = string(source)
		}
	}
	return c, nil
}

func (c *code) path(tree *ast.File) string { return c.files.Position(tree.Package).Filename }

// mutants lists all that is thought of, in the order of files and places.
func (c *code) mutants() []mutant {
	var all []mutant
	for _, p := range c.packages {
		for _, tree := range p.Files {
			all = append(all, c.mutantsOf(p.Path, tree)...)
		}
	}
	slices.SortFunc(all, func(a, b mutant) int {
		return cmp.Or(cmp.Compare(a.file, b.file), cmp.Compare(a.from, b.from), cmp.Compare(a.with, b.with))
	})
	return all
}

// builds reports whether a package compiles with other texts of some of its files, or
// with files that it has not got.
func (c *code) builds(path string, texts map[string]string) bool {
	p := c.packages[path]
	var trees []*ast.File
	for _, tree := range p.Files {
		if _, changed := texts[c.path(tree)]; !changed {
			trees = append(trees, tree)
		}
	}
	for name, text := range texts {
		tree, err := parser.ParseFile(c.files, name, text, parser.SkipObjectResolution)
		if err != nil {
			return false
		}
		trees = append(trees, tree)
	}
	_, err := (&types.Config{Importer: p.From}).Check(path, c.files, trees, nil)
	return err == nil
}
