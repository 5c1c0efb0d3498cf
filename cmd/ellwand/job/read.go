package job

import (
	"fmt"
	"io"

	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/patternfile"
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/language"
)

// form of the job file.
var form = strict.Form{
	Whole: language.Say("the job", "der Auftrag"), One: language.Say("one job", "einen Auftrag"),
	File:  language.Say("a job file", "Auftragsdatei"),
	Begin: language.Say("write a starter job with: ellwand new ", "einen Anfang schreibt: ellwand new "),
	Size:  limit.JobSize, Lists: mostEntries, Paragraphs: map[string]bool{"terms": true, "maker": true},
}

// Read reads the job file at a path. The error is *Faults when the file can be
// opened but not used.
func Read(path string) (*File, error) {
	if patternfile.Is(path) {
		return nil, fmt.Errorf("%s is a file of pieces, not a job; write a job that names it under pattern: of a garment, "+
			"as ellwand help pattern says", path)
	}
	return strict.Opened(form, path, Parse)
}

// Parse reads a job from its text; name is the file's, for messages.
func Parse(name string, data []byte) (*File, error) {
	var file File
	lines, err := form.Parse(name, data, &file)
	if err != nil {
		return nil, err
	}
	file.name, file.lines, file.patterns = name, lines, patterns{}
	return &file, nil
}

// WriteSchema writes the JSON Schema of the job file, with which an editor
// completes and checks it.
func WriteSchema(w io.Writer) error { return strict.WriteSchema(w, "Ellwand job", &File{}) }

// mostEntries of the lists of a job, by their key.
var mostEntries = map[string]limit.Limit{
	"wearers": limit.Wearers, "garments": limit.Garments, "pieces": limit.Pieces, "parts": limit.Parts,
	"linings": limit.Parts, "interfacings": limit.Parts, "cloths": limit.Cloths, "widths": limit.Widths,
	"offers": limit.Offers, "remnants": limit.Remnants, "flaws": limit.Flaws, "outline": limit.Corners,
}
