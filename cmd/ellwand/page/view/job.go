package view

import (
	"fmt"
	"time"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/page/edit"
	"ellwand/fabric/lay"
	"ellwand/pieces/language"
)

// Job is what the page is shown of a job at one revision.
type Job struct {
	Job      string `json:"job"`
	Revision int    `json:"revision"`
	Title    string `json:"title"`
	Client   string `json:"client"`
	Units    string `json:"units"`
	// Size of a table that it is drafted in, and Sizes that it can be drafted in; none of a
	// job that is drafted to measurements.
	Size  string   `json:"size"`
	Sizes []string `json:"sizes"`
	Text  string   `json:"text"`
	// Sound says that the job can be drafted and laid; Faults say why not.
	Sound   bool     `json:"sound"`
	Faults  []Remark `json:"faults"`
	Doubts  []Remark `json:"doubts"`
	Notes   []string `json:"notes"`
	Fields  []Field  `json:"fields"`
	Groups  []Group  `json:"groups"`
	Pieces  []Piece  `json:"pieces"`
	Truing  []Seam   `json:"truing"`
	Cloths  []Cloth  `json:"cloths"`
	Can     Can      `json:"can"`
	Outside *Told    `json:"outside"`
	History []Made   `json:"history"`
}

// Can says what can be done.
type Can struct {
	Undo bool `json:"undo"`
	Redo bool `json:"redo"`
}

// Told is a sentence.
type Told struct {
	Sentence string `json:"sentence"`
}

// Remark is a fault or a doubt, with its place; a path of none is about the whole.
type Remark struct {
	Path []any `json:"path"`
	Line int   `json:"line"`
	// Kind of a fault, by the word by which programs tell it; none of a doubt.
	Kind     string `json:"kind,omitempty"`
	Sentence string `json:"sentence"`
}

// Made is a step of the history: the state after it can be restored.
type Made struct {
	Step int       `json:"step"`
	When time.Time `json:"when"`
	Kind desk.Kind `json:"kind"`
	Path string    `json:"path,omitempty"`
	Now  bool      `json:"now,omitempty"`
}

// Cloth of a job with its views: a width and a lay each.
type Cloth struct {
	Name    string  `json:"name"`
	Index   int     `json:"index"`
	Widths  []Width `json:"widths"`
	Remnant bool    `json:"remnant"`
}

// Width of a cloth, with the lays that it may be spread in.
type Width struct {
	Width string   `json:"width"`
	Label string   `json:"label"`
	Lays  []string `json:"lays"`
}

// Of a state, the job of a name, in the language of a reader.
func Of(name string, state desk.State, reader language.Language) (Job, error) {
	out := Job{
		Job: name, Revision: state.Revision, Text: state.Text, Sound: state.Work != nil,
		Can: Can{state.CanUndo, state.CanRedo}, Faults: []Remark{}, Doubts: []Remark{}, Notes: []string{},
		Pieces: []Piece{}, Truing: []Seam{}, Cloths: []Cloth{}, History: []Made{}, Sizes: []string{},
	}
	tree := edit.Tree(state.Text)
	form := formOf(state, tree, reader)
	form.halves()
	form.usuals()
	out.Fields, out.Groups = form.fields, form.groups
	keys, _ := tree.(map[string]any)
	out.Title, _ = keys["job"].(string)
	out.Client, _ = keys["client"].(string)
	out.Units, _ = keys["units"].(string)
	for _, f := range state.Faults {
		out.Faults = append(out.Faults, Remark{pathOrNone(f.Path), f.Line, f.Kind.String(), f.Said.In(reader)})
	}
	for _, one := range state.History {
		out.History = append(out.History, Made{one.Step, one.When, one.Kind, one.Path, one.Now})
	}
	if !state.Outside.IsEmpty() {
		out.Outside = &Told{state.Outside.In(reader)}
	}
	if state.Work == nil {
		return out, nil
	}
	return out, out.drafted(state.Work, garmentsIn(keys), reader)
}

func pathOrNone(path job.Path) []any {
	if len(path) == 0 {
		return nil
	}
	return desk.Steps(path)
}

// garmentsIn a file by their names.
func garmentsIn(keys map[string]any) map[string]int {
	out := map[string]int{}
	list, _ := keys["garments"].([]any)
	for i, one := range list {
		garment, _ := one.(map[string]any)
		name, _ := garment["name"].(string)
		out[name] = i
	}
	return out
}

// drafted adds what only a job without faults has.
func (j *Job) drafted(work *job.Work, garments map[string]int, reader language.Language) error {
	j.Notes = append(j.Notes, language.Texts(work.Notes, reader)...)
	j.Size, j.Sizes = work.Size, append(j.Sizes, work.Sizes()...)
	for _, q := range work.Questions {
		j.Doubts = append(j.Doubts, Remark{Path: pathOrNone(q.Path), Line: q.Line, Sentence: q.Said.In(reader)})
	}
	var err error
	if j.Pieces, err = piecesOf(work, garments); err != nil {
		return err
	}
	j.Truing = truingOf(work, j.Pieces)
	for i, goods := range work.Cloths {
		one := Cloth{Name: goods.Cloth.Name, Index: i, Widths: []Width{},
			Remnant: goods.Length > 0 || len(goods.Remnants) > 0}
		for _, width := range goods.Widths {
			one.Widths = append(one.Widths, Width{Address(width), work.Format(width), lays()})
		}
		j.Cloths = append(j.Cloths, one)
	}
	return nil
}

// Address of a width, as requests name it: "1400mm".
func Address(mm float64) string { return fmt.Sprintf("%gmm", tidy(mm)) }

// lays that a cloth may be spread in.
func lays() []string {
	var out []string
	for _, kind := range lay.Kinds() {
		out = append(out, kind.String())
	}
	return out
}
