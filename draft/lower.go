package draft

import (
	"slices"

	"ellwand/draft/construct"
	"ellwand/draft/part"
	"ellwand/draft/skirt"
	"ellwand/draft/subject"
	"ellwand/draft/trousers"
	"ellwand/pieces/seams"
)

// lowerBody is the body from the waist seam of a skirt or trousers down.
type lowerBody struct{ waist, hip, waistToHip float64 }

// lowerBody measures the body at a waist seam that lies below the natural
// waist by the depth of a shaped waistband. Between waist and hip the girth
// grows evenly [source.CommonPractice].
func (g *garment) lowerBody() (lowerBody, error) {
	b, by := g.result.Body, g.bandDepth()
	full := lowerBody{b[WaistGirth], b[HipGirth], b[WaistToHip]}
	if by > full.waistToHip/2 {
		return lowerBody{}, g.atBand(construct.About(subject.Depth).Refuse("shaped waistband: a depth of %s is more "+
			"than half the waist to hip of %s; ask for less",
			"Formbund: eine Höhe von %s ist mehr als die halbe Hüfttiefe von %s; verlangen Sie weniger",
			construct.Length(by), construct.Length(full.waistToHip)))
	}
	full.waist += (full.hip - full.waist) * by / full.waistToHip
	full.waistToHip -= by
	return full, nil
}

// bandDepth is how far the waist seam lies below the natural waist: the depth
// of a shaped waistband, whose upper edge lies at the waist.
func (g *garment) bandDepth() float64 {
	for _, p := range g.Parts {
		if p.Kind == part.ShapedWaistband {
			return p.FinishedDepth()
		}
	}
	return 0
}

// atBand says that an error arose at the shaped waistband.
func (g *garment) atBand(err error) error {
	i := slices.IndexFunc(g.Parts, func(p part.Options) bool { return p.Kind == part.ShapedWaistband })
	return atEntry(Entry{Section: PartsSection, Index: i}, err)
}

// draftSkirt drafts the skirt, to the waist seam of a fitted bodice if there
// is one.
func (g *garment) draftSkirt() error {
	body, err := g.lowerBody()
	if err != nil {
		return err
	}
	options := *g.Skirt
	if g.joinsSkirt() && options.WaistEase == 0 {
		options.WaistEase = g.bodiceWaist() - body.waist
	}
	if options.Length == 0 {
		options.Length = skirt.UsualLength
	}
	options.Length -= g.bandDepth()
	measures := skirt.Measures{Waist: body.waist, Hip: body.hip, WaistToHip: body.waistToHip, Lowered: g.bandDepth()}
	if g.joinsSkirt() {
		measures.FrontWaist = seam(g.bodice.Front, seams.Waist)
	}
	g.skirt, err = skirt.Draft(measures, options)
	if err != nil {
		return err
	}
	g.lowerWaist, g.lowerEase = g.skirt.Waist, g.skirt.WaistEase
	g.adopt(g.skirt.Pieces, g.skirt.Sheets, g.skirt.Pairings, g.skirt.Warnings)
	if g.joinsSkirt() {
		g.pairings = append(g.pairings, g.dressPairings()...)
	}
	return nil
}

// dressPairings set the skirt against the bodice: at the waist all round, and
// where both have a front and a back, piece by piece, so that the side seams
// meet.
func (g *garment) dressPairings() []construct.Pairing {
	list := []construct.Pairing{construct.Equal("waist", "skirt waist seam", g.skirt.Waist, "bodice waist seam",
		g.bodiceWaist())}
	if shape := g.Skirt.Shape; shape != skirt.Straight && shape != skirt.ALine {
		return list
	}
	front, back := g.skirt.Pieces[0], g.skirt.Pieces[1]
	return append(list,
		construct.Equal("waist", "front skirt", seam(front, seams.Waist), "front bodice",
			seam(g.bodice.Front, seams.Waist)),
		construct.Equal("waist", "back skirt", seam(back, seams.Waist), "back bodice",
			seam(g.bodice.Back, seams.Waist)))
}

// draftTrousers drafts trousers and their pockets.
func (g *garment) draftTrousers() error {
	body, err := g.lowerBody()
	if err != nil {
		return err
	}
	options, by := *g.Trousers, g.bandDepth()
	if options.Length > 0 {
		options.Length -= by
	}
	g.trousers, err = trousers.Draft(trousers.Measures{
		Waist: body.waist, Hip: body.hip, WaistToHip: body.waistToHip,
		BodyRise: g.result.Body[BodyRise] - by, OutsideLeg: g.result.Body[OutsideLegLength] - by, Lowered: by,
	}, options)
	if err != nil {
		return err
	}
	g.lowerWaist, g.lowerEase = g.trousers.Waist, g.trousers.WaistEase
	g.adopt(g.trousers.Pieces, g.trousers.Sheets, g.trousers.Pairings, g.trousers.Warnings)
	return nil
}

// joinsSkirt says that bodice and skirt are sewn together at the waist.
func (g *garment) joinsSkirt() bool { return g.Bodice != nil && g.Skirt != nil && g.bodice.Fitted }

// bodiceWaist is the waist seam of the bodice all round.
func (g *garment) bodiceWaist() float64 {
	return 2 * (seam(g.bodice.Front, seams.Waist) + seam(g.bodice.Back, seams.Waist))
}
