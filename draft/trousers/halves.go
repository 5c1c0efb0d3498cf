package trousers

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// straightDown is how high above the crotch line the straight part of the
// centre line usually ends, for each mm of the fork, and not above the hip
// line.
func (f figures) straightDown(fork, share float64) float64 {
	return min(share*fork, f.rise-f.WaistToHip)
}

// drawFront draws the lines of the front.
func (f figures) drawFront() half {
	l := f.leg(0, 0)
	fork := orb.Point{-f.half(), -f.rise}
	hip := orb.Point{f.half(), -f.WaistToHip}
	h := half{role: role.FrontTrousers}
	h.insideLeg, h.outsideLeg = l.insideLeg(fork), l.outsideLeg(hip, f.taper, f.WaistToHip+f.raise())
	h.hem = hem(h.insideLeg, h.outsideLeg)

	at := orb.Point{f.centre(), -f.WaistToHip}
	top := orb.Point{f.centre() + f.frontSlant, 0}
	h.centre, h.curve = crotch(top, construct.Direction(top, at), -f.rise+f.straightDown(f.fork, 1.15), fork,
		h.insideLeg)
	h.hip = f.front

	crease := -top[0] / (h.outsideLeg.End()[0] - top[0])
	f.drawWaist(&h, f.darts(f.frontDarts, dartPlan{alone: crease,
		pair: [2]float64{float64(beforeCrease * crease), float64(beforeCrease*crease) + frontApart}, first: frontDart,
		second: frontSecond * frontDart, widest: frontWidest}))
	return h
}

// drawBack draws the lines of the back, its fork so far below the crotch line.
func (f figures) drawBack(drop float64) half {
	extra := f.backFork - f.fork
	l := f.leg(legMore, shortFurther*extra)
	fork := orb.Point{-f.half() - extra, -f.rise - drop}
	// As far outside the front as the leg is, so that the outside legs match.
	hip := orb.Point{f.half() + legMore, -f.WaistToHip}
	seat := orb.Point{hip[0] - f.back, -f.WaistToHip}
	h := half{role: role.BackTrousers, hip: f.back}
	h.insideLeg, h.outsideLeg = l.insideLeg(fork), l.outsideLeg(hip, f.taper, f.WaistToHip+f.raise())
	h.hem = hem(h.insideLeg, h.outsideLeg)

	up := construct.Direction(orb.Point{}, orb.Point{f.seatSlant, 1})
	top := along(seat, up, seatRaise)
	h.centre, h.curve = crotch(top, construct.Back(up), -f.rise+f.straightDown(f.backFork, 0.95), fork, h.insideLeg)

	f.drawWaist(&h, f.darts(f.backDarts, dartPlan{alone: backAlone, pair: [2]float64{backInner, backOuter},
		first: backDart, second: secondDart, widest: backWidest}))
	return h
}

// drawWaist draws the waist from the side to the centre line, square to both.
func (f figures) drawWaist(h *half, set []construct.DartAt) {
	side := h.outsideLeg[len(h.outsideLeg)-1].Tangent(1)
	up := construct.Back(h.centre[0].Tangent(0))
	h.waist, h.darts = construct.DartedSeam(seams.Waist, h.outsideLeg.End(), construct.Square(side), h.centre.Start(),
		construct.Square(up), set)
}

// piece makes the piece of a half, with one stroke a notch on the front and
// two on the back.
func (f figures) piece(h half, strokes int) pieces.Piece {
	hem := construct.Edge(seams.TrouserHem, h.hem)
	hem.Hem = true
	piece := pieces.Piece{Name: h.role.String(), Role: h.role, Cut: 2, Pair: true, Darts: h.darts,
		Edges: []pieces.Edge{hem, construct.Edge(seams.OutsideLeg, h.outsideLeg)}}
	piece.Edges = append(piece.Edges, h.waist...)
	piece.Edges = append(piece.Edges,
		construct.Edge(seams.Crotch, construct.Join(h.centre, h.curve)),
		construct.Edge(seams.InsideLeg, h.insideLeg.Reverse()))
	piece.Grain = pieces.Grain{From: orb.Point{0, -f.rise - float64(0.75*(f.Length-f.rise))},
		To: orb.Point{0, float64(-0.75 * f.WaistToHip)}}
	piece.Notches = []pieces.Notch{{Edge: seams.OutsideLeg, At: h.belowHip(), Count: strokes, Match: marks.Hip}}
	piece.Marks = []pieces.Mark{
		{Name: marks.HipLine, Path: construct.Line(orb.Point{h.outsideLeg[len(h.outsideLeg)-2].End()[0] - h.hip,
			-f.WaistToHip}, h.outsideLeg[len(h.outsideLeg)-2].End())},
	}
	if f.isShort() {
		return piece
	}
	inside, outside := h.insideLeg[0], h.outsideLeg[0]
	piece.Notches = append(piece.Notches,
		pieces.Notch{Edge: seams.OutsideLeg, At: outside.Length(), Count: strokes, Match: marks.OutsideKnee},
		pieces.Notch{Edge: seams.InsideLeg, At: h.insideLeg.Length() - inside.Length(), Count: strokes,
			Match: marks.InsideKnee})
	piece.Marks = append(piece.Marks, pieces.Mark{Name: marks.KneeLine,
		Path: construct.Line(inside.End(), outside.End())})
	return piece
}

