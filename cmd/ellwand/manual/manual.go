// Package manual is the reference that is read in the program: a page for each
// part of the job file, its keys taken from the types that the file is read
// into.
package manual

import (
	"embed"
	"fmt"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/patternfile"
	"ellwand/cmd/ellwand/screen"
	"ellwand/cmd/ellwand/strict"
)

//go:embed pages
var pages embed.FS

// Topic is one page.
type Topic struct {
	// Name by which it is asked for; its text stands in pages/NAME.txt.
	Name string
	// Short says what it is about.
	Short string
	// places of the mappings that it describes (see job.Reference), with all below
	// them that no other page names.
	places []string
}

var topics = []Topic{
	{"job", "the job file as a whole", []string{"", "wearers"}},
	{"measurements", "the body, and how each measurement is taken", []string{"body"}},
	{"allowances", "seam allowances", []string{"allowances"}},
	{"garment", "what is made", []string{"garments"}},
	{"bodice", "fit, darts, princess seams, yoke, opening, neck", []string{"garments.bodice"}},
	{"sleeve", "style, length, ease and head", []string{"garments.sleeve"}},
	{"skirt", "straight, a-line, gored, circles, tiers, pleats", []string{"garments.skirt"}},
	{"trousers", "trousers and shorts", []string{"garments.trousers"}},
	{"straight_cut", "kaftan, kimono, wrapper, apron, bag", []string{"garments.straight_cut"}},
	{"parts", "collars, cuffs, facings, bands, pockets; linings and interfacings",
		[]string{"garments.parts", "garments.linings", "garments.interfacings"}},
	{"pattern", "pieces that are there already: by a tape, by points, in a file",
		[]string{"garments.pattern", "garments.pieces", patternfile.ReferencePlace}},
	{"drawings", "patterns in files of other programs, in and out", nil},
	{"dxf", "patterns and drawings in DXF, in and out", nil},
	{"svg", "drawings in SVG, in and out", nil},
	{"pdf", "patterns in PDF files, in and out", nil},
	{"projector", "pieces projected onto the cloth", nil},
	{"photo", "a pattern traced from a photo or a scan", nil},
	{"cloth", "width, nap, repeat, flaws, shrinkage, remnants", []string{"cloths"}},
	{"prices", "offers, notions, making, the quote and its tax", []string{"cloths.offers", "garments.notions",
		"garments.making", "quote"}},
}

// Topics are all pages, in the order in which a job is written.
func Topics() []Topic { return slices.Clone(topics) }

// Contents lists the pages, a line each.
func Contents() string {
	var out strings.Builder
	for _, topic := range topics {
		fmt.Fprintf(&out, "  %-14s%s\n", topic.Name, topic.Short)
	}
	return out.String()
}

// Find returns the page of a name, or that which describes a key that holds
// others: "repeat" stands on the page "cloth".
func Find(name string) (Topic, bool) {
	name = strings.ToLower(strings.ReplaceAll(name, "-", "_"))
	for _, topic := range topics {
		if topic.Name == name {
			return topic, true
		}
	}
	for _, mapping := range mappings() {
		if mapping.Place[strings.LastIndex(mapping.Place, ".")+1:] == name {
			return topicOf(mapping.Place), true
		}
	}
	return Topic{}, false
}

// mappings of all files that the pages describe.
func mappings() []strict.Mapping { return append(job.Reference(), patternfile.Reference()...) }

// topicOf a mapping is that which names its place, or else the nearest place above it.
func topicOf(place string) Topic {
	for {
		for _, topic := range topics {
			if slices.Contains(topic.places, place) {
				return topic
			}
		}
		place = place[:max(0, strings.LastIndex(place, "."))] // the first page names the top of the file
	}
}

// Page is the text of a topic, for so many columns.
func (t Topic) Page(width int) string {
	prose, err := pages.ReadFile("pages/" + t.Name + ".txt")
	if err != nil { // a test sees every page
		return ""
	}
	var out strings.Builder
	fmt.Fprintf(&out, "%s\n\n%s", screen.Fill(t.Name+": "+t.Short, width, 0), screen.Fill(string(prose), width, 0))
	for _, mapping := range mappings() {
		if topicOf(mapping.Place).Name == t.Name {
			fmt.Fprintf(&out, "\n%s\n%s", Heading(mapping.Place), keys(mapping, width))
		}
	}
	return out.String()
}

// Heading is the line above the keys of a mapping.
func Heading(place string) string {
	if place == "" {
		return "at the top of the file (* is needed)"
	}
	return strings.ReplaceAll(place, ".", ": ") + ":"
}

// leastColumn is the narrowest column in which a meaning is read beside its key
// [source.OwnChoice].
const leastColumn = 30

// keys are the lines of a mapping: the names in a column, what each means
// beside it, or below it where there is no room.
func keys(mapping strict.Mapping, width int) string {
	column := 0
	for _, key := range mapping.Keys {
		column = max(column, len(nameOf(key))+2)
	}
	var out strings.Builder
	for _, key := range mapping.Keys {
		name := nameOf(key)
		if width-column < leastColumn {
			fmt.Fprintf(&out, "%s\n%s\n", name, screen.Fill("      "+meaning(mapping, key), width, 0))
			continue
		}
		lines := screen.Fill(strings.Repeat(" ", column)+meaning(mapping, key), width, 0)
		fmt.Fprintf(&out, "%-*s%s\n", column, name, lines[min(column, len(lines)):])
	}
	return out.String()
}

func nameOf(key strict.Key) string {
	if key.Needed {
		return "  " + key.Name + " *"
	}
	return "  " + key.Name
}

// meaning of a key: its text, the words to choose from, and what stands after
// it where that is no plain length.
func meaning(mapping strict.Mapping, key strict.Key) string {
	text := key.Text
	unsaid := slices.ContainsFunc(key.Words, func(word string) bool { return !strings.Contains(text, word) })
	if unsaid {
		text += "; one of: " + strings.Join(key.Words, ", ")
	}
	switch {
	case key.Keys != "" && !strings.HasPrefix(key.Keys, mapping.Place+"."):
		text += " (" + key.Value + ": " + see(key.Keys) + ")"
	case key.Value != "length" && key.Value != "word" && key.Value != "text":
		text += " (" + key.Value + ")"
	}
	return text
}

// see says where the keys of a mapping are described.
func see(place string) string { return "help " + topicOf(place).Name }
