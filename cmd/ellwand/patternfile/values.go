package patternfile

import (
	"github.com/paulmach/orb"

	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/language"
	"ellwand/pieces/seams"
)

// Maker makes pieces of what is written of them. What it finds wrong it notes, and
// leaves such a piece out.
type Maker struct {
	strict.Values
	// Say prints a length.
	Say func(mm float64) string
	// Cloth finds a cloth by the name that is written of it at a path; an empty
	// name is the usual one.
	Cloth func(path Path, what language.Sentence, name Text) string
	// Usual allowance of an edge, mm, where it is to be added; Every is that of a
	// seam that is not named.
	Usual func(edge seams.Name) float64
	Every float64
	// all is what the file says of its pieces as a whole.
	all usual
}

// usual is what a file says of all its pieces.
type usual struct {
	allowance *Allowance
	path      Path
	accuracy  float64
}

func (m Maker) point(path Path, what language.Sentence, p Point) (orb.Point, bool) {
	if len(p) != 2 {
		m.Fault(path, strict.WrongShape, "%s: a point has two numbers, [x, y]",
			"%s: ein Punkt hat zwei Zahlen, [x, y]", what)
		return orb.Point{}, false
	}
	x, okX := m.Signed(path, what, p[0])
	y, okY := m.Signed(path, what, p[1])
	return orb.Point{x, y}, okX && okY
}
