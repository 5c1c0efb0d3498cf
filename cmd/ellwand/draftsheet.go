package main

import (
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"ellwand/cmd/ellwand/job"
	"ellwand/draft/steps"
)

// addSheet plans the draft sheet, if one is asked for.
func addSheet(files *outputs, work *job.Work, d draftOptions) error {
	if d.sheet == "" {
		return nil
	}
	papers := map[string]steps.Paper{"a4": steps.A4, "letter": steps.Letter}
	paper, known := papers[strings.ToLower(d.paper)]
	if !known {
		return fmt.Errorf("there is no paper %q for the draft sheet; use a4 or letter", d.paper)
	}
	document := documentOf(work)
	switch strings.ToLower(filepath.Ext(d.sheet)) {
	case ".txt":
		return files.add(d.sheet, func(w io.Writer) error { return steps.WriteText(w, document) })
	case ".pdf":
		return files.add(d.sheet, func(w io.Writer) error { return steps.WritePDF(w, document, paper) })
	}
	return fmt.Errorf("the draft sheet is a PDF or plain text: end its name %s in .pdf or .txt", d.sheet)
}

func documentOf(work *job.Work) steps.Document {
	document := steps.Document{Title: work.Title(), Unit: work.Unit}
	for _, made := range work.Garments {
		document.Garments = append(document.Garments, steps.Garment{
			Name: made.Name, Body: made.Body, Pieces: made.Pieces, Sheets: made.Sheets, Truing: made.Truing,
		})
	}
	return document
}
