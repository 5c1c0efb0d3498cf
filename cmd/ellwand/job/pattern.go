package job

import (
	"errors"
	"math"
	"path/filepath"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/patternfile"
	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/marks"
)

// pattern reads a file of pieces beside the job.
func (f *File) pattern(name string) (*patternfile.File, error) {
	path := name
	if !filepath.IsAbs(path) {
		path = filepath.Join(filepath.Dir(f.name), name)
	}
	if f.patterns[path] == nil {
		file, err := patternfile.Read(path)
		f.patterns[path] = &patternRead{file, err}
	}
	return f.patterns[path].file, f.patterns[path].err
}

// fromPattern makes the pieces of the file that a garment names.
func (r *resolver) fromPattern(path Path, garment Garment, made string, cloth string,
	widths allowances) ([]pieces.Piece, []patternfile.Sewn) {
	if garment.Pattern == nil {
		return nil, nil
	}
	path = path.Key("pattern")
	file, err := r.file.pattern(string(garment.Pattern.File))
	if err != nil {
		r.faultsOf(path, err)
		return nil, nil
	}
	size, ok := r.patternSize(path, garment, file)
	if !ok {
		return nil, nil
	}
	all, sewn, err := file.OfSize(size,
		patternfile.Usual{Cloth: r.named(cloth), Allowance: widths.usual, Every: widths.seams()})
	if err != nil {
		r.faultsOf(path, err)
		return nil, nil
	}
	for i := range all {
		all[i].Garment, all[i].Size = made, size
	}
	return all, sewn
}

// faultsOf notes the faults of another file, each with its own line.
func (r *resolver) faultsOf(path Path, err error) {
	var faults *strict.Faults
	if !errors.As(err, &faults) {
		r.Note(path, strict.Missing, language.OfError(err))
		return
	}
	for _, fault := range faults.List {
		fault.File = faults.FileOf(fault)
		r.faults.List = append(r.faults.List, fault)
	}
}

// patternSize is the size that a pattern is used in; empty for one of a single size.
func (r *resolver) patternSize(path Path, garment Garment, file *patternfile.File) (string, bool) {
	sizes, size := file.Sizes(), string(garment.Pattern.Size)
	of := path.Key("size")
	if size == "" {
		size, of = r.wearing.size, r.wearing.path.Key("size")
	}
	switch {
	case len(sizes) == 0 && garment.Pattern.Size != "":
		r.fault(of, strict.Contradiction, "the pattern %s has no sizes; remove size",
			"der Schnitt %s hat keine Größen; nehmen Sie die Größe weg", file.Path())
		return "", false
	case len(sizes) == 0:
		return "", true
	case size == "":
		r.fault(path, strict.Missing, "the pattern %s has the sizes %s; say which one, such as: pattern: {file: %s, "+
			"size: %s}",
			"der Schnitt %s hat die Größen %s; sagen Sie, welche: pattern: {file: %s, size: %s}",
			file.Path(), joined(sizes), string(garment.Pattern.File), sizes[0])
		return "", false
	case !slices.Contains(sizes, size):
		r.fault(of, strict.Unknown, "the pattern %s has no size %q; it has %s",
			"der Schnitt %s hat keine Größe %q; er hat %s", file.Path(), size, joined(sizes))
		return "", false
	}
	return size, true
}

