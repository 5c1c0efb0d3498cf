package main

import (
	"fmt"
	"io"
	"slices"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/files"
)

// exportFormat is a kind of file that pieces are written to.
type exportFormat struct {
	endings []string
	write   func(app.Collection, io.Writer) error
}

var exportFormats = []exportFormat{
	{[]string{".yaml", ".yml"}, app.Collection.WriteFile},
	{[]string{".dxf"}, app.Collection.WriteDXF},
	{[]string{".svg"}, app.Collection.WriteSVG},
	{[]string{".pdf"}, app.Collection.WritePDF},
}

// exportEndings are those that a file of pieces may have, as a person is told.
func exportEndings() string {
	var known []string
	for _, f := range exportFormats {
		known = append(known, f.endings[0])
	}
	return anyOf(known)
}

// exportFormatOf a file by its ending.
func exportFormatOf(path string) (exportFormat, error) {
	for _, f := range exportFormats {
		if slices.Contains(f.endings, files.Extension(path)) {
			return f, nil
		}
	}
	return exportFormat{}, fmt.Errorf("pieces are written as %s, but the file is named %s; give it one of these endings",
		exportEndings(), path)
}
