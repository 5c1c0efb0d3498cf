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
// and is roundest at a share of its length from the notch [source.OwnChoice]. The
// first of each that makes a smooth head is taken.
var (
	puffRises     = []float64{0.2, 0.16, 0.24, 0.12, 0.28}
	roundestAfter = []float64{0.3, 0.2, 0.12, 0.06}
)

// gather spreads a head between its notches. What lies below them stays as it
// is, with the underarm seams and the bicep line under it: both halves are moved
// apart, and a longer crown is drawn between the notches.
func (d drafting) gather(plain head) (head, error) {
	for _, rising := range roundestAfter {
		for _, puff := range puffRises {
			h := plain
			h.rise = puff * (plain.front.depth + plain.back.depth) / 2 * (d.HeadFullness - 1)
			h.height = plain.height + h.rise
			if d.spreadHalves(&h, rising) {
				h.spread = h.bicep() - plain.bicep()
				return h, nil
			}
		}
	}
	return head{}, construct.About(subject.HeadFullness).Refuse("sleeve: a head fullness of %.4g makes no smooth "+
		"head on an armhole that is %s deep: ask for another fullness, or measure the scye depth and the across "+
		"widths again", d.HeadFullness, construct.Length((plain.front.depth+plain.back.depth)/2))
}

// spreadHalves draws the crown of both halves anew, from the notches up; ok is
// false where no smooth one has the length and the height.
func (d drafting) spreadHalves(h *head, rising float64) (ok bool) {
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
			if of.round, ok = uppers[i].after(rising); !ok {
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
	h.marks = append(marks, mark{h.round.start.at, "the notch of the armhole, above which the head is gathered"})
	h.markRound()
}
