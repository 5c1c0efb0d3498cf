package check

import (
	"errors"
	"fmt"

	"ellwand/fabric/lay"
	"ellwand/pieces"
)

// Plan says whether a plan keeps the rules of the trade for the pieces that
// were asked. It is written apart from the code that makes plans, and starts
// again from the pieces; it opens the lay out and looks at each piece where it
// lies on the open cloth:
//
//  1. the cutting line of each piece, moved as the plan says, is covered by
//     the outline that was laid, and that outline is hardly larger;
//  2. every outline lies on its part of the lay, every piece on the usable
//     cloth and clear of its flaws;
//  3. the right number of each piece comes out of all plies, and of a pair as
//     many right as left ones;
//  4. a half piece lies with its fold edge exactly on a fold, and what comes
//     out face down is the left of a pair or its own mirror image, unless both
//     sides of the cloth look alike;
//  5. the grainline lies as the piece asks, within the tilt;
//  6. the nap runs the same way over all pieces, or over all of a garment, and
//     the pieces that must go one way do;
//  7. pieces are enlarged when the cloth is washed after cutting;
//  8. what the plan says to match does, to 1 mm on the open cloth;
//  9. two pieces of one part keep the gap of the cloth;
//
// 10. pieces of the border have their hem on its line, and lie inwards of it;
// 11. the centre of a motif falls on the pieces on which it is centred.
//
// That pieces do not overlap is checked by verify.Layout.
func Plan(p lay.Plan, all []pieces.Piece) error {
	var faults []error
	all = onBorder(p.Cloth.Border, all)
	counts := make([]tally, len(all))
	naps := map[string]int{}
	var opened []openedPiece
	for _, l := range p.Pieces {
		source := lay.SourceOf(l, all)
		if source < 0 {
			faults = append(faults, fmt.Errorf("%s was not asked for", l.Name))
			continue
		}
		faults = append(faults, checkPlace(p, l), checkFold(p, l, all[source]), checkSize(p, l, all[source]))
		for _, o := range openedOut(p, l) {
			opened = append(opened, o)
			counts[source].add(o)
			faults = append(faults, checkOnCloth(p, o), checkFace(p, o, all[source]), checkGrain(p, o), checkNap(p, o, naps), checkBorder(p, o, all[source]), checkMotif(p, o, all[source]))
		}
	}
	for i, piece := range all {
		faults = append(faults, counts[i].check(piece, p.Cloth.Alike))
	}
	return errors.Join(append(faults, checkMatches(p, opened, all), checkGaps(p))...)
}
