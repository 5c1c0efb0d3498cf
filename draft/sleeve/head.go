package sleeve

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
)

// half is one half of the head, laid out as its armhole is: from the end of the
// bicep line at the origin up to the crown.
type half struct {
	armhole
	hollow hollow
	round  round
	path   pieces.Path
	// marks are the places on it that a dressmaker marks to draw it, from the
	// bicep line up.
	marks []mark
	// leaves is which of the marks it leaves the armhole at.
	leaves int
}

// marked puts down the places of its round.
func (h *half) marked() {
	hollow := h.hollow.marks()
	h.leaves = len(hollow)
	h.marks = slices.Concat(hollow, []mark{
		{h.round.start.at, "where the hollow ends and the round begins"},
	}, h.round.between)
}

// width is the half of the bicep line.
func (h half) width() float64 { return h.round.crown.at[0] }

// head is the sleeve head as solved.
type head struct {
	front, back half
	height      float64
	// slant is by how much the underarm seams lean inward towards the lower edge
	// where they meet the head, in radians.
	slant float64
	// spread is what the gathers add to the bicep line, rise by how much they lift
	// the crown.
	spread, rise float64
}

// beside is how far it lies beside the armhole, up to a share of its depth.
func (h head) beside(share float64) Beside {
	height := share * (h.front.depth + h.back.depth) / 2
	of := func(half half) float64 {
		along := half.length
		if h.spread > 0 {
			along = half.notch
		}
		return half.armhole.beside(half.path, h.slant, height, along)
	}
	return Beside{of(h.front), of(h.back)}
}

func (h head) bicep() float64 { return h.front.width() + h.back.width() }

// solving finds the head of a height. Everything else follows: its halves are
// as long as those of the armhole with their ease.
type solving struct {
	front, back         armhole
	hollows             [2]hollow // of front and back
	none                bool      // no hollow lies on the armhole
	depth               float64   // mean of both halves
	frontEase, backEase float64
	// slant of the underarm seams for a length of the bicep line and a height.
	slant func(bicep, height float64) float64
}

// How exactly the head is solved [source.OwnChoice].
const (
	// lengthExact is how exactly the length of the head is solved, in mm.
	lengthExact = 0.005
	// slantExact is the like for the slant, in radians.
	slantExact = 1e-6
)

// at finds the head of a height; ok is false where no smooth head of that
// height has the length.
func (s solving) at(height float64) (h head, ok bool) {
	h = head{front: half{armhole: s.front}, back: half{armhole: s.back}, height: height}
	if s.none {
		return h, false
	}
	halves := [2]*half{&h.front, &h.back}
	wanted := [2]float64{s.front.length + s.frontEase, s.back.length + s.backEase}
	var uppers [2]upper
	for i := range uppers {
		uppers[i] = upper{length: wanted[i] - s.hollows[i].length, height: height}
	}
	h.slant = s.slant(0.85*(s.front.length+s.back.length), height)
	for range 40 {
		for i, of := range halves {
			of.hollow = s.hollows[i].turned(h.slant)
			uppers[i].start = of.hollow.end
		}
		both, drawn := rounds(uppers)
		if !drawn {
			return h, false
		}
		h.front.round, h.back.round = both[0], both[1]
		slant := s.slant(h.bicep(), height)
		off := math.Abs(slant-h.slant) / slantExact
		h.slant = slant
		if off > 1 {
			continue
		}
		for i, of := range halves {
			if !of.draw() {
				return h, false
			}
			over := of.path.Length() - wanted[i]
			uppers[i].length -= over
			off = max(off, math.Abs(over)/lengthExact)
		}
		if off <= 1 {
			h.front.marked()
			h.back.marked()
			return h, true
		}
	}
	return h, false
}

// draw draws the half through the places of its hollow and its round.
func (h *half) draw() (ok bool) {
	places := []orb.Point{{}}
	for _, m := range h.hollow.marks() {
		places = append(places, m.at)
	}
	places = append(append(places, h.round.start.at), h.round.places()...)
	h.path, ok = through(h.hollow.begin.way(), places, h.round.crown.bend)
	return ok
}

// seam is the whole head from the front end of the bicep line over the crown to
// the back end; the bicep line lies at the height 0, the crown above 0.
func (h head) seam() pieces.Path {
	return construct.Join(h.front.path.Map(h.onFront()), h.back.path.Map(h.onBack()).Reverse())
}

// ends are the numbered points of the bicep line: its middle and both ends.
type ends struct{ level, front, back construct.Point }

// draw records the head step by step, which lies so far beside the armhole.
func (h head) draw(s *construct.Sheet, beside Beside) ends {
	var e ends
	e.level = s.Start(0, 0, "the middle of the bicep line, below the crown")
	crown := s.Up(e.level, h.height, "the crown: the head height, the share of the armhole's depth that suits the arm")
	e.front = s.Right(e.level, h.front.width(), "the front of the bicep line: so far that "+
		"the front of the head is as long as the front armhole with its ease")
	e.back = s.Left(e.level, h.back.width(), "the back of the bicep line: the like with the back armhole")
	through := []construct.Point{e.front}
	for _, m := range h.front.marks {
		through = append(through, e.set(s, h.onFront().Apply(m.at), "front: "+m.rule))
	}
	first := through[h.front.leaves+1]
	through = append(through, crown)
	var back []construct.Point
	for _, m := range h.back.marks {
		back = append(back, e.set(s, h.onBack().Apply(m.at), "back: "+m.rule))
	}
	within, lengths := "within 3 mm of it", []float64(nil)
	if most := max(beside.Front, beside.Back); most > MostBeside {
		within, lengths = "up to {} off it", []float64{most}
	}
	s.Draw("lay the lower armhole of the front and of the back on the head, the underarm at the end of the bicep "+
		"line and the side seam along the underarm seam: up to "+construct.Numbers(first)+" and "+
		construct.Numbers(back[h.back.leaves])+" the head lies "+within,
		"first inside the armhole's curve, then outside it", lengths...)
	slices.Reverse(back)
	through = append(append(through, back...), e.back)
	s.Draw("draw the sleeve head "+construct.Numbers(through...), "square to the underarm seams, level at the crown")
	return e
}

// set numbers a place of the head, measured from the middle of the bicep line. It
// is no construction line: none is drawn there.
func (e ends) set(s *construct.Sheet, at orb.Point, rule string) construct.Point {
	p := s.Offset(e.level, at, rule)
	s.Steps[len(s.Steps)-1].From = 0
	return p
}

// onFront and onBack lay a half where it belongs on the sleeve.
func (h head) onFront() pieces.Motion {
	return pieces.MirrorX().Then(pieces.Move(h.front.width(), 0))
}

func (h head) onBack() pieces.Motion { return pieces.Move(-h.back.width(), 0) }
