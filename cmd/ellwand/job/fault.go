package job

import (
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/language"
)

// Refuse makes the one fault of a path in the job: what it is asked for cannot
// be, though it could be read.
func (f *File) Refuse(path Path, kind strict.Kind, english, german string, args ...any) error {
	return &Faults{File: f.name, List: []Fault{f.fault(path, kind, language.Say(english, german, args...))}}
}

func (f *File) fault(path Path, kind strict.Kind, said language.Sentence) Fault {
	garment, piece := f.named(path)
	return Fault{Path: path, Line: f.lines.Of(path), Kind: kind, Garment: garment, Piece: piece, Said: said}
}

// named says which garment and which piece of it a path lies in.
func (f *File) named(path Path) (garment, piece string) {
	if len(path) < 2 || path[0].Key != "garments" || path[1].Index >= len(f.Garments) {
		return "", ""
	}
	g := f.Garments[path[1].Index]
	if len(path) < 4 {
		return string(g.Name), ""
	}
	switch i := path[3].Index; {
	case path[2].Key == "pieces" && i < len(g.Pieces):
		piece = string(g.Pieces[i].Name)
	case path[2].Key == "parts" && i < len(g.Parts):
		piece = string(g.Parts[i].Name)
		if piece == "" {
			piece = string(g.Parts[i].Kind)
		}
	}
	return string(g.Name), piece
}
