package draft

import (
	"ellwand/draft/part"
	"ellwand/pieces"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// draftPart drafts a part and adds it to the garment.
func (g *garment) draftPart(options part.Options) error {
	made, err := part.Draft(g.partMeasures(), options)
	if err != nil {
		return err
	}
	g.markSleeve(options)
	if options.Kind == part.PatchPocket {
		g.placePocket(options, made.Pieces[0])
	}
	g.parts = append(g.parts, drafted{options, made.Pieces})
	for i := range made.Pieces {
		made.Pieces[i].Cloth = options.Cloth
	}
	g.adopt(made.Pieces, made.Sheets, made.Pairings, nil)
	g.partFigures = append(g.partFigures, made.Figures...)
	return nil
}

// markSleeve marks on the sleeve what a part needs there: the slit of a
// placket, the pleats that go into a cuff; on the skirt the opening of a pocket.
func (g *garment) markSleeve(o part.Options) {
	for i, piece := range g.result.Pieces {
		switch {
		case piece.Role == role.Sleeve && o.Kind == part.SleevePlacket:
			g.result.Pieces[i] = part.MarkSlit(piece, o.SlitLength())
			g.addStep(piece.Name, "mark the slit of {}, a quarter of the lower edge in from the back underarm, "+
				"square to the edge", "for the placket", o.SlitLength())
		case piece.Role == role.Sleeve && o.Kind == part.ButtonedCuff:
			taken := o.PleatedAway(g.sleeve.WristWidth, g.result.Body[WristGirth])
			g.result.Pieces[i] = part.MarkPleats(piece, taken)
			g.addStep(piece.Name, "take up {} of the lower edge in pleats towards the placket, or gather it",
				"so that it fits the cuff", taken)
		case o.Kind == part.PocketBag && (piece.Role == role.FrontSkirt || piece.Role == role.BackSkirt):
			g.result.Pieces[i] = o.MarkOpening(piece)
		}
	}
}

// placePocket marks where a patch pocket lies: on the front bodice, or without one on the
// front skirt.
func (g *garment) placePocket(o part.Options, pocket pieces.Piece) {
	for i, piece := range g.result.Pieces {
		if piece.Role == role.FrontSkirt && g.Bodice != nil {
			continue
		}
		marked, step, ok := o.PlacePocket(piece, pocket)
		if !ok {
			continue
		}
		g.result.Pieces[i] = marked
		g.addStep(piece.Name, step, "for the pocket", pocket.Boundary(1).Bound().Max[0])
	}
}

// addStep ends the draft sheet of a piece with one more step.
func (g *garment) addStep(piece, do, rule string, length float64) {
	for i := range g.result.Sheets {
		if g.result.Sheets[i].Piece == piece && length > 0 {
			g.result.Sheets[i].Draw(do, rule, length)
		}
	}
}

// partMeasures are what the parts of this garment are drafted from.
func (g *garment) partMeasures() part.Measures {
	body := g.result.Body
	m := part.Measures{
		Waist: body[WaistGirth], Wrist: body[WristGirth], WaistSeam: g.lowerWaist, WaistEase: g.lowerEase,
		Pieces: g.result.Pieces,
	}
	if g.Bodice != nil {
		m.Front, m.Back = &g.bodice.Front, &g.bodice.Back
		m.FrontWaist, m.BackWaist = seam(g.bodice.Front, seams.Waist), seam(g.bodice.Back, seams.Waist)
	}
	if g.Sleeve != nil {
		m.WristWidth, m.Underarm = g.sleeve.WristWidth, body[ShoulderToWrist]/2
		for _, piece := range g.result.Pieces {
			if piece.Role == role.Sleeve {
				m.Underarm = seam(piece, seams.FrontUnderarm)
			}
		}
	}
	return m
}

// partNeeds lists the measurements that a part needs.
func partNeeds(o part.Options) []Measurement {
	switch {
	case o.Length > 0:
		return nil
	case o.IsCuff():
		return []Measurement{WristGirth}
	case o.Kind == part.Waistband, o.Kind == part.ShapedWaistband, o.Kind == part.GatheredSkirt, o.Kind == part.Belt:
		return []Measurement{WaistGirth}
	}
	return nil
}
