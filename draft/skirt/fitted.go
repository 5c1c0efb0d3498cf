package skirt

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// backMore is how much wider each half of the back is than that of the front
// on the hip line, in mm: the seat is fuller [source.AldrichFromMemory].
const backMore = 15

// fitted drafts a straight or an A-line skirt.
func (f figures) fitted() (Block, error) {
	if f.Shape == ALine {
		if err := f.checkFlare(); err != nil {
			return Block{}, err
		}
	}
	s, err := f.shape()
	if err != nil {
		return Block{}, err
	}
	f.widen(&s)
	front := half{role.FrontSkirt, seams.CentreFront, (s.half - backMore) / 2, s.front}
	back := half{role.BackSkirt, seams.CentreBack, (s.half + backMore) / 2, s.back}
	s.taper = f.fitTaper(s.taper, front, back)
	if err := f.meetBodice(&s, &front, &back); err != nil {
		return Block{}, err
	}

	sheets := []construct.Sheet{{Piece: front.role.String()}, {Piece: back.role.String()}}
	frontPiece, backPiece := f.piece(&sheets[0], front, s.taper), f.piece(&sheets[1], back, s.taper)
	frontPiece.Cut, frontPiece.Fold = 1, front.centre
	backPiece.Cut, backPiece.Pair = 2, true
	if f.BackOnFold {
		backPiece.Cut, backPiece.Pair, backPiece.Fold = 1, false, back.centre
	}
	if f.Vent {
		backPiece = f.vent(&sheets[1], backPiece)
	}
	return f.fittedBlock(s, sheets, frontPiece, backPiece), nil
}

// mostShift is how far the side seam may move from front to back to meet that
// of a bodice, for each mm of the waist seam: 4 to 5 cm on a waist of 76 cm
// [source.OwnChoice].
const mostShift = 0.06

// meetBodice moves the side seam until the front waist is as long as that of
// the bodice.
func (f figures) meetBodice(s *shaping, front, back *half) error {
	if f.FrontWaist == 0 {
		return nil
	}
	for range 10 {
		shift := f.FrontWaist - construct.EdgesLength(f.draw(*front, s.taper).waist, seams.Waist)
		if moved := (back.width - front.width - backMore) / 2; math.Abs(moved-shift) > mostShift*f.waist {
			return construct.About(subject.WaistGirth, subject.HipGirth).Refuse(
				"skirt: the side seam would have to move by %s to meet that of the bodice, on a "+
					"waist girth of %s and a hip girth of %s; ask for a skirt without side seams (gores, tiers, "+
					"pleats or a "+
					"circle), or measure both again",
				"Rock: die Seitennaht müsste um %s wandern, um die des Oberteils zu treffen, bei "+
					"Taillenumfang %s und Hüftumfang %s; verlangen Sie einen Rock ohne Seitennähte (Bahnen, "+
					"Stufen, Falten oder Teller), oder messen Sie beide noch einmal",
				construct.Length(math.Abs(moved-shift)),
				construct.Length(f.Waist), construct.Length(f.Hip))
		}
		front.width, back.width = front.width+shift, back.width-shift
		s.taper = f.fitTaper(s.taper, *front, *back)
	}
	return nil
}

// widen gives an A-line skirt more width on the hip line where its side seam
// comes in less above it than it runs out below: the seam then is one straight
// line.
func (f figures) widen(s *shaping) {
	if least := float64(f.slant() * f.WaistToHip); s.taper < least {
		s.half += 2 * (least - s.taper)
		s.taper = least
	}
}

// fitTaper finds the taper at which the waist seam, darts closed, has its
// length: its curve makes it a little longer than the level distance.
func (f figures) fitTaper(taper float64, halves ...half) float64 {
	return construct.Settle(taper, func(taper float64) float64 {
		length := 0.0
		for _, h := range halves {
			length += construct.EdgesLength(f.draw(h, taper).waist, seams.Waist)
		}
		return length - f.waist/2
	})
}

// piece draws one half, its centre line on the left.
func (f figures) piece(s *construct.Sheet, h half, taper float64) pieces.Piece {
	o := f.draw(h, taper)
	side := o.side
	hem := construct.Edge(seams.SkirtHem, o.level(f.Length, side.Start(), side[0].Tangent(0)))
	hem.Hem = true
	f.record(s, h, taper, o)
	f.recordHemDart(s, o, hem.Path)

	piece := pieces.Piece{Name: h.role.String(), Role: h.role, Darts: o.darts,
		Edges: []pieces.Edge{hem, construct.Edge(seams.SideSeam, side)}}
	piece.Edges = append(piece.Edges, o.waist...)
	piece.Edges = append(piece.Edges, construct.Edge(h.centre, construct.Line(orb.Point{0, 0}, hem.Path.Start())))
	piece.Grain = upright(h.width/3, -f.Length, float64(-0.75*f.WaistToHip))
	piece.Notches = []pieces.Notch{{Edge: seams.SideSeam, At: side[0].Length(), Count: 1, Match: marks.Hip}}
	switch zip := zipLength(f.WaistToHip); {
	case f.BackOnFold:
		// Without a seam at the centre back it opens at the left side.
		piece.Notches = append(piece.Notches,
			pieces.Notch{Edge: seams.SideSeam, At: side.Length() - zip, Count: 2, Match: marks.ZipEnd})
	case h.centre == seams.CentreBack:
		piece.Notches = append(piece.Notches, pieces.Notch{Edge: h.centre, At: zip, Count: 2, Match: marks.ZipEnd})
	}
	hipLine := construct.Line(orb.Point{0, -f.WaistToHip}, side[0].End())
	if o.cut != nil {
		hipLine = o.acrossCut(f.WaistToHip, side[0].End())
	}
	piece.Marks = []pieces.Mark{{Name: marks.HipLine, Path: hipLine}}
	return piece
}

