package trousers

import (
	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// The elastic waist, in mm [source.CommonPractice].
const (
	usualElastic    = 25
	leastElastic    = 6
	mostElastic     = 80
	casingRoom      = 5   // the casing is deeper than the elastic is wide
	elasticHipEase  = 100 // 8 to 12 cm
	overHips        = 20  // the waist is longer than the hips that it passes over
	elasticSeat     = 1. / 16
	elasticTaken    = 0.05 // the elastic is that share shorter than the waist girth
	elasticOverlaps = 20   // where its ends are joined
)

// settleEase fills in the usual eases and slants. With an elastic waist the
// centre front runs straight up, and the centre back comes in half as much as
// usual: there is no dart to take the width out again [source.CommonPractice].
func (f *figures) settleEase() {
	ease, hip := float64(usualWaistEase), float64(usualHipEase)
	f.frontSlant, f.seatSlant = usualSlant, usualSeat
	if f.Opening == ElasticWaist {
		hip, f.frontSlant, f.seatSlant = elasticHipEase, 0, elasticSeat
	}
	if f.WaistEase == 0 {
		f.WaistEase = ease
	}
	if f.HipEase == 0 {
		f.HipEase = hip
	}
	if f.Elastic == 0 {
		f.Elastic = usualElastic
	}
}

// widenWaist gives an elastic waist the length of the level line that it lies
// on, if no ease was asked for, and refuses one that does not pass over the
// hips.
func (f *figures) widenWaist(asked bool) error {
	if f.Elastic < leastElastic || f.Elastic > mostElastic {
		return construct.About(subject.Elastic).Refuse("trousers: an elastic %s wide cannot be; ask for %s to %s, %s "+
			"is usual", "Hose: ein %s breites Gummiband geht nicht; verlangen Sie %s bis %s, üblich sind %s",
			construct.Length(f.Elastic), construct.AtLeast(leastElastic), construct.AtMost(mostElastic),
			construct.Length(usualElastic))
	}
	least := f.Hip + overHips
	if asked {
		if 2*f.waist < least {
			return construct.About(subject.WaistEase).Refuse("trousers: a waist ease of %s draws a waist of %s on a "+
				"waist girth of %s, which does not pass over a hip girth of %s without an opening; ask for %s or "+
				"more, or "+
				"leave the waist ease out",
				"Hose: mit einer Bequemlichkeit von %s wird die Taille %s weit, bei einem Taillenumfang "+
					"von %s, und geht ohne Verschluss nicht über einen Hüftumfang von %s; verlangen Sie %s "+
					"oder mehr, oder lassen Sie die Bequemlichkeit weg",
				construct.Length(f.WaistEase), construct.Length(2*f.waist), construct.Length(f.Waist),
				construct.Length(f.Hip), construct.AtLeast(least-f.Waist))
		}
		return nil
	}
	f.waist = max(f.waist, f.level())
	if short := least - 2*f.waist; short > 0 {
		return construct.About(subject.HipEase).Refuse("trousers: a hip ease of %s draws a waist of %s, which does "+
			"not pass over a hip girth of %s without an opening; ask for %s or more",
			"Hose: mit einer Bequemlichkeit von %s an der Hüfte wird die Taille %s weit und geht ohne "+
				"Verschluss nicht über einen Hüftumfang von %s; verlangen Sie %s oder mehr",
			construct.Length(f.HipEase), construct.Length(2*f.waist), construct.Length(f.Hip),
			construct.AtLeast(f.HipEase+short))
	}
	f.WaistEase = 2*f.waist - f.Waist
	return nil
}

// casingDepth is how far the casing reaches above the waist.
func (f figures) casingDepth() float64 { return f.Elastic + casingRoom }

// elasticLength is what is cut of the elastic: a twentieth less than the waist
// girth, and what its ends overlap [source.CommonPractice].
func (f figures) elasticLength() float64 { return float64(f.Waist*(1-elasticTaken)) + elasticOverlaps }

// casing grows the casing on to the waist of a piece: what lies above the waist
// is the mirror image of what lies below, so that it folds down flat.
func (f figures) casing(s *construct.Sheet, h half, piece pieces.Piece) pieces.Piece {
	depth := f.casingDepth()
	waist := h.waist[0].Path
	up := h.outsideLeg.Tangent(h.outsideLeg.Length())
	end := h.outsideLeg.End()
	fold := pieces.MirrorAbout(end, construct.Go(end, construct.Square(up), 1))
	above := construct.Stretch(h.outsideLeg, h.outsideLeg.Length()-depth, h.outsideLeg.Length()).Map(fold).Reverse()
	outside := construct.Join(h.outsideLeg, above)
	top := construct.Go(h.centre.Start(), h.centre.Tangent(0), -depth)
	side := construct.Square(outside.Tangent(outside.Length()))
	edge := construct.Curve(outside.End(), side, 1./3, top, waist.Tangent(waist.Length()), 1./3)

	var edges []pieces.Edge
	for _, e := range piece.Edges {
		switch e.Name {
		case seams.OutsideLeg:
			e.Path = outside
		case seams.Waist:
			e = construct.Edge(seams.CasingEdge, edge)
		case seams.Crotch:
			e.Path = construct.Join(construct.Line(top, h.centre.End()), h.curve)
		}
		edges = append(edges, e)
	}
	piece.Edges = edges
	piece.Marks = append(piece.Marks, pieces.Mark{Name: marks.CasingFold, Path: waist})
	s.Draw("go on {} above the waist on the side, as the mirror image of what lies below, and on the centre line, "+
		"and join the ends squarely: the casing, folded down along the waist",
		"the width of the elastic and 5 mm to thread it", depth)
	return piece
}
