package app

import (
	"fmt"
	"io"

	"github.com/paulmach/orb"

	"ellwand/cmd/ellwand/job"
	"ellwand/draft/steps"
	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/paper"
	"ellwand/pieces/sheet"
	"ellwand/pieces/svg"
	piecewords "ellwand/pieces/words"
)

// Document is something that can be written into a file or sent to a page.
type Document struct {
	// Name of a file for it, made of its subject.
	Name  string
	Write func(io.Writer) error
}

// Drawings are SVG drawings of every piece at true scale; of a job in several
// sizes, with the sizes one over the other.
func Drawings(drafted Drafted) ([]Document, error) {
	if drafted.InSizes {
		return nests(drafted.Works)
	}
	var out []Document
	for _, made := range drafted.First().Garments {
		for _, piece := range made.Pieces {
			out = append(out, Document{
				Name:  fmt.Sprintf("%s-%s-%s.svg", job.Slug(made.Name), job.Slug(piece.Name), job.Slug(piece.Cloth)),
				Write: func(w io.Writer) error { return piecewords.Refused(svg.Write(w, piece.Name, piece)) },
			})
		}
	}
	return out, nil
}

// nests draw every piece in all sizes.
func nests(works []*job.Work) ([]Document, error) {
	figures, err := DrawnPieces(works)
	if err != nil {
		return nil, err
	}
	var out []Document
	for _, figure := range figures {
		piece, page := figure.Sizes[0].Piece, nestPage(figure)
		out = append(out, Document{
			Name:  fmt.Sprintf("%s-%s.svg", job.Slug(piece.Garment), job.Slug(piece.Name)),
			Write: func(w io.Writer) error { return drawing.WriteSVG(w, piece.Name, page) },
		})
	}
	return out, nil
}

// nestPage is a page as large as a figure, y down, with a margin round it.
func nestPage(figure sheet.DrawnPiece) drawing.Page {
	const margin = 10
	turned := figure.Map(pieces.MirrorY())
	box := turned.Around().Bound()
	from := orb.Point{box.Min[0] - margin, box.Min[1] - margin}
	page := drawing.Page{Width: box.Max[0] - box.Min[0] + 2*margin, Height: box.Max[1] - box.Min[1] + 2*margin}
	turned.Map(pieces.Move(-from[0], -from[1])).Draw(&page.Picture)
	return page
}

// DraftSheet is the draft sheet of a job: the steps of a single size, or
// several sizes one over the other.
type DraftSheet struct{ Drafted }

// WriteText writes it as plain text.
func (s DraftSheet) WriteText(w io.Writer) error {
	if s.InSizes {
		nest := s.nest()
		if err := steps.NestProven(nest); err != nil {
			return err // whoever writes the file says that it failed
		}
		return steps.WriteNestText(w, nest)
	}
	document := documentOf(s.First())
	if err := steps.Proven(document); err != nil {
		return err // whoever writes the file says that it failed
	}
	return steps.WriteText(w, document)
}

// WritePDF writes it as a PDF.
func (s DraftSheet) WritePDF(w io.Writer, paper paper.Paper) error {
	if s.InSizes {
		nest := s.nest()
		if err := steps.NestProven(nest); err != nil {
			return err // whoever writes the file says that it failed
		}
		return steps.WriteNestPDF(w, nest, paper)
	}
	document := documentOf(s.First())
	if err := steps.Proven(document); err != nil {
		return err // whoever writes the file says that it failed
	}
	return steps.WritePDF(w, document, paper)
}

func (s DraftSheet) nest() steps.Nest {
	nest := steps.Nest{}
	for _, work := range s.Works {
		nest.Sizes = append(nest.Sizes, work.Size)
		nest.Documents = append(nest.Documents, documentOf(work))
	}
	return nest
}

func documentOf(work *job.Work) steps.Document {
	document := steps.Document{Title: work.Title(), Unit: work.Unit}
	for _, made := range work.Garments {
		document.Garments = append(document.Garments, steps.Garment{
			Name: made.Name, Body: made.Body, Pieces: made.Pieces, Sheets: made.Sheets, Truing: made.Truing,
			Derived: made.Derived,
		})
	}
	return document
}
