package check

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/pieces/measure"
)

// levelGrain, mm: a grainline whose ends differ by less lies level [source.OwnChoice].
const levelGrain = 1.0

// Chalked is how a piece is to be laid by a tape measure, as it is written: how far
// the near end of its grainline lies from the cut end and from the near edge, the far
// end from that edge, and where the arrow points.
type Chalked struct {
	Along, Near, Far, Arrow string
	Unit                    measure.Unit
}

// Chalk proves that a piece chalked as it is written lies where the plan has it.
func Chalk(p lay.Plan, l lay.Laid, said Chalked) error {
	m := motion(l)
	from, to := m.Apply(l.Piece.Grain.From), m.Apply(l.Piece.Grain.To)
	axis, up := 0, to[0] > from[0]
	if math.Abs(to[0]-from[0]) < levelGrain {
		axis, up = 1, to[1] > from[1]
	}
	near, far := from, to
	if near[axis] > far[axis] {
		near, far = far, near
	}
	step := said.Unit.System().Step()
	faults := []error{
		shownIn(said.Along, near[0]-beginOf(p, l), said.Unit, step), shownIn(said.Near, fromEdge(p, l, near), said.Unit,
			step),
		shownIn(said.Far, fromEdge(p, l, far), said.Unit, step),
	}
	if up == strings.HasPrefix(said.Arrow, "to") {
		faults = append(faults, fmt.Errorf("its arrow points %q", said.Arrow))
	}
	if err := errors.Join(faults...); err != nil {
		return fmt.Errorf("%s copy %d is written to lie elsewhere: %w", l.Name, l.Copy, err)
	}
	return nil
}

// shownIn is Shown of a bare number; what is a little below 0 is written as 0.
func shownIn(text string, length float64, unit measure.Unit, step float64) error {
	return Shown(text+" "+unit.String(), math.Max(length, math.Min(0, length+0.5)), step)
}

// beginOf is where distances along begin for a piece: at the cut end, at the end of
// its remnant, or where a lay of two stretches goes on.
func beginOf(p lay.Plan, l lay.Laid) float64 {
	box, begin := l.Outline.Bound().Center(), 0.0
	for _, o := range p.Offcuts {
		if o.From <= box[0] {
			begin = o.From
		}
	}
	if p.Lay == lay.InStretches && len(p.Offcuts) < 2 {
		begin = p.Beds[l.Bed].X
	}
	return begin
}

// fromEdge is how far a place lies from the edge at which a tape begins: on the open
// cloth, from the fold, or from the outer edge of the selvedge.
func fromEdge(p lay.Plan, l lay.Laid, at orb.Point) float64 {
	double := p.Beds[l.Bed].Plies == 2
	switch {
	case p.Lay == lay.FoldedAlong, p.Lay == lay.BothSelvedgesIn, p.Lay == lay.SelvedgeIn,
		p.Lay == lay.InStretches && double:
		return at[1]
	}
	return foldedOver(p, l)[0].place(at)[1]
}
