package patternfile

import (
	"math"

	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces"
	"ellwand/pieces/language"
)

const (
	// largest, mm, of a piece over all, and farthest that its points may lie from the
	// origin: far beyond any cloth [source.OwnChoice].
	largest  = 100_000
	farthest = 1_000_000
)

// sized refuses an outline that is larger than any piece, or lies too far away to be
// exact.
func (m Maker) sized(path Path, what language.Sentence, piece pieces.Piece) bool {
	box := piece.Boundary(1).Bound()
	size := math.Max(box.Max[0]-box.Min[0], box.Max[1]-box.Min[1])
	away := 0.0
	for k := range 2 {
		away = math.Max(away, math.Max(math.Abs(box.Min[k]), math.Abs(box.Max[k])))
	}
	switch {
	case !(size <= largest):
		m.Fault(path, strict.OutOfRange,
			"%s is %s over all; a piece is at most %s: look at the units of its numbers, and "+
				"at its arcs and curves",
			"%s ist im Ganzen %s groß; ein Teil ist höchstens %s: prüfen Sie Einheit, Bögen und Kurven",
			what, m.Say(size), m.Say(largest))
		return false
	case !(away <= farthest):
		m.Fault(path, strict.OutOfRange,
			"%s lies %s away from [0, 0]; its points lie within %s of it: move it nearer",
			"%s liegt %s von [0, 0] entfernt; es müssen höchstens %s sein: schieben Sie es näher", what,
			m.Say(away), m.Say(farthest))
		return false
	}
	return true
}