// record notes the steps that draw a half.
func (f figures) record(s *construct.Sheet, h half, taper float64, o outline) {
	side := f.side(h.width, taper)
	waist := s.Start(0, 0, "the "+h.centre.String()+" at the waist")
	hip := s.Down(waist, f.WaistToHip, "the hip line: waist to hip")
	below := s.Down(waist, f.Length, "the hem at the "+h.centre.String()+": the length")
	edge := s.Right(hip, h.width, "the side on the hip line: a quarter of hip girth and ease, the back 7.5 mm more, "+
		"the front 7.5 mm less; more where the waist or the flare needs it, or moved to meet a bodice")
	across := s.Right(waist, side.End()[0], "the width of the hip line less the taper of the side seam")
	top := s.Raised(across, side.End()[1], "the side at the waist, raised over the hip bone")
	level := s.Right(below, side.Start()[0], "the hem at the side: straight down from the hip, or out by the flare")
	foot := s.Raised(level, side.Start()[1]+f.Length, "raised, so that the side is as long below the hip as the centre")
	s.Draw("draw the side seam "+construct.Numbers(foot, edge, top), "straight to the hip, then curving in")
	if o.cut != nil {
		s.Guide(seams.SideSeam, side)
		return
	}
	for i := len(o.darts) - 1; i >= 0; i-- {
		d := o.darts[i]
		middle := construct.Between(d.Start, d.End, 0.5)
		s.Draw("on the line "+construct.Numbers(waist, top)+" mark a dart {} wide, its middle {} from "+
			construct.Numbers(waist)+", {} long, square to the line", "a share of what is left to take in",
			construct.Distance(d.Start, d.End), construct.Distance(orb.Point{}, middle),
			construct.Distance(middle, d.Apex))
	}
	s.Draw("draw the waist "+construct.Numbers(waist, top), "square to the centre, to the dart legs and to the side "+
		"seam")
	s.Draw("draw the hem "+construct.Numbers(below, foot), "square to the centre and to the side seam")
}

func (f figures) fittedBlock(s shaping, sheets []construct.Sheet, front, back pieces.Piece) Block {
	length := func(p pieces.Piece, seam seams.Name) float64 { return construct.SeamLength(p, seam) }
	hem := 2 * length(front, seams.SkirtHem)
	b := Block{
		Pieces: []pieces.Piece{front, back}, Sheets: sheets,
		Waist: 2 * (length(front, seams.Waist) + length(back, seams.Waist)),
		Hip:   2 * (front.Marks[0].Path.Length() + back.Marks[0].Path.Length()),
		Hem:   hem + 2*length(back, seams.SkirtHem),
	}
	b.Pairings = []construct.Pairing{
		construct.Equal("side", "front side", length(front, seams.SideSeam), "back side", length(back,
			seams.SideSeam)),
		waistPairing("waist seam, darts closed", b.Waist, f),
		f.hipPairing(b.Hip),
	}
	if f.waist > f.hip {
		b.Warnings = append(b.Warnings, construct.Both("the waist of %s is wider than the hip of %s: the skirt hangs "+
			"straight from the waist and is %s wider than the hip",
			"die Taille von %s ist weiter als die Hüfte von %s: der Rock hängt gerade von der Taille "+
				"und ist %s weiter als die Hüfte", construct.Length(f.Waist), construct.Length(f.Hip),
			construct.Length(b.Hip-f.Hip)))
	}
	if f.DartsIntoHem && s.front == nil && s.back == nil {
		b.Warnings = append(b.Warnings, construct.Both("the waist of %s is so near the hip of %s that there are no "+
			"darts to close into the hem: give a flare",
			"die Taille von %s liegt so nahe an der Hüfte von %s, dass keine Abnäher in den Saum zu "+
				"legen sind: geben Sie eine Ausstellung an",
			construct.Length(f.Waist), construct.Length(f.Hip)))
	}
	if f.Shape == Straight && !f.Vent && f.Length > 500 && b.Hem < f.Hip+150 {
		b.Warnings = append(b.Warnings, construct.Both("the hem is %s round, %s below the waist: for a full stride "+
			"add a vent, or stop at 50 cm",
			"der Saum ist %s weit, %s unter der Taille: für volle Schritte braucht es einen Schlitz, "+
				"oder der Rock endet bei 50 cm", construct.Length(b.Hem), construct.Length(f.Length)))
	}
	return b
}
