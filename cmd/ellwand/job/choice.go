package job

import (
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/language"
)

// choose reads a word; an empty one is the usual value.
func choose[T interface {
	~int
	strict.Worded
}](v values, path Path, what language.Sentence, chosen Choice[T]) T {
	return strict.Choose(v.Values, path, what, chosen)
}

// chooseNamed is the like for a type whose values are their words.
func chooseNamed[T interface {
	~string
	strict.Worded
}](v values, path Path, what language.Sentence, chosen Choice[T]) T {
	words := strict.WordsOf[T]()
	return T(words[v.chosen(path, what, string(chosen), words)])
}

// chosen looks a word up; an empty one is the first.
func (v values) chosen(path Path, what language.Sentence, text string, known []string) int {
	at, unknown := strict.Chosen(what, text, known)
	if !unknown.IsEmpty() {
		v.Note(path, strict.Unknown, unknown)
	}
	return at
}

// What a bodice or a skirt has at its centre lines.
type (
	bodiceBack  int
	bodiceFront int
	skirtBack   int
)

const (
	backSeam bodiceBack = iota
	backFold
	backOpening
)

const (
	frontFold bodiceFront = iota
	frontOpening
)

const (
	skirtSeam skirtBack = iota
	skirtFold
)

// dartsGo is where the darts of an A-line skirt go.
type dartsGo int

const (
	toWaist dartsGo = iota
	toHem
)

var (
	bodiceBacks  = [...]string{backSeam: "seam", backFold: "fold", backOpening: "opening"}
	bodiceFronts = [...]string{frontFold: "fold", frontOpening: "opening"}
	skirtBacks   = [...]string{skirtSeam: "seam", skirtFold: "fold"}
	dartsGoTo    = [...]string{toWaist: "waist", toHem: "hem"}
)

// Words for it.
func (bodiceBack) Words() []string { return bodiceBacks[:] }

// Words for it.
func (bodiceFront) Words() []string { return bodiceFronts[:] }

// Words for it.
func (skirtBack) Words() []string { return skirtBacks[:] }

// Words for it.
func (dartsGo) Words() []string { return dartsGoTo[:] }
