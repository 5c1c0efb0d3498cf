package app

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"ellwand/pieces"
	"ellwand/pieces/contact"
	"ellwand/pieces/drawing"
	"ellwand/pieces/found"
)

// Choose keeps some of what was found, by their numbers or names; all without any.
func (i Imported) Choose(entries []string) (Imported, error) {
	if len(entries) == 0 {
		return i, nil
	}
	out := i
	out.Found = nil
	for _, f := range i.Found {
		if slices.ContainsFunc(entries, func(entry string) bool { return isPiece(entry, f) }) {
			out.Found = append(out.Found, f)
		}
	}
	for _, entry := range entries {
		if !slices.ContainsFunc(i.Found, func(f Found) bool { return isPiece(entry, f) }) {
			return i, refuse("%s %q: there is no such piece; they are numbered from 1 to %d", ArgumentPiece, entry, len(i.Found))
		}
	}
	out.Notes = slices.DeleteFunc(slices.Clone(i.Notes), func(n found.Note) bool {
		return n.Piece > 0 && !slices.ContainsFunc(out.Found, func(f Found) bool { return f.Number == n.Piece })
	})
	return out, nil
}

// Picture draws what was found, each with its number and what lies on the fold by the
// answers, small on one page; cropped, it ends below the last of them.
func (i Imported) Picture(a Answers, cropped bool) (drawing.Page, error) {
	sheet := contact.Sheet{Title: i.Title, Cropped: cropped}
	for _, f := range i.Found {
		shape := contact.Shape{Number: f.Number, Name: f.Name}
		if said, err := a.Said(f); err == nil {
			shape.Fold = f.FoldLine(said.Fold)
		}
		for _, s := range f.Outline {
			shape.Lines = append(shape.Lines, pieces.Path{s.Curve})
		}
		for _, in := range f.Inner {
			if in.Path != nil {
				shape.Inner = append(shape.Inner, in.Path)
			}
		}
		if f.Sew != nil {
			shape.Inner = append(shape.Inner, f.Sew)
		}
		if g := f.Grain; g != nil {
			shape.Inner = append(shape.Inner, pieces.Path{pieces.Line{From: g.From, To: g.To}})
		}
		if at, is := FaultPlace(f.Fault); is {
			shape.Faults = append(shape.Faults, at)
		}
		sheet.Shapes = append(sheet.Shapes, shape)
	}
	return sheet.Page()
}

// Unanswered is what must still be said of the pieces that were found.
type Unanswered struct{ List []Lack }

// Lack is what must still be said of one.
type Lack struct {
	Number    int
	Name      string
	Questions []found.Question
	// Fold is the answer that says that its longest straight side lies on the fold; "none"
	// where no side of it is straight.
	Fold string
}

// Error counts the pieces; a caller words the questions.
func (u *Unanswered) Error() string { return fmt.Sprintf("%d pieces are not complete", len(u.List)) }

// Collection makes pieces of what was found and of the answers, and tells what was
// done. The error is *Unanswered where something is missing of any.
func (i Imported) Collection(a Answers, o found.Options) (Collection, []found.Note, error) {
	out := Collection{Title: i.Title, Unit: i.Unit}
	notes := slices.Clone(i.Notes)
	var lacks Unanswered
	var whole []Found
	var said []found.Said
	for _, f := range i.Found {
		if f.Fault != nil {
			return out, notes, &FoundFault{Number: f.Number, Name: f.Name, Err: f.Fault}
		}
		s, err := a.Said(f)
		if err != nil {
			return out, notes, err
		}
		if q := f.Missing(s); len(q) > 0 {
			lacks.List = append(lacks.List, Lack{f.Number, f.Name, q, FoldAnswers(f)[0]})
		}
		whole, said = append(whole, f), append(said, s)
	}
	if len(lacks.List) > 0 {
		return out, notes, &lacks
	}
	for k, f := range whole {
		piece, told, err := found.Complete(f.Piece, said[k], o)
		if err != nil {
			return out, notes, &FoundFault{Number: f.Number, Name: f.Name, Err: err}
		}
		for _, n := range told {
			n.Piece = f.Number
			notes = append(notes, n)
		}
		if name, renamed := unlike(piece, out.Pieces); renamed {
			notes = append(notes, found.Note{Kind: found.RenamedTwin, Piece: f.Number, Count: 1, What: name})
			piece.Name = name
		}
		out.Pieces = append(out.Pieces, piece)
	}
	return out, notes, nil
}

// FoundFault is why no piece can be made of what was found.
type FoundFault struct {
	Number int
	Name   string
	Err    error
}

// Error says so of the piece.
func (f *FoundFault) Error() string { return fmt.Sprintf("piece %d: %s", f.Number, f.Err) }

// Unwrap is what is wrong with it.
func (f *FoundFault) Unwrap() error { return f.Err }

// unlike is a name that no other piece of the size has, but for those that are the
// same in another cloth.
func unlike(p pieces.Piece, others []pieces.Piece) (name string, renamed bool) {
	name = p.Name
	for n := 2; ; n++ {
		same := func(o pieces.Piece) bool {
			return strings.EqualFold(o.Name, name) && o.Size == p.Size && (o.Cloth == p.Cloth || !isSameShape(o, p))
		}
		if !slices.ContainsFunc(others, same) {
			return name, name != p.Name
		}
		name = p.Name + " " + strconv.Itoa(n)
	}
}

func isSameShape(a, b pieces.Piece) bool {
	return slices.EqualFunc(a.Edges, b.Edges, func(x, y pieces.Edge) bool {
		return slices.Equal(x.Path, y.Path) && x.Included == y.Included && x.Allowance == y.Allowance
	})
}
