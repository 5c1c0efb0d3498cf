package lay

import (
	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/pieces"
)

// Plan is one lay of a cloth with every piece in its place, or the reason
// why that lay is not possible.
type Plan struct {
	Cloth cloth.Cloth
	// Asked are the pieces as the maker gave them.
	Asked []pieces.Piece
	Lay   Kind
	Plies int
	// Width is the usable width of the lay: y runs from 0 to Width.
	Width float64
	// Length of the lay as it lies on the table: x runs from 0 to Length.
	Length float64
	// Beds are the rectangles of the lay with their plies; one, in most lays.
	Beds []Bed
	// FoldedIn is how far the edge of the cloth lies from the fold, in the lay
	// with one selvedge folded in; otherwise 0.
	FoldedIn float64
	// Taken is the length of cloth that the lay takes: Length, or twice as
	// much where the cloth is folded or cut across.
	Taken float64
	// Need is Taken with what a hand lays less closely, the straightening of the
	// ends, what is lost when the cloth is wetted and the maker's safety; Buy is Need rounded up to the
	// step of the shop, and to the least that it cuts.
	Need, Buy float64
	// There is the length of cloth that is there already, so that none is bought;
	// Buy is as much then, and Need no more. 0 when it is to be bought.
	There float64
	// Bound is a length that no layout of these pieces in this lay can beat.
	Bound float64
	// Cuts counts the outlines to chalk and cut round, and the cuts across
	// the cloth that the lay itself takes.
	Cuts int
	// Zones of the lay that may not be used: flaws, in whichever ply, and
	// where two selvedges meet.
	Zones []orb.Ring
	// Offcuts that lie in a row on the cloth when there is not one cloth but
	// several remnants of it; otherwise none.
	Offcuts []OffcutPlace
	// Density is the marker efficiency, 0 to 1: the area of all pieces cut
	// over the area of usable cloth taken, in all plies.
	Density float64
	// Matches are what the lay keeps on the repeat of the cloth, Dropped what was
	// asked for and cannot be kept beside those.
	Matches, Dropped []Match
	// Why the lay cannot be used, and what would help. Empty when it can.
	Why []Reason
	// Throughout is the plan that a lay of two parts comes down to when it
	// gains nothing: one part, folded or open, takes the whole cloth.
	// Why then says so. Nil otherwise.
	Throughout *Plan
	// Notes are cautions for the maker about this plan. May be empty.
	Notes []Note
	// Mark is a short one by which people tell this lay from others; may be empty.
	Mark   string
	Pieces []Laid

	Places Places
}

// Possible reports whether the lay can be used.
func (p Plan) Possible() bool { return len(p.Why) == 0 }

// Shown is the plan to lay by: Throughout where the lay comes down to it,
// otherwise the plan itself.
func (p Plan) Shown() Plan {
	if p.Throughout != nil {
		return *p.Throughout
	}
	return p
}

// BedOf is the bed of the lay on which a piece lies.
func (p Plan) BedOf(l Laid) Bed {
	if l.Bed < len(p.Beds) {
		return p.Beds[l.Bed]
	}
	return Bed{Length: p.Length, Width: p.Width, Plies: p.Lay.Plies(),
		FoldLow: p.Lay == FoldedAlong || p.Lay == BothSelvedgesIn}
}

// Least is a length of cloth that no layout in this lay can beat, mm: Bound,
// or twice as much where the cloth is folded or cut across.
func (p Plan) Least() float64 {
	if p.Lay.IsAcross() {
		return 2 * p.Bound
	}
	return p.Bound
}
