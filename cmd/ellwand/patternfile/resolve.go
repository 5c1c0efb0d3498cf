package patternfile

import (
	"slices"

	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
	"ellwand/pieces/seams"
)

// Usual is what a file takes from where it is used.
type Usual struct {
	// Cloth finds a cloth by its name; the error says what is wrong with it. An
	// empty name is the usual cloth.
	Cloth func(name string) (string, error)
	// Allowance of an edge, mm, where it is to be added; Every is that of a seam
	// that is not named.
	Allowance func(edge seams.Name) float64
	Every     float64
}

// Alone is what a file takes that is used by no job: cloths are called as they are
// there, and allowances are 15 mm [source.CommonPractice].
func Alone() Usual {
	const seam = 15
	return Usual{
		Cloth:     func(name string) (string, error) { return name, nil },
		Allowance: func(seams.Name) float64 { return seam },
		Every:     seam,
	}
}

// Path of the file.
func (f *File) Path() string { return f.name }

// Sizes of the pattern, in the order of the file; none where it has but one.
func (f *File) Sizes() []string {
	var out []string
	for _, p := range f.Pieces {
		if size := string(p.Size); size != "" && !slices.Contains(out, size) {
			out = append(out, size)
		}
	}
	return out
}

// OfSize are the pieces of a size, and those that are the same in every size; all of
// them where the size is empty. The error, *strict.Faults, has everything that is
// wrong with the file.
func (f *File) OfSize(size string, usual Usual) ([]pieces.Piece, []Sewn, error) {
	faults := &strict.Faults{File: f.name}
	m := f.maker(faults, usual)
	if m == nil {
		return nil, nil, faults.OrNil()
	}
	var all []pieces.Piece
	for i, p := range f.Pieces {
		if size != "" && p.Size != "" && string(p.Size) != size {
			continue
		}
		all = append(all, m.Piece(strict.Top("pieces").Entry(i), p)...)
	}
	if len(f.Pieces) == 0 {
		m.Fault(strict.Top("pieces"), strict.Missing, "the file has no pieces; add them under pieces:",
			"die Datei hat keine Teile")
	}
	f.twice(*m)
	sewn := m.sewn(strict.Top("seams"), f.Seams, all, len(faults.List) == 0)
	return all, sewn, faults.OrNil()
}

// maker of the pieces of the file; nil where it cannot be read as one.
func (f *File) maker(faults *strict.Faults, from Usual) *Maker {
	note := func(path Path, kind strict.Kind, said language.Sentence) {
		faults.List = append(faults.List, strict.Fault{File: f.name, Path: path, Line: f.lines.Of(path), Kind: kind,
			Piece: f.named(path), Said: said})
	}
	m := Maker{Values: strict.Values{Note: note}, Usual: from.Allowance, Every: from.Every}
	if f.Version != Version {
		m.Fault(strict.Top("pieces_file"), strict.Unknown,
			"this is a file of pieces of version %q, and this program "+
				"reads version %s; "+
				"write pieces_file: %[2]s",
			"dies ist eine Schnittdatei der Fassung %q, und dieses Programm liest Fassung %s; "+
				"schreiben Sie pieces_file: %[2]s", string(f.Version), Version)
		return nil
	}
	unit, err := measure.ParseUnit(string(f.Units))
	if err != nil {
		m.Fault(strict.Top("units"), strict.Malformed, "units: %s", "Einheit: %s", err)
		return nil
	}
	m.Unit, m.Say = unit, unit.System().Size
	m.Cloth = func(path Path, what language.Sentence, name Text) string {
		cloth, err := from.Cloth(string(name))
		if err != nil {
			m.Fault(path, strict.Unknown, "%s: %s", "%s: %s", what, err)
		}
		return cloth
	}
	m.all = usual{allowance: f.Allowance, path: strict.Top("allowance")}
	if f.Accuracy != "" {
		m.all.accuracy, _ = m.Length(strict.Top("accuracy"), language.Say("the accuracy", "Genauigkeit"), f.Accuracy)
	}
	return &m
}

// named is the piece that a path lies in.
func (f *File) named(path Path) string {
	if len(path) > 1 && path[0].Key == "pieces" && path[1].Index < len(f.Pieces) {
		return string(f.Pieces[path[1].Index].Name)
	}
	return ""
}

// twice refuses two pieces of one name and size.
func (f *File) twice(m Maker) {
	seen := map[[2]string]bool{}
	for i, p := range f.Pieces {
		key := [2]string{strict.Plain(string(p.Name)), string(p.Size)}
		if seen[key] {
			var of language.Sentence
			if p.Size != "" {
				of = language.Say(" of size %s", " der Größe %s", string(p.Size))
			}
			m.Fault(strict.Top("pieces").Entry(i).Key("name"), strict.Twice,
				"two pieces%s are named %q; give each its own "+
					"name", "zwei Teile%s heißen %q; geben Sie jedem einen eigenen Namen", of, string(p.Name))
		}
		seen[key] = true
	}
}
