package fabric

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// checkMatches is rule 8: on the open cloth, every point that matches lies at
// the same place of the repeat as the others, to 1 mm; across the cloth those
// of the side as drawn, and those of its image, each among themselves.
func (p LayPlan) checkMatches(opened []openedPiece, asked []pieces.Piece) error {
	cut := enlarged(p.Cloth, asked)
	var faults []error
	for _, match := range p.Matches {
		period := p.Cloth.Repeat.Along
		if match.Across {
			period = p.Cloth.Repeat.Across
		}
		seen := map[bool]float64{}
		for _, o := range opened {
			source := sourceOf(o.Laid, asked)
			if source < 0 || !slices.Contains(match.Pieces, source) {
				continue
			}
			for _, at := range p.pointsOf(o, cut[source], match) {
				first, ok := seen[at.image]
				if !ok {
					seen[at.image] = at.place
				} else if off := math.Abs(math.Remainder(at.place-first, period)); off > matchTolerance {
					faults = append(faults, fmt.Errorf("%s copy %d: its match point %q lies %.1f mm off the repeat", o.Name, o.Copy, match.Name, off))
				}
			}
		}
	}
	return errors.Join(append(faults, p.checkCentres(opened, cut))...)
}

// matchPlace is where a match point lies on one axis of the open cloth.
type matchPlace struct {
	place float64
	image bool
}

func (p LayPlan) pointsOf(o openedPiece, cut pieces.Piece, match Match) []matchPlace {
	at := cut.Grain.From
	if match.Name != "" {
		at, _ = pointNamed(cut, match.Name)
	}
	drawn, image := p.onCloth(o, cut, at)
	axis := 0
	if match.Across {
		axis = 1
	}
	if !match.Across || match.Name == "" { // both sides match one place
		return []matchPlace{{drawn[axis], false}}
	}
	if cut.Fold != "" {
		return []matchPlace{{drawn[axis], false}, {image[axis], true}}
	}
	return []matchPlace{{drawn[axis], o.faceDown && cut.Pair}}
}

// onCloth brings a point of a piece as drawn to the open cloth, and, of a half
// piece, the mirror image of that point about the fold edge too.
func (p LayPlan) onCloth(o openedPiece, cut pieces.Piece, at orb.Point) (drawn, image orb.Point) {
	m := o.motion()
	if o.OnFold {
		plies := p.foldedOver(o.Laid)
		lower, upper := plies[0].place(apply(m, at)), plies[1].place(apply(m, at))
		if o.Mirrored { // the template lies face down: its half is the upper one
			return upper, lower
		}
		return lower, upper
	}
	drawn = o.over.place(apply(m, at))
	fold, ok := cut.Edge(cut.Fold)
	if !ok {
		return drawn, drawn
	}
	start, end := endsOf(fold)
	return drawn, o.over.place(apply(m, pieces.MirrorAbout(start, end).Apply(at)))
}

// checkCentres looks at the pieces whose centre lies on a line of the repeat.
func (p LayPlan) checkCentres(opened []openedPiece, cut []pieces.Piece) error {
	repeat := p.Cloth.Repeat
	var faults []error
	for _, o := range opened {
		source := sourceOf(o.Laid, cut)
		if source < 0 || !slices.Contains(repeat.Centred, o.Name) {
			continue
		}
		drawn, _ := p.onCloth(o, cut[source], centreOf(cut[source]))
		if off := math.Abs(math.Remainder(drawn[1]-repeat.CentreLine, repeat.Across)); off > matchTolerance {
			faults = append(faults, fmt.Errorf("%s copy %d: its centre lies %.1f mm off its line of the repeat", o.Name, o.Copy, off))
		}
	}
	return errors.Join(faults...)
}