// inPlace puts pieces of a pattern in the place of drafted ones of the same name, and
// the others after them. What was put in place is held against what was drafted.
func (r *resolver) inPlace(made *Made, own []pieces.Piece) {
	var names []string
	for _, piece := range own {
		at := slices.IndexFunc(made.Pieces, func(p pieces.Piece) bool { return p.Name == piece.Name })
		if at < 0 || slices.Contains(names, piece.Name) {
			continue
		}
		names = append(names, piece.Name)
		drafted := made.Pieces[at]
		for i := range own {
			if own[i].Name == piece.Name {
				own[i].Role = drafted.Role
			}
		}
		made.Pieces = slices.DeleteFunc(made.Pieces, func(p pieces.Piece) bool { return p.Name == piece.Name })
		made.Truing.Rows = append(made.Truing.Rows, altered(drafted, piece)...)
		made.Replaced = append(made.Replaced, piece.Name)
	}
	if len(names) > 0 {
		r.work.note(language.Say("%s: the %s is that of the pattern, in place of the drafted one; the truing below is of "+
			"the drafted pieces, and each edge that was altered has a line of its own",
			"%s: %s kommt aus dem Schnitt, statt des gezeichneten Teils; der Nahtvergleich gilt den "+
				"gezeichneten Teilen, und jede geänderte Kante hat eine eigene Zeile",
			made.Name, strings.Join(names, " and the ")))
	}
	made.Pieces = append(made.Pieces, own...)
}

// altered compares the edges of a piece with those that were drafted; those of the
// same length are left out.
func altered(drafted, piece pieces.Piece) []draft.Row {
	const same = 0.01 // mm: what a file rounds
	piece = piece.Seam()
	var out []draft.Row
	for _, e := range piece.Edges {
		before, ok := drafted.Edge(e.Name)
		if !ok || e.Name == piece.Fold || math.Abs(before.Path.Length()-e.Path.Length()) < same {
			continue
		}
		out = append(out, draft.SewnRow(draft.Sewn{Seam: e.Name.String(), Of: piece.Name + ", altered",
			Length: e.Path.Length(), Against: "as drafted", Other: before.Path.Length()}))
	}
	return out
}

// SewnRows are the rows of the truing report of what a file of pieces sews together, in
// a size, which may be empty.
func SewnRows(all []patternfile.Sewn, size string) []draft.Row {
	var out []draft.Row
	for _, s := range all {
		if size != "" {
			s.Name += ", size " + size
		}
		out = append(out, draft.SewnRow(draft.Sewn{Seam: s.Name, Of: s.Of, Length: s.Length, Against: s.Against,
			Other: s.Other, Ease: s.Ease, Accuracy: s.Accuracy, AtCut: s.AtCut}))
	}
	return out
}

// isDrafted says that some garment of the job is drafted, so that its size is one of a
// size table.
func (f *File) isDrafted() bool {
	return slices.ContainsFunc(f.Garments, func(g Garment) bool {
		return g.Bodice != nil || g.Sleeve != nil || g.Skirt != nil || g.Trousers != nil || g.StraightCut != nil ||
			len(g.Parts) > 0
	})
}

// hasPattern says that some garment has a pattern.
func (f *File) hasPattern() bool {
	return slices.ContainsFunc(f.Garments, func(g Garment) bool { return g.Pattern != nil })
}

// patternSizes are the sizes of the first pattern that has several.
func (f *File) patternSizes() []string {
	for _, g := range f.Garments {
		if g.Pattern == nil {
			continue
		}
		if file, err := f.pattern(string(g.Pattern.File)); err == nil && len(file.Sizes()) > 0 {
			return file.Sizes()
		}
	}
	return nil
}

// unsureMatches says of which match points of a cloth with a repeat it is not known
// where the seam lies.
func (r *resolver) unsureMatches() {
	for _, offer := range r.work.Cloths {
		if offer.Cloth.Repeat.IsPlain() {
			continue
		}
		for _, piece := range r.work.PiecesOf(offer.Cloth.Name) {
			for _, notch := range piece.Notches {
				if e, ok := piece.Edge(notch.Edge); ok && e.Unknown && notch.Match != marks.None {
					r.work.note(language.Say("%s: nobody knows how much allowance its edge %q includes, so that the print "+
						"is matched at its cutting line, and not at the seam",
						"%s: niemand weiß, wie viel Nahtzugabe an der Kante %q enthalten ist; darum passt das "+
							"Muster dort an der Schnittlinie, nicht an der Naht", piece.Name, e.Name))
				}
			}
		}
	}
}
