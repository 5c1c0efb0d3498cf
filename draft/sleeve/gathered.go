package sleeve

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
)

// A gathered head stands up for every unit of fullness by a share of the
// armhole's depth [source.CommonPractice], 2 to 5 cm for twice a woman's length,
// and is roundest after a share of its length from the notch [source.OwnChoice]. The
// first of each is taken that hollows the head least above the notch.
var (
	puffRises     = []float64{0.2, 0.16, 0.24, 0.12, 0.28}
	roundestAfter = []float64{0.5, 0.4, 0.6, 0.3, 0.7}
)

// How a gathered half bends [source.OwnChoice].
const (
	// puffStart is the share of its length along which it turns away from the plain
	// head, and puffTurn the smallest radius to which it does, as a share of its length.
	puffStart = 0.15
	puffTurn  = 0.25
	// puffCrown is how much it bends at the crown, as a share of the most that it does.
	puffCrown = 0.6
)

// gather spreads a head between its notches. What lies below them stays as it
// is, with the underarm seams and the bicep line under it: both halves are moved
// apart, and a longer crown is drawn between the notches.
func (d drafting) gather(plain head) (head, error) {
	best, found := head{}, false
	for _, after := range roundestAfter {
		for _, puff := range puffRises {
			h := plain
			h.rise = float64(puff * (plain.front.depth + plain.back.depth) / 2 * (d.HeadFullness - 1))
			h.height = plain.height + h.rise
			if d.spreadHalves(&h, after) && (!found || h.hollow() < best.hollow()) {
				h.spread = h.bicep() - plain.bicep()
				best, found = h, true
			}
		}
	}
	if found {
		return best, nil
	}
	return head{}, construct.About(subject.HeadFullness).Refuse("sleeve: a head fullness of %.4g makes no smooth "+
		"head on an armhole that is %s deep: ask for another fullness, or measure the scye depth and the across "+
		"widths again",
		"Ärmel: das %.4g-Fache gibt keine glatte Armkugel zu einem Armloch, das %s tief ist: "+
			"verlangen Sie eine andere Mehrweite, oder messen Sie Armlochtiefe, Rücken- und "+
			"Brustbreite noch einmal",
		d.HeadFullness, construct.Length((plain.front.depth+plain.back.depth)/2))
}

// hollow is how much a gathered head turns up above its notches.
func (h head) hollow() float64 {
	return max(0, h.front.round.bends[0]) + max(0, h.back.round.bends[0])
}

// spreadHalves draws the crown of both halves anew, from the notches up; ok is
// false where no smooth one has the length and the height.
func (d drafting) spreadHalves(h *head, after float64) (ok bool) {
	halves := [2]*half{&h.front, &h.back}
	var below [2]pieces.Path
	var wanted [2]float64
	var uppers [2]upper
	for i, of := range halves {
		below[i] = construct.Stretch(of.path, 0, of.notch)
		wanted[i] = d.HeadFullness * (of.length - of.notch)
		uppers[i] = upper{endOf(below[i]), wanted[i], h.height}
	}
	for range 40 {
		bend := 0.0
		for i, of := range halves {
			if of.round, ok = uppers[i].puffed(after); !ok {
				return false
			}
			bend += of.round.crown.bend / 2
		}
		off := 0.0
		for i, of := range halves {
			crown, drawn := throughFrom(of.round.start, append([]orb.Point{of.round.start.at}, of.round.places()...), bend)
			if !drawn {
				return false
			}
			over := crown.Length() - wanted[i]
			uppers[i].length -= over
			off = max(off, math.Abs(over))
			of.path = construct.Join(below[i], crown)
		}
		if off < lengthExact {
			for i, of := range halves {
				of.markGathered(len(below[i]))
			}
			return true
		}
	}
	return false
}

// markGathered puts down the places of a gathered half, so many of whose curves
// lie below the notch.
func (h *half) markGathered(below int) {
	marks := make([]mark, 0, below+2)
	for i, m := range h.marks {
		if i < below-1 {
			marks = append(marks, m)
		}
	}
	h.leaves = min(h.leaves, len(marks))
	h.marks = append(marks, mark{h.round.start.at, "the notch of the armhole, above which the head is gathered"})
	h.marks = append(h.marks, h.round.between...)
}

// puffed is the round of a gathered half, roundest after a share of its length: it
// turns up or down beside the plain head, as its height needs, and its bend changes
// evenly from there to where it is roundest, and on to the crown. ok is false where
// none is as high.
func (u upper) puffed(after float64) (r round, ok bool) {
	begin, rising, over := puffStart*u.length, float64((after-puffStart)*u.length), (1-after)*u.length
	draw := func(turnBend float64) round {
		// The crown is level: that says how much the roundest place bends.
		turned := u.start.heading + begin*(u.start.bend+turnBend)/2 + rising*turnBend/2
		bend := -2 * turned / (rising + float64(over*(1+puffCrown)))
		turn := u.start.after(begin, turnBend)
		rises := turn.after(rising/2, (turnBend+bend)/2)
		roundest := rises.after(rising/2, bend)
		half := roundest.after(over/2, bend*(1+puffCrown)/2)
		return round{
			start: u.start, crown: half.after(over/2, float64(bend*puffCrown)),
			between: []mark{
				{turn.at, "where it has turned away from the plain head"},
				{rises.at, "halfway from there to where it is roundest"},
				{roundest.at, "where it is roundest"}, {half.at, "half of the way from there to the crown"},
			},
			bends: []float64{turnBend, bend},
		}
	}
	sharpest := 1 / (puffTurn * u.length)
	r = draw(root(-sharpest, sharpest, 1e-9, func(turnBend float64) float64 {
		return draw(turnBend).crown.at[1] - u.height
	}))
	return r, math.Abs(r.crown.at[1]-u.height) < heightExact && r.bends[1] < 0
}
