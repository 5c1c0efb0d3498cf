package fabric

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/geometry"
	"ellwand/fabric/purchase"
	"ellwand/pieces"
)

// leastStraightening is what straightening both cut ends takes at least, mm
// [source.CommonPractice].
const leastStraightening = 20.0

// straightening says what it takes [source.CommonPractice].
func straightening(c cloth.Cloth) string {
	if c.Inches {
		return "3/4 to 2 in"
	}
	return "2 to 5 cm"
}

// fill sets what follows from the solved beds of a lay.
func (p *LayPlan) fill(beds []lain) {
	p.Pieces = laidOut(beds)
	p.Cuts = len(p.Pieces)
	for i, found := range beds {
		b := found.bed
		end := b.at[0] + found.layout.Length
		p.Length = math.Max(p.Length, end)
		p.Width = math.Max(p.Width, b.at[1]+b.width+b.lostHigh)
		p.Taken = math.Max(p.Taken, b.before+b.taken(p.Cloth, found.layout.Length))
		p.Parts = append(p.Parts, Part{
			X: b.at[0], Y: b.at[1], Length: found.layout.Length, Width: b.width, Plies: b.plies(),
			FoldLow: len(b.foldPins()) > 0, FoldHigh: len(b.foldPins()) > 1,
			OnCloth: b.onCloth(p.Cloth, found.layout.Length),
		})
		if i > 0 && b.at[0] > 0 || b.lay == CutAcross {
			p.Cuts++
		}
	}
	for i := range p.Parts { // beds side by side are as long as the longer one
		if p.Parts[i].X == 0 && p.Lay == SelvedgeIn {
			p.Parts[i].Length = p.Length
		}
	}
	for i, found := range beds {
		p.Zones = append(p.Zones, found.zonesWithin(p.Parts[i].X+p.Parts[i].Length)...)
	}
	p.Density = efficiency(*p)
	p.Need = purchase.Need(p.Cloth, p.Taken)
	p.Buy = purchase.RoundUp(p.Cloth, p.Need)
	p.noteStraightening()
}

// zonesWithin are the zones of a bed up to that length of the lay, in the
// frame of the lay.
func (l lain) zonesWithin(length float64) []orb.Ring {
	var out []orb.Ring
	for _, zone := range l.problem.Zones {
		parts, err := geometry.Clipped(zone, 0, 0, length-l.bed.at[0], l.bed.width)
		if err != nil {
			continue
		}
		for _, part := range parts {
			out = append(out, orb.Ring(geometry.Mapped(pieces.Motion{A: 1, D: 1, E: l.bed.at[0], F: l.bed.at[1]}, part)))
		}
	}
	b := l.bed
	from, to := b.at[0], length
	if b.lostLow > 0 {
		out = append(out, geometry.Rectangle(from, b.at[1]-b.lostLow, to, b.at[1]))
	}
	if b.lostHigh > 0 {
		out = append(out, geometry.Rectangle(from, b.at[1]+b.width, to, b.at[1]+b.width+b.lostHigh))
	}
	return out
}

func (p *LayPlan) noteStraightening() {
	spare := p.Buy - purchase.BeforeWetting(p.Cloth.Shrinkage, p.Taken)
	if spare >= leastStraightening {
		return
	}
	more := "only " + p.Cloth.Say(spare) + " more"
	if spare < 0.5 {
		more = "no more"
	}
	p.Notes = append(p.Notes, fmt.Sprintf("The length to buy is %s than the lay takes. "+
		"Straightening the cut ends takes %s: buy a little more, unless the shop cuts along a thread.",
		more, straightening(p.Cloth)))
}

// efficiency is the area of what is cut, in all plies, over the usable cloth
// taken. A half on the fold gives its other half in the other ply.
func efficiency(p LayPlan) float64 {
	usable := Open.UsableWidth(p.Cloth)
	if p.Taken <= 0 || usable <= 0 {
		return 0
	}
	var area float64
	for _, l := range p.Pieces {
		area += math.Abs(geometry.Area(l.Outline)) * float64(p.Parts[l.Part].Plies)
	}
	return area / (p.Taken * usable)
}
