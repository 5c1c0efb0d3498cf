package sleeve

import "ellwand/draft/construct"

const (
	// shirtHead is the head height of a shirt sleeve as a share of the whole
	// armhole, and shirtEase the ease of its head (common practice: lower than
	// a set-in sleeve; 0 to 1.5 cm).
	shirtHead = 0.235
	shirtEase = 8
	// puffRise lifts the crown of a gathered head for every unit of fullness,
	// so that it stands up (common practice: 2 to 5 cm for twice the length).
	puffRise = 35
	// elbowBelow is how far the elbow lies below half the arm (common practice).
	elbowBelow = 50
)

// styled fills in what style, reach and fullness stand for.
func (o Options) styled(m Measures) (Options, error) {
	armhole := m.FrontArmhole + m.BackArmhole
	for name, times := range map[string]float64{"head": o.HeadFullness, "hem": o.HemFullness} {
		if times != 0 && (times < 1 || times > 3) {
			return o, construct.Refuse("sleeve: a %s fullness of %.4g cannot be gathered; 1.2 to 2 is usual, 3 the most", name, times)
		}
	}
	if o.HeadFullness > 0 && o.Ease != nil {
		return o, construct.Refuse("sleeve: a gathered head has no ease; leave out one of the ease and the head fullness")
	}
	if o.HemFullness > 0 && o.WristWidth > 0 {
		return o, construct.Refuse("sleeve: the hem has a width or a fullness; leave out one of them")
	}
	if o.HeadHeight == 0 {
		o.HeadHeight = HeadHeight(m.FrontArmhole, m.BackArmhole)
		if o.Style == Shirt {
			o.HeadHeight = shirtHead * armhole
		}
	}
	if o.Style == Shirt && o.Ease == nil && o.HeadFullness == 0 {
		ease := float64(shirtEase)
		o.Ease = &ease
	}
	rise := 0.0
	if o.HeadFullness > 1 {
		rise = puffRise * (o.HeadFullness - 1)
	}
	if o.Length == 0 {
		o.Length = o.reachLength(m)
	}
	o.HeadHeight, o.Length = o.HeadHeight+rise, o.Length+rise
	return o, nil
}

// reachLength is the length from the crown for a reach.
func (o Options) reachLength(m Measures) float64 {
	elbow := m.ShoulderToWrist/2 + elbowBelow
	switch o.Reach {
	case Elbow:
		return elbow
	case Short:
		return (o.HeadHeight + elbow) / 2
	}
	return m.ShoulderToWrist
}

// headEase is how much longer than the armhole the head is to be; nil leaves
// what the draft gives.
func (o Options) headEase(m Measures) *float64 {
	if o.HeadFullness == 0 {
		return o.Ease
	}
	ease := (o.HeadFullness - 1) * (m.FrontArmhole + m.BackArmhole)
	return &ease
}
