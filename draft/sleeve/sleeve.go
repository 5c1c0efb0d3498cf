package sleeve

import (
	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces/role"
)

// Draft drafts the sleeve. A bicep line shorter than the arm with BicepEase, or
// longer than the style's Norm has it, is that of the lowest or highest head of
// the norm: it needs another armhole. The error is a sentence that names the
// length that cannot be.
func Draft(m Measures, o Options) (Block, error) {
	if err := o.check(); err != nil {
		return Block{}, err
	}
	d := drafting{Measures: m, Options: o, traits: styles[o.Style]}
	h, err := d.solve()
	if err != nil {
		return Block{}, err
	}
	d.height, d.length, d.rise = h.height, d.lengthAt(h.height-h.rise)+h.rise, h.rise
	if d.length < d.height+leastUnderarm {
		return Block{}, construct.About(subject.Length, subject.Reach).Refuse(
			"sleeve: a length of %s ends above the underarm; from the crown it must be %s or more",
			"Ärmel: eine Länge von %s endet über der Achsel; ab der Schulter müssen es %s oder "+
				"mehr sein",
			construct.Length(d.length-h.rise), construct.AtLeast(d.shortest(d.height-h.rise+leastUnderarm)))
	}
	sheet := construct.Sheet{Piece: role.Sleeve.String()}
	beside := h.beside(d.norm.Hug)
	ends := h.draw(&sheet, beside)
	block, err := d.draw(d, sheet, h, ends)
	if !d.isCap {
		block.Beside = beside
	}
	return block, err
}

// BicepLimits of a sleeve on an upper arm girth: round it with room to move, and
// not so wide that the sleeve hangs in folds; or as long as was asked for.
func (o Options) BicepLimits(arm float64) Limits { return NormOf(o.Style).bicepLimits(o, arm) }

// shortest is the shortest sleeve that ends below the underarm, or little more: the
// head may be higher on a longer one.
func (d drafting) shortest(length float64) float64 {
	// further is more than a length is rounded up by for people, in mm
	// [source.OwnChoice].
	const further = 2
	for range 20 {
		least := length
		for _, d.Length = range []float64{length, length + further} {
			if h, err := d.solve(); err == nil {
				least = max(least, h.height-h.rise+leastUnderarm)
			}
		}
		if least == length {
			break
		}
		length = least
	}
	return length
}

// solve finds the head: that which suits the arm, gathered where it is to be.
func (d drafting) solve() (head, error) {
	all := d.solvings()
	plain, err := d.fitHead(all)
	if err != nil || d.HeadFullness == 0 {
		return plain, err
	}
	full, err := d.gather(plain)
	// A lower edge whose width is given slants the underarm seams the more, the
	// more is spread above it: a few rounds settle that.
	for range 4 {
		if err != nil || d.WristWidth == 0 && d.HemFullness == 0 {
			break
		}
		d.spread = full.spread
		for i := range all {
			all[i].slant = d.slant
		}
		if plain, err = d.fitHead(all); err == nil {
			full, err = d.gather(plain)
		}
	}
	return full, err
}

// solvings are what the head may be solved from, the softest hollows first.
func (d drafting) solvings() []solving {
	s := solving{front: layOut(d.FrontArmhole, d.FrontNotch), back: layOut(d.BackArmhole, d.BackNotch), slant: d.slant}
	s.depth = (s.front.depth + s.back.depth) / 2
	ease := d.norm.UsualEase * (s.front.length + s.back.length)
	if d.Ease != nil {
		ease = *d.Ease
	}
	s.frontEase, s.backEase = float64(frontShare*ease), float64((1-frontShare)*ease)
	front, okFront := s.front.hollows(d.norm.Hug * s.depth)
	back, okBack := s.back.hollows(d.norm.Hug * s.depth)
	all := make([]solving, len(softness))
	for i := range all {
		s.hollows, s.none = [2]hollow{front[i], back[i]}, !okFront || !okBack
		all[i] = s
	}
	return all
}
