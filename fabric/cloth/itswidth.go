package cloth

import "math"

// sameWidth is how much two widths may differ and be one, mm [source.OwnChoice].
const sameWidth = 0.05

// InItsWidth is the cloth with what was laid by hand in the width that it has, and not in
// others.
func (c Cloth) InItsWidth() Cloth {
	var kept []HandLaid
	for _, one := range c.ByHand {
		if math.Abs(one.Width-c.Width) <= sameWidth && len(one.Pieces) > 0 {
			kept = append(kept, one)
		}
	}
	c.ByHand = kept
	return c
}

// Untouched is the cloth without what was laid by hand.
func (c Cloth) Untouched() Cloth {
	c.ByHand = nil
	return c
}
