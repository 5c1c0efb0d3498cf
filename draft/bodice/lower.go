package bodice

import "ellwand/draft/construct"

// lower draws what lies below the underarm.
func (f figures) lower(o Options, straight bool, front frontUpper, back backUpper) (waists, error) {
	if o.BelowWaist != 0 {
		return f.belowWaists(o, straight, front.underarm.X(), back.underarm.X())
	}
	return f.waists(straight, front, back)
}

// waists draws the waist so that front and back together, darts closed, make
// half the waist girth with its ease; or straight down when it hangs straight.
func (f figures) waists(straight bool, front frontUpper, back backUpper) (waists, error) {
	s, err := f.shape(straight)
	if err != nil {
		return waists{}, err
	}
	frontWidth, backWidth := front.underarm.X(), back.underarm.X()
	if s.front == 0 {
		if !straight || s.taper != 0 {
			s.taper = construct.Settle(s.taper, func(taper float64) float64 {
				w := f.taperedWaists(frontWidth, backWidth, taper)
				return w.front.length() + w.back.length() - f.waist
			})
		}
		return f.taperedWaists(frontWidth, backWidth, s.taper), nil
	}
	frontDarts, okFront := placeDarts(f.dartWidths(s.front), f.bustPoint, frontWidth-s.taper,
		func(i int, middle float64) float64 {
			return f.frontApex(i, middle, frontWidth)
		})
	backDarts, okBack := placeDarts(f.dartWidths(s.back), f.acrossBack/2, backWidth-s.taper,
		func(i int, _ float64) float64 {
			return f.backApex(i)
		})
	if !okFront || !okBack {
		return waists{}, f.noRoomForDarts()
	}
	w := waists{frontSide: f.side(frontWidth, s.taper), backSide: f.side(backWidth, s.taper)}
	w.front = fitWaist(w.frontSide, frontDarts, frontWidth-s.taper-s.front)
	w.back = fitWaist(w.backSide, backDarts, backWidth-s.taper-s.back)
	return w, nil
}

func (f figures) taperedWaists(front, back, taper float64) waists {
	w := waists{frontSide: f.side(front, taper), backSide: f.side(back, taper)}
	w.front, w.back = drawWaist(w.frontSide, nil), drawWaist(w.backSide, nil)
	return w
}
