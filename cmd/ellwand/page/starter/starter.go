// Package starter writes the text that a job begins with, from what somebody has: a
// person to dress, a pattern, a piece of cloth.
package starter

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/strict"
)

// Begin is what a job begins with. What is empty is left out.
type Begin struct {
	Garment string `json:"garment"`
	Title   string `json:"title"`
	Client  string `json:"client"`
	Units   string `json:"units"`
	// Body has measurements, or Table and Size stand for them.
	Body  map[string]string `json:"body"`
	Table string            `json:"table"`
	Size  string            `json:"size"`
	Width string            `json:"width"`
	Nap   string            `json:"nap"`
	// Length of a piece of cloth that is there already.
	Length string `json:"length"`
	// Pieces of a pattern, each as a job file has it.
	Pieces []desk.Value `json:"pieces"`
	// Pattern is the name of a file of pieces in the folder, PatternSize which of its sizes,
	// and Cloths those that its pieces name; an empty name is the garment's.
	Pattern     string   `json:"-"`
	PatternSize string   `json:"-"`
	Cloths      []string `json:"-"`
}

// usualWidth of cloth where none is given, cm [source.OwnChoice].
const usualWidth = "140"

// usualCloth is what the cloth is called that a garment is cut from.
const usualCloth = "shell"

// Text of the job.
func (b Begin) Text() (string, error) {
	if b.Units == "" {
		b.Units = "cm"
	}
	text, err := b.frame()
	if err != nil {
		return "", err
	}
	if text, err = desk.InUnits(text, b.Units); err != nil {
		return "", err
	}
	for _, one := range b.values() {
		if one.value == "" {
			continue
		}
		if text, err = edit.Set(text, one.path, edit.Text(one.value), desk.Order); err != nil {
			return "", err
		}
	}
	for i, piece := range b.Pieces {
		path := strict.Top("garments").Entry(0).Key("pieces").Entry(i)
		if text, err = edit.Set(text, path, piece.Value, desk.Order); err != nil {
			return "", err
		}
	}
	return text, nil
}

// frame is the job in cm, with its garment and a cloth.
func (b Begin) frame() (string, error) {
	garment, known := garments[b.Garment]
	switch {
	case len(b.Pieces) > 0 || b.Pattern != "":
		garment = "  - name: " + nameOf(b.Garment, "garment") + "\n"
	case !known:
		return "", fmt.Errorf("there is no garment %q to begin with; take one of: %s", b.Garment,
			strings.Join(slices.Sorted(maps.Keys(garments)), ", "))
	}
	return "job: " + nameOf("", "job") + "\nunits: cm\ngarments:\n" + garment +
		"cloths:\n  - name: " + usualCloth + "\n    width: " + usualWidth + "\n", nil
}

func nameOf(given, usual string) string {
	if given == "" || strings.ContainsAny(given, "\n:#") {
		return usual
	}
	return given
}

// value at a path.
type value struct {
	path  strict.Path
	value string
}

// values as they were given, in the units of the job.
func (b Begin) values() []value {
	cloth := strict.Top("cloths").Entry(0)
	out := []value{
		{strict.Top("job"), b.Title}, {strict.Top("client"), b.Client}, {strict.Top("table"), b.Table},
		{strict.Top("size"), b.Size}, {cloth.Key("width"), b.Width}, {cloth.Key("nap"), b.Nap},
		{cloth.Key("length"), b.Length},
	}
	pattern := strict.Top("garments").Entry(0).Key("pattern")
	switch {
	case b.PatternSize != "":
		out = append(out, value{pattern.Key("file"), b.Pattern}, value{pattern.Key("size"), b.PatternSize})
	case b.Pattern != "":
		out = append(out, value{pattern, b.Pattern})
	}
	named := slices.DeleteFunc(slices.Clone(b.Cloths), func(name string) bool { return name == "" })
	at := 1
	if len(named) == len(b.Cloths) && !slices.Contains(named, usualCloth) {
		at = 0 // the first of them takes the place of the usual one
	}
	for _, name := range named {
		if name == usualCloth {
			continue
		}
		entry := strict.Top("cloths").Entry(at)
		out = append(out, value{entry.Key("name"), name}, value{entry.Key("width"), cmp.Or(b.Width, usualWidth+" cm")})
		at++
	}
	for _, name := range slices.Sorted(maps.Keys(b.Body)) {
		out = append(out, value{strict.Top("body").Key(name), b.Body[name]})
	}
	return out
}
