package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/files"
	"ellwand/fabric/lay"
	"ellwand/fabric/marker"
	"ellwand/fabric/plotter"
	"ellwand/pieces/drawing"
)

// format is a kind of file that a lay is drawn in.
type format struct {
	// endings of its files; the first is the one that is told.
	endings []string
	called  string // where the ending does not say it
	// plan draws the plan to scale; nil where it is not drawn so.
	plan func(io.Writer, lay.Plan, marker.Options) error
	// whole draws all pages of the marker at full size, page one of them; both nil
	// where it is not drawn so.
	whole func(io.Writer, lay.Plan, plotter.Options) error
	page  func(w io.Writer, title string, page drawing.Page) error
}

var formats = []format{
	{endings: []string{".pdf"}, plan: marker.Write, whole: plotter.Write},
	{endings: []string{".dxf"}, whole: plotter.WriteDXF},
	{endings: []string{".svg"}, plan: marker.WriteSVG, page: drawing.WriteSVG},
	{endings: []string{".png"}, plan: marker.WritePNG},
	{endings: []string{".plt", ".hpgl", ".hpg", ".hgl"}, called: "HP-GL/2",
		page: func(w io.Writer, _ string, page drawing.Page) error { return drawing.WriteHPGL(w, page) }},
}

// draws says whether the format has the plan, or the marker at full size.
func (f format) draws(full bool) bool {
	if full {
		return f.whole != nil || f.page != nil
	}
	return f.plan != nil
}

// told is how a person is told of it: ".plt (HP-GL/2)".
func (f format) told() string {
	if f.called == "" {
		return f.endings[0]
	}
	return f.endings[0] + " (" + f.called + ")"
}

// endingsOf the plan, or of the marker at full size, as a person is told.
func endingsOf(full bool) string {
	var known []string
	for _, f := range formats {
		if f.draws(full) {
			known = append(known, f.told())
		}
	}
	return anyOf(known)
}

// formatOf a file by its ending.
func formatOf(path string, full bool) (format, error) {
	for _, f := range formats {
		if f.draws(full) && slices.Contains(f.endings, files.Extension(path)) {
			return f, nil
		}
	}
	what := "the plan"
	if full {
		what = "the marker at full size"
	}
	return format{}, fmt.Errorf("%s is written as %s, but the file is named %s; give it one of these endings",
		what, endingsOf(full), path)
}

// anyOf several words: ".pdf, .svg or .png".
func anyOf(words []string) string {
	last := len(words) - 1
	return strings.Join(words[:last], ", ") + " or " + words[last]
}
