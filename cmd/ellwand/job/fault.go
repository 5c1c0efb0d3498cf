package job

import (
	"fmt"
	"sort"
	"strings"
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

// Fault is one thing wrong in a job file, said so that it can be put right.
type Fault struct {
	// Path of the value that is to be changed; where it does not stand in the
	// file, the line is that of the nearest one above it.
	Path Path
	Line int // from 1; 0 when there is no file to read
	Kind Kind
	// Garment and Piece name what it is about; empty when it is about neither.
	Garment, Piece string
	// Text says what is wrong and what to do.
	Text string
}

// Faults refuse a job file: everything found wrong, in the order of the lines.
type Faults struct {
	File string
	List []Fault
}

// Error gives one line a fault: file, line, what is wrong and the remedy.
func (f *Faults) Error() string {
	lines := make([]string, len(f.List))
	for i, fault := range f.List {
		if fault.Line > 0 {
			lines[i] = fmt.Sprintf("%s:%d: %s", f.File, fault.Line, fault.Text)
		} else {
			lines[i] = fmt.Sprintf("%s: %s", f.File, fault.Text)
		}
	}
	return strings.Join(lines, "\n")
}

// orNil returns the faults as an error, or nil when there is none.
func (f *Faults) orNil() error {
	if len(f.List) == 0 {
		return nil
	}
	sort.SliceStable(f.List, func(i, j int) bool { return f.List[i].Line < f.List[j].Line })
	return f
}

// Refuse makes the one fault of a path in the job: what it is asked for cannot
// be, though it could be read.
func (f *File) Refuse(path Path, kind Kind, format string, args ...any) error {
	return &Faults{File: f.name, List: []Fault{f.fault(path, kind, format, args...)}}
}

func (f *File) fault(path Path, kind Kind, format string, args ...any) Fault {
	garment, piece := f.named(path)
	return Fault{Path: path, Line: f.lines.line(path), Kind: kind, Garment: garment, Piece: piece,
		Text: fmt.Sprintf(format, args...)}
}

// named says which garment and which piece of it a path lies in.
func (f *File) named(path Path) (garment, piece string) {
	if len(path) < 2 || path[0].Key != "garments" || path[1].Index >= len(f.Garments) {
		return "", ""
	}
	g := f.Garments[path[1].Index]
	if len(path) < 4 {
		return string(g.Name), ""
	}
	switch i := path[3].Index; {
	case path[2].Key == "pieces" && i < len(g.Pieces):
		piece = string(g.Pieces[i].Name)
	case path[2].Key == "parts" && i < len(g.Parts):
		piece = string(g.Parts[i].Name)
		if piece == "" {
			piece = string(g.Parts[i].Kind)
		}
	}
	return string(g.Name), piece
}
