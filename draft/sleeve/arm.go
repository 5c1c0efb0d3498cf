package sleeve

import (
	"ellwand/draft/construct"
	"ellwand/draft/subject"
)

// Limits are how long the bicep line may be, in mm.
type Limits struct{ Least, Most float64 }

// BicepLimits of a sleeve on an upper arm girth: round it with room to move, and
// not so wide that the sleeve hangs in folds; or as long as was asked for.
func (o Options) BicepLimits(arm float64) Limits {
	if o.BicepEase > 0 {
		return Limits{arm + o.BicepEase - enough, arm + o.BicepEase + enough}
	}
	least := arm + BicepEase
	return Limits{least, max(NormOf(o.Style).Widest*arm, least+2*enough)}
}

// fitHead finds the head that suits the arm: as high as is usual, or as much
// lower or higher within the norm as brings the bicep line within its limits. A
// head that cannot is as low or as high as the norm has it: then the armhole has
// to give way.
func (d drafting) fitHead(s solving) (head, error) {
	if d.HeadHeight > 0 {
		return s.asked(d.HeadHeight)
	}
	within := d.BicepLimits(d.UpperArm)
	usual, drawn := s.at(d.norm.UsualHead * s.depth)
	if bicep := usual.bicep(); drawn && bicep >= within.Least && bicep <= within.Most {
		return usual, nil
	}
	low, high := d.norm.LowestHead*s.depth, d.norm.HighestHead*s.depth
	if !drawn {
		lowest, highest, ok := s.heights(low, high)
		if !ok {
			return head{}, s.noHead()
		}
		usual = highest
		if lowest.height > d.norm.UsualHead*s.depth {
			usual = lowest
		}
	}
	switch bicep := usual.bicep(); {
	case bicep < within.Least:
		lowest := s.towards(usual, low)
		if lowest.bicep() <= within.Least {
			return lowest, nil
		}
		return s.between(lowest, usual, within.Least+enough), nil
	case bicep > within.Most:
		highest := s.towards(usual, high)
		if highest.bicep() >= within.Most {
			return highest, nil
		}
		return s.between(usual, highest, within.Most-enough), nil
	}
	return usual, nil
}

func (s solving) noHead() error {
	return construct.About(subject.ScyeDepth, subject.AcrossBackWidth).Refuse(
		"sleeve: no smooth head goes into an armhole of %s that is %s deep: measure "+
			"the scye depth and the across widths again", construct.Length(s.front.length+s.back.length), construct.Length(s.depth))
}

// enough is how near to a length the bicep line is brought, in mm
// [source.OwnChoice].
const enough = 0.05

// between finds the head whose bicep line has a length, between two heads that
// have a longer and a shorter one: the lower the head, the longer it is.
func (s solving) between(lowest, highest head, bicep float64) head {
	for range 40 {
		middle, ok := s.at((lowest.height + highest.height) / 2)
		if !ok {
			break
		}
		if middle.bicep() > bicep {
			lowest = middle
		} else {
			highest = middle
		}
		if lowest.bicep()-highest.bicep() < enough {
			break
		}
	}
	return lowest
}

// asked is the head of the height that was asked for.
func (s solving) asked(height float64) (head, error) {
	if h, ok := s.at(height); ok {
		return h, nil
	}
	lowest, highest, ok := s.heights(0.4*s.depth, 1.2*s.depth)
	if !ok {
		return head{}, s.noHead()
	}
	return head{}, construct.About(subject.HeadHeight).Refuse("sleeve: a head height of %s makes no smooth head on "+
		"this armhole, which is %s deep; ask for %s to %s", construct.Length(height), construct.Length(s.depth), construct.AtLeast(lowest.height), construct.AtMost(highest.height))
}

// heights finds the lowest and the highest head that can be drawn between two
// heights; ok is false where there is none.
func (s solving) heights(low, high float64) (lowest, highest head, ok bool) {
	// tries are closer together than the heights that can be drawn are apart
	// [source.OwnChoice].
	const tries = 16
	for i := range tries {
		// From the middle outwards, by turns to either side.
		off := float64((i+1)/2) / tries
		if i%2 == 1 {
			off = -off
		}
		if lowest, ok = s.at(low + (0.5+off)*(high-low)); ok {
			highest = lowest
			return s.towards(lowest, low), s.towards(highest, high), true
		}
	}
	return lowest, highest, false
}

// towards is the head nearest to a height that can be drawn, from one that can.
func (s solving) towards(from head, height float64) head {
	if h, ok := s.at(height); ok {
		return h
	}
	for range 10 {
		if h, ok := s.at((from.height + height) / 2); ok {
			from = h
		} else {
			height = (from.height + height) / 2
		}
	}
	return from
}
