package sleeve

import (
	"math"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
)

// Limits are how long the bicep line may be, in mm.
type Limits struct{ Least, Most float64 }

func (d drafting) bicepLimits() Limits {
	return d.norm.bicepLimits(d.Options, d.UpperArm)
}

// bicepLimits of a norm; see Options.BicepLimits.
func (n Norm) bicepLimits(o Options, arm float64) Limits {
	if o.BicepEase > 0 {
		return Limits{arm + o.BicepEase - enough, arm + o.BicepEase + enough}
	}
	least := arm + BicepEase
	return Limits{least, max(n.Widest*arm, least+2*enough)}
}

// fitHead finds the head that suits the arm, above the softest hollows that give
// one: as high as is usual, or as much lower or higher within the norm as brings
// the bicep line within its limits. Where none does it is that which comes
// nearest: then the armhole has to give way.
func (d drafting) fitHead(all []solving) (head, error) {
	if d.HeadHeight > 0 {
		return asked(all, d.HeadHeight, d.bicepLimits().Least)
	}
	within := d.bicepLimits()
	for _, s := range all {
		if usual, ok := s.at(d.norm.UsualHead * s.depth); ok && within.hold(usual.bicep()) {
			return usual, nil
		}
	}
	best, found := head{}, false
	for _, s := range all {
		h, ok := s.fit(within, d.norm)
		switch {
		case !ok:
			continue
		case within.hold(h.bicep()):
			return h, nil
		case !found || within.off(h.bicep()) < within.off(best.bicep()):
			best, found = h, true
		}
	}
	if !found {
		return best, all[0].noHead()
	}
	return best, nil
}

func (l Limits) hold(bicep float64) bool { return bicep >= l.Least && bicep <= l.Most }

// off is by how much a bicep line is shorter or longer than the limits.
func (l Limits) off(bicep float64) float64 { return max(l.Least-bicep, bicep-l.Most, 0) }

// fit finds the head nearest to the usual height whose bicep line is within
// limits, or as near to them as a norm lets it; ok is false where there is no head.
func (s solving) fit(within Limits, norm Norm) (h head, ok bool) {
	low, high := norm.LowestHead*s.depth, norm.HighestHead*s.depth
	usual, ok := s.at(norm.UsualHead * s.depth)
	if !ok {
		lowest, highest, ok := s.heights(low, high)
		if !ok {
			return h, false
		}
		usual = highest
		if lowest.height > norm.UsualHead*s.depth {
			usual = lowest
		}
	}
	switch bicep := usual.bicep(); {
	case bicep < within.Least:
		lowest := s.towards(usual, low)
		if lowest.bicep() <= within.Least {
			return lowest, true
		}
		return s.between(lowest, usual, within.Least+enough), true
	case bicep > within.Most:
		highest := s.towards(usual, high)
		if highest.bicep() >= within.Most {
			return highest, true
		}
		return s.between(usual, highest, within.Most-enough), true
	}
	return usual, true
}

func (s solving) noHead() error {
	return construct.About(subject.ScyeDepth, subject.AcrossBackWidth).Refuse(
		"sleeve: no smooth head goes into an armhole of %s that is %s deep: measure "+
			"the scye depth and the across widths again",
		"Ärmel: in ein Armloch von %s, das %s tief ist, geht keine glatte Armkugel: messen Sie "+
			"Armlochtiefe, Rücken- und Brustbreite noch einmal",
		construct.Length(s.front.length+s.back.length), construct.Length(s.depth))
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

// asked is the head of the height that was asked for. Heights that a refusal asks
// for in its place make a sleeve that goes round the arm.
func asked(all []solving, height, arm float64) (head, error) {
	widest, drawn := head{}, false
	for _, s := range all {
		if h, ok := s.at(height); ok && (!drawn || h.bicep() > widest.bicep()) {
			widest, drawn = h, true
		}
		if drawn && widest.bicep() >= arm {
			return widest, nil
		}
	}
	if drawn {
		return widest, nil
	}
	least, most := math.Inf(1), 0.0
	for _, s := range all {
		lowest, highest, ok := s.heights(float64(0.4*s.depth), float64(1.2*s.depth))
		if !ok || lowest.bicep() < arm {
			continue
		}
		if highest.bicep() < arm {
			highest = s.between(lowest, highest, arm+enough)
		}
		least, most = min(least, lowest.height), max(most, highest.height)
	}
	if most == 0 {
		return head{}, all[0].noHead()
	}
	return head{}, construct.About(subject.HeadHeight).Refuse("sleeve: a head height of %s makes no smooth head on "+
		"this armhole, which is %s deep; ask for %s to %s",
		"Ärmel: eine Höhe von %s gibt keine glatte Armkugel zu diesem Armloch, das %s tief ist; "+
			"verlangen Sie %s bis %s", construct.Length(height), construct.Length(all[0].depth),
		construct.AtLeast(least), construct.AtMost(most))
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
		if lowest, ok = s.at(low + float64((0.5+off)*(high-low))); ok {
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
