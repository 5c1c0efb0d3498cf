package main

import (
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/draft/steps"
)

// addSheet plans the draft sheet, if one is asked for: the steps of a single
// size, or several sizes one over the other.
func addSheet(files *files.Set, works []*job.Work, d draftOptions) error {
	if d.sheet == "" {
		return nil
	}
	papers := map[string]steps.Paper{"a4": steps.A4, "letter": steps.Letter}
	paper, known := papers[strings.ToLower(d.paper)]
	if !known {
		return fmt.Errorf("there is no paper %q for the draft sheet; use a4 or letter", d.paper)
	}
	text := func(w io.Writer) error { return steps.WriteText(w, documentOf(works[0])) }
	pdf := func(w io.Writer) error { return steps.WritePDF(w, documentOf(works[0]), paper) }
	if len(d.sizes) > 0 {
		nest := nestOfSheets(works, d.sizes)
		text = func(w io.Writer) error { return steps.WriteNestText(w, nest) }
		pdf = func(w io.Writer) error { return steps.WriteNestPDF(w, nest, paper) }
	}
	switch strings.ToLower(filepath.Ext(d.sheet)) {
	case ".txt":
		return files.Add(d.sheet, text)
	case ".pdf":
		return files.Add(d.sheet, pdf)
	}
	return fmt.Errorf("the draft sheet is a PDF or plain text: end its name %s in .pdf or .txt", d.sheet)
}

func documentOf(work *job.Work) steps.Document {
	document := steps.Document{Title: work.Title(), Unit: work.Unit}
	for _, made := range work.Garments {
		document.Garments = append(document.Garments, steps.Garment{
			Name: made.Name, Body: made.Body, Pieces: made.Pieces, Sheets: made.Sheets, Truing: made.Truing, Derived: made.Derived,
		})
	}
	return document
}