// belowHip is the length of the outside leg up to the hip line.
func (h half) belowHip() float64 {
	return h.outsideLeg.Length() - h.outsideLeg[len(h.outsideLeg)-1].Length()
}

// record notes the steps that draw a half.
func (f figures) record(s *construct.Sheet, h half) {
	crease := s.Start(0, 0, "the crease line at the waist")
	hipLine := s.Down(crease, f.WaistToHip, "the hip line: waist to hip")
	crotchLine := s.Down(crease, f.rise, "the crotch line: body rise and 5 mm")
	kneeLine := s.Down(crease, f.knee, "the knee line: 5 cm above the middle of the inside leg")
	low := s.Down(crease, f.Length, "the hem: the length")

	reach := func(from construct.Point, x float64, rule string) construct.Point {
		if x < 0 {
			return s.Left(from, -x, rule)
		}
		return s.Right(from, x, rule)
	}
	side := h.outsideLeg[len(h.outsideLeg)-1]
	fork := h.insideLeg.End()
	hip := reach(hipLine, side.Start()[0], "the side on the hip line")
	at := reach(hipLine, side.Start()[0]-h.hip, "the centre line there: a quarter of hip girth and ease, the back 1 "+
		"cm more, the front 1 cm less")
	forkLevel := reach(crotchLine, fork[0], "the fork: a sixteenth of the hip girth beyond the centre line, in the "+
		"back half as much again and 5 mm")
	if drop := -f.rise - fork[1]; drop > 0.05 {
		forkLevel = s.Down(forkLevel, drop, "dropped, so that the inside legs match")
	} else if drop < -0.05 {
		forkLevel = s.Up(forkLevel, -drop, "raised, so that the inside legs match")
	}
	topLevel := reach(crease, h.centre.Start()[0], "the centre line at the waist")
	top := topLevel
	if up := h.centre.Start()[1]; up > 0 {
		top = s.Up(topLevel, up, "raised for sitting")
	}
	waistLevel := reach(crease, side.End()[0], "the side at the waist")
	waist := s.Raised(waistLevel, side.End()[1], "raised over the hip bone")
	inside := reach(low, h.insideLeg.Start()[0], "the inside leg at the hem")
	outside := reach(low, h.outsideLeg.Start()[0], "the outside leg at the hem")
	bend := s.Along(top, at, h.centre.Length(), "where the crotch seam begins to curve")
	s.Draw("draw the crotch seam "+construct.Numbers(top, bend, forkLevel)+", straight to "+construct.Numbers(bend)+
		", then curved", "square to the inside leg")
	if f.isShort() {
		s.Draw("draw the inside leg "+construct.Numbers(inside, forkLevel)+" hollowed, and the outside leg "+
			construct.Numbers(outside, hip, waist), "")
	} else {
		insideKnee := s.Left(kneeLine, -h.insideLeg[0].End()[0], "the inside leg at the knee: the hem and a fifth of "+
			"the way to the width on the crotch line")
		outsideKnee := s.Right(kneeLine, h.outsideLeg[0].End()[0], "the outside leg at the knee")
		s.Draw("draw the inside leg "+construct.Numbers(inside, insideKnee, forkLevel)+" and the outside leg "+
			construct.Numbers(outside, outsideKnee, hip, waist), "straight from hem to knee, then curved")
	}
	for _, d := range h.darts {
		middle := construct.Between(d.Start, d.End, 0.5)
		s.Draw("on the line "+construct.Numbers(waist, top)+" mark a dart {} wide, its middle {} from "+
			construct.Numbers(waist)+", {} long, square to the line", "a share of what is left to take in",
			construct.Distance(d.Start, d.End), construct.Distance(waist.At, middle),
			construct.Distance(middle, d.Apex))
	}
	s.Draw("draw the waist "+construct.Numbers(waist, top)+" and the hem "+construct.Numbers(inside, outside),
		"square to the seams at both ends")
}
