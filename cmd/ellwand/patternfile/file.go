// Package patternfile reads and writes files of pieces: patterns that are there
// already, bought, traced, measured with a tape or written out of a draft. The same
// pieces may stand in a job.
//
// Parse checks the shape of a file; Pieces turns its texts into pieces. Write gives
// pieces as such a file, which reads back the same to 0.001 mm.
package patternfile

import (
	"io"

	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
)

// Version of the form of the file. It is raised when a key goes or means another
// thing; a new key does not raise it.
const Version = "1"

// File is a file of pieces as written.
type File struct {
	Version   Count                `yaml:"pieces_file" jsonschema:"required" jsonschema_description:"version of the form of this file: 1"`
	Name      Text                 `yaml:"name" jsonschema_description:"name of the pattern"`
	Units     Choice[measure.Unit] `yaml:"units" jsonschema:"required" jsonschema_description:"unit of every number that is written without one"`
	Accuracy  Measure              `yaml:"accuracy" jsonschema_description:"how far the true outlines may lie from those given: 2 mm; that of each piece if not given"`
	Allowance *Allowance           `yaml:"allowance" jsonschema_description:"as of a piece, for all that do not say it themselves"`
	Pieces    []Piece              `yaml:"pieces" jsonschema:"required,minItems=1" jsonschema_description:"the pieces, in one size or in several"`
	Seams     []Seam               `yaml:"seams" jsonschema_description:"which edges are sewn together, to be held against each other"`

	name  string
	lines strict.Lines
}

// Piece is a piece by its width and height, by the points of its outline, or by
// readings of a tape.
type Piece struct {
	Name        Text                    `yaml:"name" jsonschema:"required" jsonschema_description:"name of the piece"`
	Size        Text                    `yaml:"size" jsonschema_description:"size of the pattern that it belongs to; every size if not given"`
	Width       Measure                 `yaml:"width" jsonschema_description:"of a rectangle: finished size across the grain; with a fold edge at left or right, the half"`
	Height      Measure                 `yaml:"height" jsonschema_description:"of a rectangle: finished size along the grain; with a fold edge at top or bottom, the half"`
	Outline     []Node                  `yaml:"outline" jsonschema_description:"any other shape, by its points one after the other all round"`
	Offsets     *Offsets                `yaml:"offsets" jsonschema_description:"any other shape, by readings of a tape along its fold or grainline"`
	Cut         Cut                     `yaml:"cut" jsonschema_description:"how many are cut for one garment: 2, or by cloth: {shell: 2, interfacing: 1}; 1 if not given"`
	Pair        YesNo                   `yaml:"pair" jsonschema_description:"half of them mirrored: one right, one left"`
	Fold        Text                    `yaml:"fold" jsonschema_description:"the edge that lies on the fold (of a rectangle left, right, top or bottom); the piece is then given as a half"`
	Grain       Choice[pieces.GrainLie] `yaml:"grain" jsonschema_description:"how the grainline lies; either lets it lie along or across, as takes less cloth; straight if not given"`
	GrainLine   []Point                 `yaml:"grain_line" jsonschema_description:"the grainline from its lower end to its upper one, [[10, 5], [10, 40]]; upright if not given"`
	Joins       Count                   `yaml:"joins" jsonschema_description:"of a rectangle: by how many seams across its length it is pieced together from equal lengths; none if not given"`
	Cloth       Text                    `yaml:"cloth" jsonschema_description:"cloth it is cut from; the garment's if not given"`
	Kind        Choice[pieces.Kind]     `yaml:"kind" jsonschema_description:"what it is to the garment: shell (it shows), facing, lining or interfacing; shell if not given"`
	Allowance   *Allowance              `yaml:"allowance" jsonschema_description:"what the outline has of it, for all edges or by edge: 1.5 cm (it is added to the outline), add (the job's is added), included 1.5 cm, or unknown (included, nobody knows how much); the seams' is added to a rectangle if not given"`
	Hems        []Text                  `yaml:"hems" jsonschema_description:"edges whose allowance folds up"`
	Notches     []Notch                 `yaml:"notches" jsonschema_description:"marks on the edges that meet others"`
	Darts       []Dart                  `yaml:"darts" jsonschema_description:"wedges that are sewn out"`
	Marks       []Mark                  `yaml:"marks" jsonschema_description:"lines and points inside"`
	Accuracy    Measure                 `yaml:"accuracy" jsonschema_description:"how far the true outline may lie from this one: it is laid so much larger, and nothing is proven by less; 2 mm of readings of a tape if not given, else 0"`
	Approximate YesNo                   `yaml:"approximate" jsonschema_description:"its outline is drawn about a piece of another shape: whether cloth is too little is then never proven; no if not given"`
}

