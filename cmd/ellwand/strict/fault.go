package strict

import (
	"fmt"
	"sort"
	"strings"

	"ellwand/cmd/ellwand/limit"
	"ellwand/pieces/language"
)

// Kind says what is wrong.
type Kind int

const (
	// NotYAML is text that cannot be read as YAML.
	NotYAML Kind = iota
	// WrongShape is a list where a value should be, keys where a list should be,
	// or a key without a value.
	WrongShape
	// Unknown is a key, a name or a word that is not known there.
	Unknown
	// Missing is something that must be given.
	Missing
	// Malformed is a value that cannot be read as what it should be.
	Malformed
	// OutOfRange is a value that is too small or too large.
	OutOfRange
	// Twice is a name or a value that stands twice.
	Twice
	// Contradiction is two things that cannot both be.
	Contradiction
	// Undraftable is a garment that cannot be drafted as it is asked for.
	Undraftable
	// Unused is something that nothing is done with.
	Unused
)

var kinds = [...]string{
	NotYAML: "not yaml", WrongShape: "shape", Unknown: "unknown", Missing: "missing", Malformed: "malformed",
	OutOfRange: "range", Twice: "twice", Contradiction: "contradiction", Undraftable: "undraftable", Unused: "unused",
}

// String is the word by which programs tell the kind.
func (k Kind) String() string { return kinds[k] }

// Fault is one thing wrong in a file, said so that it can be put right.
type Fault struct {
	// File that it stands in; empty for the one that is read (see Faults).
	File string
	// Path of the value that is to be changed; where it does not stand in the
	// file, the line is that of the nearest one above it.
	Path Path
	Line int // from 1; 0 when there is no file to read
	Kind Kind
	// Garment and Piece name what it is about; empty when it is about neither.
	Garment, Piece string
	// Said is what is wrong and what to do.
	Said language.Sentence
}

// Faults refuse a file: everything found wrong, in the order of the lines.
type Faults struct {
	File string
	List []Fault
}

// Error gives one line a fault: file, line, what is wrong and the remedy.
func (f *Faults) Error() string {
	lines := make([]string, len(f.List))
	for i, fault := range f.List {
		place := f.FileOf(fault)
		if fault.Line > 0 {
			place = fmt.Sprintf("%s:%d", place, fault.Line)
		}
		lines[i] = place + ": " + fault.Said.String()
	}
	return strings.Join(lines, "\n")
}

// FileOf is the file that a fault stands in.
func (f *Faults) FileOf(fault Fault) string {
	if fault.File != "" {
		return fault.File
	}
	return f.File
}

// OrNil returns the faults as an error, or nil when there is none.
func (f *Faults) OrNil() error {
	if len(f.List) == 0 {
		return nil
	}
	sort.SliceStable(f.List, func(i, j int) bool { return f.List[i].Line < f.List[j].Line })
	if most := limit.Faults.Most(); len(f.List) > most {
		last := f.List[most]
		f.List = append(f.List[:most],
			Fault{File: last.File, Line: last.Line, Kind: last.Kind, Said: limit.Faults.Sentence()})
	}
	return f
}

// add notes a fault.
func (f *Faults) add(fault Fault) { f.List = append(f.List, fault) }
