package check

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

var _ = register(rule{whole: checkMatches})

// checkMatches: on the open cloth, every point that matches lies at
// the same place of the repeat as the others, to 1 mm; across the cloth those
// of the side as drawn, and those of its image, each among themselves.
func checkMatches(p lay.Plan, opened []openedPiece, asked []pieces.Piece) error {
	var faults []error
	for _, match := range p.Matches {
		period := p.Cloth.Repeat.Along
		if match.Across {
			period = p.Cloth.Repeat.Across
		}
		seen := map[bool]float64{}
		for _, o := range opened {
			if !slices.Contains(match.Pieces, o.source) {
				continue
			}
			for _, at := range pointsOf(p, o, asked[o.source], match) {
				first, ok := seen[at.image]
				if !ok {
					seen[at.image] = at.place
				} else if off := math.Abs(math.Remainder(at.place-first, period)); off > matchTolerance {
					faults = append(faults,
						fmt.Errorf("%s copy %d: its match point %q lies %.1f mm off the repeat", o.Name, o.Copy, match.Name, off))
				}
			}
		}
	}
	return errors.Join(append(faults, checkUneven(p, opened), checkCentres(p, opened, asked))...)
}

// checkUneven: on a repeat that is not even all pieces of a garment point the same way.
func checkUneven(p lay.Plan, opened []openedPiece) error {
	if p.Cloth.Repeat.IsPlain() || p.Cloth.Repeat.Even {
		return nil
	}
	ways := map[string]int{}
	var faults []error
	for _, o := range opened {
		first, seen := ways[o.Garment]
		if !seen {
			ways[o.Garment] = wayOf(o)
		} else if first != wayOf(o) {
			faults = append(faults, fmt.Errorf("%s copy %d: it lies upside down beside others, and the repeat is not even",
				o.Name, o.Copy))
		}
	}
	return errors.Join(faults...)
}

// matchPlace is where a match point lies on one axis of the open cloth.
type matchPlace struct {
	place float64
	image bool
}

func pointsOf(p lay.Plan, o openedPiece, asked pieces.Piece, match lay.Match) []matchPlace {
	at := asked.Grain.From
	if match.Name != marks.None {
		at, _ = matchPoint(asked, match.Name)
	}
	drawn, image := onCloth(p, o, asked, at)
	axis := axisOf(match.Across)
	if !match.Across || match.Name == marks.None { // both sides match one place
		return []matchPlace{{drawn[axis], false}}
	}
	if asked.Fold != seams.None {
		return []matchPlace{{drawn[axis], false}, {image[axis], true}}
	}
	return []matchPlace{{drawn[axis], o.faceDown && asked.Pair}}
}

// onCloth brings a point of a piece as drawn to the open cloth, and, of a half
// piece, the mirror image of that point about the fold edge too.
func onCloth(p lay.Plan, o openedPiece, asked pieces.Piece, at orb.Point) (drawn, image orb.Point) {
	m := motion(o.Laid)
	at = grown(p.Cloth, asked, at)
	if o.OnFold {
		plies := foldedOver(p, o.Laid)
		lower, upper := plies[0].place(m.Apply(at)), plies[1].place(m.Apply(at))
		if o.Mirrored { // the template lies face down: its half is the upper one
			return upper, lower
		}
		return lower, upper
	}
	drawn = o.over.place(m.Apply(at))
	fold, ok := asked.Edge(asked.Fold)
	if !ok {
		return drawn, drawn
	}
	start, end := grown(p.Cloth, asked, fold.Path.Start()), grown(p.Cloth, asked, fold.Path.End())
	return drawn, o.over.place(m.Apply(pieces.MirrorAbout(start, end).Apply(at)))
}

// checkCentres looks at the pieces whose centre lies on a line of the repeat.
func checkCentres(p lay.Plan, opened []openedPiece, asked []pieces.Piece) error {
	repeat := p.Cloth.Repeat
	var faults []error
	for _, o := range opened {
		if !slices.Contains(repeat.Centred, o.Name) {
			continue
		}
		drawn, _ := onCloth(p, o, asked[o.source], centre(asked[o.source]))
		if off := math.Abs(math.Remainder(drawn[1]-repeat.CentreLine, repeat.Across)); off > matchTolerance {
			faults = append(faults,
				fmt.Errorf("%s copy %d: its centre lies %.1f mm off its line of the repeat", o.Name, o.Copy, off))
		}
	}
	return errors.Join(faults...)
}

// centre is a point of the centre of a piece: of its fold edge, of the first
// edge whose name begins with "centre", or of its grainline.
func centre(piece pieces.Piece) orb.Point {
	piece = piece.Seam()
	if edge, ok := piece.Edge(piece.Fold); ok && piece.Fold != seams.None {
		return edge.Path.Start()
	}
	for _, edge := range piece.Edges {
		if edge.Name.IsCentre() {
			return edge.Path.Start()
		}
	}
	return piece.Grain.From
}
