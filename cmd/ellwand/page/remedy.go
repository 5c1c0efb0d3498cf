package page

import (
	"math"
	"strconv"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/page/view"
	"ellwand/cmd/ellwand/strict"
)

// remedy makes the changes of a job as actions on its desk.
type remedy struct {
	// path and text of the file, the file as it would be after what is done, and the job
	// and its pieces as they are.
	path, text string
	file       *job.File
	work       *job.Work
	pieces     []view.Piece
	cloth      int
	// other is the cloth that pieces are cut from in place of this one.
	other string
	do    []desk.Action
}

// tried is the job as it would be with some things done; nil where it could not be drafted.
func (r *remedy) tried(do []desk.Action) *job.Work {
	file := r.changed(do)
	if file == nil {
		return nil
	}
	work, err := file.Resolve()
	if err != nil {
		return nil
	}
	return work
}

func (r *remedy) changed(do []desk.Action) *job.File {
	text, err := desk.TextAfter(r.text, do)
	if err != nil {
		return nil
	}
	file, err := job.Parse(r.path, []byte(text))
	if err != nil {
		return nil
	}
	return file
}

func (r *remedy) set(value string, path strict.Path) bool {
	r.do = append(r.do, desk.SetTo(path, edit.Text(value)))
	return true
}

// here is the path of the cloth.
func (r *remedy) here() strict.Path { return strict.Top("cloths").Entry(r.cloth) }

func garmentAt(index int) strict.Path { return strict.Top("garments").Entry(index) }

func setText(at strict.Path, value string) desk.Action { return desk.SetTo(at, edit.Text(value)) }

// thousandths is a number as a job file has it.
func thousandths(x float64) string { return strconv.FormatFloat(math.Round(x*1000)/1000, 'f', -1, 64) }
