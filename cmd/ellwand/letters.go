package main

import (
	"ellwand/cmd/ellwand/job"
	"ellwand/pieces/drawing"
)

// warnLetters says which names of a job stand otherwise on paper, because the
// typeface lacks some of their letters.
func (e *env) warnLetters(work *job.Work) {
	names := []string{work.Title()}
	for _, made := range work.Garments {
		names = append(names, made.Name)
		for _, piece := range made.Pieces {
			names = append(names, piece.Name, piece.Size)
		}
	}
	for _, cloth := range work.Cloths {
		names = append(names, cloth.Cloth.Name)
	}
	said := map[string]bool{}
	for _, name := range names {
		if said[name] || drawing.IsPrintable(name) {
			continue
		}
		said[name] = true
		e.note("note: %q stands as %q on paper: the typeface there has the letters of Latin scripts, Greek, Cyrillic, Armenian and Georgian, but not all of these; give a name in letters that it has", name, drawing.Printable(name))
	}
}
