package check

import (
	"errors"
	"fmt"
	"math"

	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

var _ = register(rule{whole: checkBeds, laid: checkFromLower})

// checkBeds: the lay is as wide and takes as much cloth as its kind of folding says,
// its parts have their plies and folds, and one of them ends where the lay ends.
func checkBeds(p lay.Plan, opened []openedPiece, _ []pieces.Piece) error {
	var faults []error
	fault := func(format string, values ...any) { faults = append(faults, fmt.Errorf(format, values...)) }
	plies := 2
	if p.Lay == lay.Open {
		plies = 1
	}
	if p.Plies != plies {
		fault("%d plies, and laid %s there are %d", p.Plies, p.Lay, plies)
	}
	if width := widthOf(p); p.Width > width+edgeTolerance || p.Lay != lay.SelvedgeIn && p.Width < width-edgeTolerance {
		fault("the lay is %.1f mm wide, and it says %.1f", width, p.Width)
	}
	if taken := takenBy(p); math.Abs(p.Taken-taken) > edgeTolerance {
		fault("the lay takes %.1f mm of cloth, and it says %.1f", taken, p.Taken)
	}
	end, cuts := 0.0, len(p.Pieces)
	if p.Lay == lay.CutAcross {
		cuts++
	}
	for i, part := range p.Beds {
		faults = append(faults, checkPart(p, i, part))
		end = math.Max(end, part.X+part.Length)
		if i > 0 && part.X > 0 {
			cuts++
		}
	}
	if math.Abs(end-p.Length) > edgeTolerance {
		fault("the parts of the lay end at %.1f mm, and it says %.1f", end, p.Length)
	}
	if p.Cuts != cuts {
		fault("%d cuts, and it says %d", cuts, p.Cuts)
	}
	return errors.Join(append(faults, checkPlies(p, opened))...)
}

// checkPart looks at one part by the kind of folding.
func checkPart(p lay.Plan, i int, part lay.Bed) error {
	var plies int
	switch p.Lay {
	case lay.Open:
		plies = 1
	case lay.SelvedgeIn, lay.InStretches:
		plies = 2 - min(i, 1) // folded first, then single
		if i == 0 && !part.FoldLow {
			plies = 1 // nothing lies on the folded part
		}
	default:
		plies = 2
	}
	low := plies == 2 && !p.Lay.IsAcross()
	if part.Plies != plies || part.FoldLow != low || part.FoldHigh != (p.Lay == lay.BothSelvedgesIn) {
		return fmt.Errorf("part %d of the lay has not the %d plies and the folds of a cloth laid %s", i+1, plies, p.Lay)
	}
	if i > 0 && part.X > 0 && part.X < p.Beds[i-1].X+p.Beds[i-1].Length-edgeTolerance {
		return fmt.Errorf("part %d of the lay begins before the one before it ends", i+1)
	}
	return nil
}

// checkFromLower: only on a cloth that is folded throughout is anything cut from the
// lower ply alone, once, and it is no half and none of a pair.
func checkFromLower(p lay.Plan, l lay.Laid, asked pieces.Piece, _ *Lines) error {
	if l.FromLower && (p.Lay != lay.FoldedAlong || l.OnFold || l.Yields != 1 || asked.Pair || asked.Fold != seams.None) {
		return fmt.Errorf("%s copy %d cannot be cut from the lower ply alone", l.Name, l.Copy)
	}
	return nil
}

// checkPlies looks whether every ply lies on the cloth where the folding brings it.
func checkPlies(p lay.Plan, opened []openedPiece) error {
	for _, o := range opened {
		middle := o.Outline.Bound().Center()
		found := false
		for _, ply := range p.Beds[o.Bed].OnCloth {
			found = found || ply.Upper == o.over.mirrors && middle[1] >= ply.Low && middle[1] <= ply.High &&
				distance(ply.ToCloth.Apply(middle), o.over.place(middle)) <= 10*edgeTolerance
		}
		if !found {
			return fmt.Errorf("%s copy %d: its ply does not lie on the cloth where the plan says", o.Name, o.Copy)
		}
	}
	return nil
}

// widthOf a lay, mm, from the cloth.
func widthOf(p lay.Plan) float64 {
	width, selvedge := widthLaid(p.Cloth), p.Cloth.Selvedge
	switch p.Lay {
	case lay.FoldedAlong:
		return width/2 - selvedge
	case lay.BothSelvedgesIn:
		return width / 2
	case lay.SelvedgeIn: // at most: what lies single may be left out
		return math.Max(width-p.FoldedIn, p.FoldedIn) - selvedge
	}
	return width - 2*selvedge
}

// takenBy a lay of that length, mm of cloth. The second length of a cloth cut across
// begins behind the gap; of a repeat, at a whole number.
func takenBy(p lay.Plan) float64 {
	switch repeat, second := p.Cloth.Repeat.Along, p.Length+p.Cloth.Gap; {
	case p.Lay == lay.FoldedAcross:
		return 2 * p.Length
	case p.Lay == lay.CutAcross && repeat == 0:
		return p.Length + second
	case p.Lay == lay.CutAcross:
		return p.Length + repeat*math.Ceil(second/repeat-1e-9)
	}
	return p.Length
}
