package app

import (
	"context"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/patternfile"
	"ellwand/draft"
	"ellwand/pieces"
	"ellwand/pieces/contact"
	"ellwand/pieces/drawing"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
	piecewords "ellwand/pieces/words"
)

// Collection is pieces, wherever they come from: a file of pieces, or a job.
type Collection struct {
	Title  string
	Unit   measure.Unit
	Pieces []pieces.Piece
	// Truing of the edges that are sewn together.
	Truing draft.Report
	Notes  []string
}

// ReadCollection reads a file of pieces, in all its sizes, or the pieces of a job.
func ReadCollection(ctx context.Context, path string) (Collection, error) {
	if !patternfile.Is(path) {
		work, err := ReadJob(ctx, path)
		if err != nil {
			return Collection{}, err
		}
		return collectionOf(work), nil
	}
	file, err := patternfile.Read(path)
	if err != nil {
		return Collection{}, err
	}
	out := Collection{Title: string(file.Name)}
	if out.Title == "" {
		out.Title = "Pieces"
	}
	if out.Unit, err = measure.ParseUnit(string(file.Units)); err != nil {
		out.Unit = measure.Centimetre // which the file is refused for below
	}
	sizes := file.Sizes()
	if len(sizes) == 0 {
		sizes = []string{""}
	}
	for _, size := range sizes {
		all, sewn, err := file.OfSize(size, patternfile.Alone())
		if err != nil {
			return Collection{}, err
		}
		out.Pieces = append(out.Pieces, all...)
		out.Truing.Rows = append(out.Truing.Rows, job.SewnRows(sewn, size)...)
	}
	out.Pieces = once(out.Pieces)
	return out, nil
}

// once leaves out what is the same in every size, but for the first.
func once(all []pieces.Piece) []pieces.Piece {
	var out []pieces.Piece
	for _, p := range all {
		same := func(o pieces.Piece) bool { return o.Name == p.Name && o.Size == p.Size && o.Cloth == p.Cloth }
		if !slices.ContainsFunc(out, same) {
			out = append(out, p)
		}
	}
	return out
}

func collectionOf(work *job.Work) Collection {
	out := Collection{Title: work.Title(), Unit: work.Unit, Notes: language.Texts(work.Notes, language.English)}
	for _, made := range work.Garments {
		out.Pieces = append(out.Pieces, made.Pieces...)
		out.Truing.Rows = append(out.Truing.Rows, made.Truing.Rows...)
	}
	return out
}

// Named keeps the pieces of some names; without names, all.
func (c Collection) Named(names []string) (Collection, error) {
	if len(names) == 0 {
		return c, nil
	}
	out := c
	out.Pieces = nil
	var known []string
	for _, p := range c.Pieces {
		if !slices.Contains(known, p.Name) {
			known = append(known, p.Name)
		}
	}
	for _, name := range names {
		name = strings.TrimSpace(name)
		before := len(out.Pieces)
		for _, p := range c.Pieces {
			if job.Slug(p.Name) == job.Slug(name) {
				out.Pieces = append(out.Pieces, p)
			}
		}
		if len(out.Pieces) == before {
			return c, refuse("%s %q: there is no such piece; the pieces are %s", ArgumentPiece, name,
				strings.Join(known, ", "))
		}
	}
	return out, nil
}

// ContactSheet draws the pieces small on one page.
func (c Collection) ContactSheet() (drawing.Page, error) {
	page, err := contact.Sheet{Title: c.Title, Pieces: c.Pieces}.Page()
	return page, piecewords.Refused(err)
}
