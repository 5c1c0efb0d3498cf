package main

import (
	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/screen"
	"ellwand/cmd/ellwand/words"
	"fmt"
	"io"
)

// drawFound writes the picture, if one is asked for.
func (e *env) drawFound(all app.Imported, o importOptions, input string) error {
	if o.picture == "" {
		return nil
	}
	page, err := all.Picture(o.answers, false)
	if err != nil {
		return failure.Of(err)
	}
	write, err := contactFormat(o.picture, all.Title, page)
	if err != nil {
		return err
	}
	out := &files.Set{Force: o.force, Input: input}
	if err := out.Add(o.picture, write); err != nil {
		return err
	}
	if err := out.Commit(); err != nil {
		return err
	}
	if o.output == "" {
		return e.told(all, out.Paths())
	}
	e.note("What was found is drawn in %s.", o.picture)
	return nil
}

// drawOverview writes the picture of the whole drawing, if one is asked for and there is
// one.
func (e *env) drawOverview(all app.Imported, o importOptions, input string) error {
	path := o.view.overview
	if path == "" {
		return nil
	}
	if all.Photo != nil {
		return e.drawPhoto(all.Photo, o, input)
	}
	if all.Overview == nil {
		return fmt.Errorf("%s has no kinds of lines to choose from; --picture draws the pieces that were found", input)
	}
	write, err := contactFormat(path, all.Title, all.Overall())
	if err != nil {
		return err
	}
	out := &files.Set{Force: o.force, Input: input}
	if err := out.Add(path, write); err != nil {
		return err
	}
	if err := out.Commit(); err != nil {
		return err
	}
	e.note("The whole drawing is in %s.", path)
	return nil
}

// told says what was found.
func (e *env) told(all app.Imported, files []string) error {
	notes := words.Found(all.Notes, all.Unit.System())
	found := report.DrawingOf(all, notes, files)
	if e.json {
		return e.printJSON(found)
	}
	screen.Drawing(e.screen, found, all.Unit.System())
	e.notes(notes)
	return nil
}

// drawPhoto writes the photo with what was found drawn over it.
func (e *env) drawPhoto(write func(io.Writer) error, o importOptions, input string) error {
	path := o.view.overview
	if files.Extension(path) != ".png" {
		return fmt.Errorf("the photo with its outlines is written as .png, but the file is named %s; end its name in .png",
			path)
	}
	out := &files.Set{Force: o.force, Input: input}
	if err := out.Add(path, write); err != nil {
		return err
	}
	if err := out.Commit(); err != nil {
		return err
	}
	e.note("The photo with the outlines that were found is in %s: see whether they lie on the edges.", path)
	return nil
}
