package bed

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

// Of a lay that is a single bed.
func Of(c cloth.Cloth, kind lay.Kind) Bed {
	b := Bed{Kind: kind, Width: UsableWidth(kind, c)}
	switch kind {
	case lay.FoldedAlong:
		b.V = UsableWidth(lay.Open, c) / 2
	case lay.BothSelvedgesIn:
		b.V = c.WidthLaid()/4 - c.Selvedge
	case lay.FoldedAcross:
		b.At[0] = c.Gap / 2 // from the fold
	}
	return b.trimmed(c)
}

// trimmed leaves out of the bed what flaws along its edges take for its whole
// length, such as a faded edge. A fold stays where it is.
func (b Bed) trimmed(c cloth.Cloth) Bed {
	if b.Kind != lay.Open && b.Kind != lay.FoldedAlong {
		return b
	}
	for _, band := range b.Bands(c) {
		switch {
		case band.From < b.Width && band.To >= b.Width:
			b.Width, b.LostHigh = band.From, b.LostHigh+b.Width-band.From
		case band.From <= 0 && band.To > 0 && b.Kind == lay.Open:
			b.Width, b.V, b.At[1], b.LostLow = b.Width-band.To, b.V+band.To, b.At[1]+band.To, b.LostLow+band.To
			return b.trimmed(c) // other bands lie elsewhere in its frame now
		}
	}
	return b
}

// FoldedIn gives the two beds of a cloth with one selvedge folded in, the
// fold being that far from the edge of the cloth: two plies from the fold to
// the folded-in selvedge, then one ply to the other selvedge. The lower ply
// goes on beyond that edge, so that pieces on either side of it keep their gap.
func FoldedIn(c cloth.Cloth, depth float64) (double, single Bed) {
	width := c.WidthLaid()
	double = Bed{Kind: lay.FoldedAlong, Width: depth - c.Selvedge, V: depth - c.Selvedge}
	begin := depth + math.Max(0, c.Gap-c.Selvedge)
	single = Bed{Kind: lay.Open, Width: width - depth - begin - c.Selvedge, At: orb.Point{0, begin},
		V: depth + begin - c.Selvedge}
	double.Shared, single.Shared = true, true
	return double.trimmed(c), single.trimmed(c)
}

// FoldedBefore is the folded stretch before an open one.
func FoldedBefore(c cloth.Cloth) Bed {
	b := Of(c, lay.FoldedAlong)
	b.Shared = true
	return b
}

// OpenAfter is the open stretch behind a folded one of that length, whose last
// pieces keep their gap from it.
func OpenAfter(c cloth.Cloth, length float64) Bed {
	b, begin := Of(c, lay.Open), length+c.Gap
	b.At[0], b.Before, b.Shared = begin, begin, true
	return b
}
