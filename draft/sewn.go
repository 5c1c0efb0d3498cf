package draft

import (
	"ellwand/draft/construct"
	"ellwand/pieces/source"
)

// Sewn are two lengths, in mm, that are sewn together, of pieces that are not
// drafted.
type Sewn struct {
	Seam          string // "side"
	Of, Against   string // "front side"
	Length, Other float64
	// Ease is how much longer the first is meant to be.
	Ease float64
	// Accuracy is how far the difference may be out, by how the pieces were measured.
	Accuracy float64
	// AtCut says that both are lengths of cutting lines, since it is not known
	// where the seam lies.
	AtCut bool
}

// SewnRow compares them.
func SewnRow(s Sewn) Row {
	normal := construct.Say("equal (%s)", source.CommonPractice)
	switch {
	case s.Ease != 0:
		normal = construct.Say("%s longer, as the pattern says", construct.Length(s.Ease))
	case s.AtCut:
		normal = construct.Say("equal, as far as cutting lines tell: their allowances are unknown")
	case s.Accuracy > 0:
		normal = construct.Say("equal (%s), as far as it was measured: to within %s", source.CommonPractice,
			construct.Length(s.Accuracy))
	}
	within := matching + s.Accuracy
	return compare(s.Seam, s.Of, s.Length, s.Against, s.Other, s.Ease-within, s.Ease+within, normal)
}
