package app

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"ellwand/cmd/ellwand/limit"
	"ellwand/pieces/found"
	"ellwand/pieces/language"
	"ellwand/pieces/linework"
	"ellwand/pieces/measure"
	piecewords "ellwand/pieces/words"
)

// Imported is what was found in drawings.
type Imported struct {
	Title string
	// Unit that lengths are said in.
	Unit  measure.Unit
	Found []Found
	Notes []found.Note
	// Overview of the first drawing; nil where it has nothing to choose from.
	Overview *found.Overview
	// Photo writes the first photo with what was found drawn over it; nil for drawings.
	Photo func(io.Writer) error
}

// Found is an outline that was found, repaired where it had to be.
type Found struct {
	// Number that it is chosen by, from 1.
	Number int
	found.Piece
	// Fault is why no piece can be made of it; nil for most.
	Fault error
}

// importLimits are the bounds of the readers.
var importLimits = [...]limit.Limit{found.Bytes: limit.DrawingSize, found.Things: limit.DrawnThings,
	found.Vertices: limit.DrawnPoints, found.Nesting: limit.DrawnNesting, found.Outlines: limit.DrawnOutlines,
	found.Words: limit.DrawnWords}

// ReadDrawings reads what is drawn in files, each by its content.
func ReadDrawings(paths []string, o found.Options) (Imported, error) {
	for i, l := range importLimits {
		o.Limits[i] = l.Most()
	}
	out := Imported{Unit: measure.Centimetre}
	for _, path := range paths {
		drawing, err := readDrawing(path, o)
		if out.Overview == nil {
			out.Overview = drawing.Overview
		}
		if out.Photo == nil {
			out.Photo = drawing.Photo
		}
		if err != nil {
			return out, err
		}
		if out.Title == "" {
			out.Title = drawing.Title
		}
		before := len(out.Found)
		for _, n := range drawing.Notes {
			if n.Piece > 0 {
				n.Piece += before
			}
			out.Notes = append(out.Notes, n)
		}
		for _, p := range drawing.Pieces {
			if p.Name == "" && len(drawing.Pieces) == 1 {
				p.Name = baseOf(path)
			}
			out.add(p, o)
		}
		if len(out.Found) == before {
			return out, fmt.Errorf("%s has no closed outline, of which a piece could be made; where lines do not quite "+
				"meet, join them with --gap 2mm", path)
		}
	}
	if out.Title == "" {
		out.Title = baseOf(paths[0])
	}
	return out, nil
}

// baseOf a file is its name without its folder and its ending.
func baseOf(path string) string { return strings.TrimSuffix(filepath.Base(path), filepath.Ext(path)) }

// add cleans an outline and numbers it.
func (i *Imported) add(p found.Piece, o found.Options) {
	one := Found{Number: len(i.Found) + 1, Piece: p}
	clean, notes, err := found.Clean(p, o)
	if err != nil {
		one.Fault = err
	} else {
		one.Piece = clean
	}
	for _, n := range notes {
		n.Piece = one.Number
		i.Notes = append(i.Notes, n)
	}
	i.Found = append(i.Found, one)
}

func readDrawing(path string, o found.Options) (found.Drawing, error) {
	data, err := drawingIn(path)
	if err != nil {
		return found.Drawing{}, err
	}
	const beginning = 1 << 16
	format, err := importFormatOf(path, data[:min(len(data), beginning)])
	if err != nil {
		return found.Drawing{}, err
	}
	out, err := format.read(data, o)
	var much *found.TooMuch
	var unit *found.NeedUnit
	switch {
	case errors.As(err, &much):
		return out, fmt.Errorf("%s %s", path, importLimits[much.What].Sentence())
	case errors.As(err, &unit):
		return out, refuse("%s does not say its unit of length: all that is drawn in it is %s across and %s high in its own "+
			"numbers; say what they are with %s: mm, cm, m, in or yd", path, numeral(unit.Across), numeral(unit.Up),
			ArgumentUnits)
	case err != nil:
		return out, notDrawn(path, err)
	}
	return out, nil
}

// notDrawn says what is wrong with a drawing, and by which argument it may be mended.
func notDrawn(path string, err error) error {
	var fault linework.Fault
	if one := (*linework.Fault)(nil); errors.As(err, &one) {
		fault = *one
	}
	err = piecewords.Refused(err)
	switch fault.Of {
	case linework.OverlapUnsure:
		return refuse("%s: %s, such as %s 10mm (sheets: %s)", path, err, ArgumentOverlap, fault.Text)
	case linework.SheetsUnjoined:
		return refuse("%s: %s; say how they lie, such as %s \"1 2 3/4 5 6\" (row by row), and how far they lie over each "+
			"other, such as %s 10mm", path, err, ArgumentRows, ArgumentOverlap)
	}
	return fmt.Errorf("%s: %w", path, err)
}

func numeral(x float64) string { return fmt.Sprintf("%.4g", x) }

func importFormatOf(path string, beginning []byte) (importFormat, error) {
	var names []string
	for _, f := range importFormats {
		if f.is(beginning) {
			return f, nil
		}
		names = append(names, f.name)
	}
	last := len(names) - 1
	known := names[last]
	if last > 0 {
		known = strings.Join(names[:last], ", ") + " or " + known
	}
	return importFormat{}, fmt.Errorf("%s is no drawing that can be read, by what is in it; it must be %s", path, known)
}

// drawingIn a file, which is no pipe that nobody writes into.
func drawingIn(path string) ([]byte, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, fmt.Errorf("%s cannot be read; is its name right?", path)
	}
	if !info.Mode().IsRegular() {
		return nil, fmt.Errorf("%s is no file that can be read", path)
	}
	most := limit.DrawingSize
	if info.Size() > int64(most.Most()) {
		return nil, fmt.Errorf("%s %s", path, most.Sentence())
	}
	file, err := os.Open(path)
	if err != nil {
		return nil, fmt.Errorf("%s cannot be opened; may you read it?", path)
	}
	defer file.Close()
	data, err := io.ReadAll(io.LimitReader(file, int64(most.Most())+1))
	if err != nil {
		return nil, fmt.Errorf("%s cannot be read to its end", path)
	}
	return data, most.Check(language.Name(path), len(data))
}