// Notch is a mark on an edge.
type Notch struct {
	Edge    Text    `yaml:"edge" jsonschema:"required" jsonschema_description:"edge that it is on"`
	At      Measure `yaml:"at" jsonschema:"required" jsonschema_description:"how far along the edge from where it begins"`
	Strokes Count   `yaml:"strokes" jsonschema_description:"1 (front, by custom) or 2 (back); 1 if not given"`
	Match   Text    `yaml:"match" jsonschema_description:"name of the match point: notches of one name meet"`
}

// Dart is a wedge that is sewn out.
type Dart struct {
	Name      Text  `yaml:"name" jsonschema:"required" jsonschema_description:"name of the dart"`
	Mouth     Text  `yaml:"mouth" jsonschema_description:"edge across its open end; none of a dart that lies wholly inside"`
	Apex      Point `yaml:"apex" jsonschema:"required" jsonschema_description:"its point"`
	Start     Point `yaml:"start" jsonschema_description:"one side of its widest place, where there is no mouth"`
	End       Point `yaml:"end" jsonschema_description:"the other side"`
	OtherApex Point `yaml:"other_apex" jsonschema_description:"its other point, where there is no mouth"`
}

// Mark is a line or a point inside a piece.
type Mark struct {
	Name Text   `yaml:"name" jsonschema_description:"name of the mark"`
	At   Point  `yaml:"at" jsonschema_description:"a point, such as a drill hole"`
	Line []Node `yaml:"line" jsonschema_description:"a line by its points, as an outline has them"`
}

// Seam says which edges are sewn together.
type Seam struct {
	Name Text            `yaml:"name" jsonschema:"required" jsonschema_description:"name of the seam"`
	Of   map[string]Text `yaml:"of" jsonschema:"required" jsonschema_description:"edges of one side by their pieces: {front: side}"`
	To   map[string]Text `yaml:"to" jsonschema:"required" jsonschema_description:"edges that they are sewn to: {back: side}"`
	Ease Measure         `yaml:"ease" jsonschema_description:"how much longer the first are, eased or gathered in; nothing if not given"`
}

// form of the file.
var form = strict.Form{
	Whole: language.Say("the file of pieces", "die Schnittdatei"), One: language.Say("one pattern", "einen Schnitt"),
	File: language.Say("a file of pieces", "Schnittdatei"),
	Begin: language.Say("write the pieces of a job as one: ellwand export JOB -o ",
		"die Teile eines Auftrags schreibt: ellwand export JOB -o "), Size: limit.PiecesFile,
	Lists: map[string]limit.Limit{"pieces": limit.Pieces, "outline": limit.Points, "line": limit.Points,
		"notches": limit.Marks, "marks": limit.Marks, "darts": limit.Marks},
}

// Read reads the file at a path. The error is *strict.Faults when the file can be
// opened but not used.
func Read(path string) (*File, error) { return strict.Opened(form, path, Parse) }

// Parse reads a file from its text; name is the file's, for messages.
func Parse(name string, data []byte) (*File, error) {
	var file File
	lines, err := form.Parse(name, data, &file)
	if err != nil {
		return nil, err
	}
	file.name, file.lines = name, lines
	return &file, nil
}

// WriteSchema writes the JSON Schema of the file.
func WriteSchema(w io.Writer) error { return strict.WriteSchema(w, "Ellwand pieces", &File{}) }
