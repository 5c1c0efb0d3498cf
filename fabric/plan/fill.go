package plan

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/fabric/purchase"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// LeastStraightening is what straightening both cut ends takes at least, mm
// [source.CommonPractice].
const LeastStraightening = 20.0

// Fill sets what follows from the solved beds of a lay.
func Fill(p *lay.Plan, beds []SolvedBed) {
	p.Pieces = laidOut(beds)
	p.Cuts = len(p.Pieces)
	for i, found := range beds {
		b := found.Bed
		begin, end := b.At[0], b.At[0]+found.Layout.Length
		if b.Kind == lay.FoldedAcross {
			begin = 0 // at the fold, which the bed keeps clear of
		}
		p.Length = math.Max(p.Length, end)
		p.Width = math.Max(p.Width, b.At[1]+b.Width+b.LostHigh)
		p.Taken = math.Max(p.Taken, b.Before+b.Taken(p.Cloth, found.Layout.Length))
		p.Beds = append(p.Beds, lay.Bed{
			X: begin, Y: b.At[1], Length: end - begin, Width: b.Width, Plies: b.Plies(),
			FoldLow: len(b.FoldPins()) > 0, FoldHigh: len(b.FoldPins()) > 1,
			OnCloth: b.OnCloth(p.Cloth, found.Layout.Length),
		})
		if i > 0 && b.At[0] > 0 || b.Kind == lay.CutAcross {
			p.Cuts++
		}
	}
	for i := range p.Beds { // beds side by side are as long as the longer one
		if p.Beds[i].X == 0 && p.Lay == lay.SelvedgeIn {
			p.Beds[i].Length = p.Length
		}
	}
	for i, found := range beds {
		p.Zones = append(p.Zones, found.ZonesWithin(p.Beds[i].X+p.Beds[i].Length)...)
	}
	p.Density = efficiency(*p)
	p.Need = purchase.Need(p.Cloth, p.Taken)
	p.Buy = purchase.RoundUp(p.Cloth, p.Need)
	noteStraightening(p)
	NoteFromLower(p)
}

// NoteFromLower says how what lies on two plies is cut once.
func NoteFromLower(p *lay.Plan) {
	var single []string
	for _, l := range p.Pieces {
		if l.FromLower && !slices.Contains(single, l.Name) {
			single = append(single, l.Name)
		}
	}
	if len(single) > 0 {
		p.Notes = append(p.Notes, lay.Note{Of: lay.CutOnce, Pieces: single})
	}
}

// ZonesWithin are the zones of a bed up to that length of the lay, in the
// frame of the lay.
func (l SolvedBed) ZonesWithin(length float64) []orb.Ring {
	var out []orb.Ring
	for _, zone := range l.Problem.Zones {
		parts, err := motion.Clipped(zone, 0, 0, length-l.Bed.At[0], l.Bed.Width)
		if err != nil {
			continue
		}
		for _, part := range parts {
			out = append(out, orb.Ring(motion.Mapped(pieces.Motion{A: 1, D: 1, E: l.Bed.At[0], F: l.Bed.At[1]}, part)))
		}
	}
	b := l.Bed
	from, to := b.At[0], length
	if b.LostLow > 0 {
		out = append(out, geometry.Rectangle(from, b.At[1]-b.LostLow, to, b.At[1]))
	}
	if b.LostHigh > 0 {
		out = append(out, geometry.Rectangle(from, b.At[1]+b.Width, to, b.At[1]+b.Width+b.LostHigh))
	}
	return out
}

func noteStraightening(p *lay.Plan) {
	spare := p.Buy - purchase.BeforeWetting(p.Cloth.Shrinkage, p.Taken+p.Cloth.HandLaying.Of(p.Taken))
	if spare < LeastStraightening {
		p.Notes = append(p.Notes, lay.Note{Of: lay.LittleMore, Length: spare})
	}
}

// efficiency is the area of what is cut, in all plies, over the usable cloth
// taken. A half on the fold gives its other half in the other ply.
func efficiency(p lay.Plan) float64 {
	usable := bed.UsableWidth(lay.Open, p.Cloth)
	if p.Taken <= 0 || usable <= 0 {
		return 0
	}
	var area float64
	for _, l := range p.Pieces {
		plies := p.Beds[l.Bed].Plies
		if l.FromLower {
			plies = 1
		}
		area += float64(math.Abs(geometry.Area(l.Outline)) * float64(plies))
	}
	return area / (p.Taken * usable)
}
