package draft

import (
	"ellwand/draft/bodice"
	"ellwand/draft/construct"
	"ellwand/draft/part"
	"ellwand/draft/sleeve"
	"ellwand/draft/subject"
	"ellwand/pieces"
)

const (
	// bicepEase is the least by which the bicep line is longer than the upper
	// arm girth (common practice: 4 cm).
	bicepEase = 40
	// armholeStep is by how much the armhole is lowered at a time.
	armholeStep = 5
)

// draftBodice drafts the bodice, and the sleeve if there is one. The armhole
// is lowered until the sleeve goes round the upper arm.
func (g *garment) draftBodice() error {
	options := *g.Bodice
	measures := g.bodiceMeasures()
	arm := g.result.Body[UpperArmGirth]
	for {
		block, err := bodice.Draft(measures, options)
		if lowered := options.ArmholeDrop - g.Bodice.ArmholeDrop; err != nil && lowered > 0 {
			return construct.About(subject.UpperArmGirth, subject.HeadHeight).Refuse("sleeve: the upper arm girth of %s is too large for the armhole, even %s lower: measure it again, or ask for a lower head height", construct.Length(arm), construct.Length(lowered-armholeStep))
		}
		if err != nil || g.Sleeve == nil {
			g.bodice = block
			return err
		}
		made, err := g.draftSleeve(block)
		if err != nil {
			return at(SleeveSection, err)
		}
		if made.BicepLine >= arm+bicepEase {
			g.bodice, g.sleeve = block, made
			g.warnLowered(options.ArmholeDrop - g.Bodice.ArmholeDrop)
			return nil
		}
		options.ArmholeDrop += armholeStep
	}
}

func (g *garment) bodiceMeasures() bodice.Measures {
	b := g.result.Body
	return bodice.Measures{
		Bust: b[BustGirth], Waist: b[WaistGirth], NeckBase: b[NeckBaseGirth],
		BackNeckPointToWaist: b[BackNeckPointToWaist], Shoulder: b[ShoulderLength],
		AcrossBack: b[AcrossBackWidth], AcrossFront: b[AcrossFrontWidth], ScyeDepth: b[ScyeDepth],
		Hip: b[HipGirth], WaistToHip: b[WaistToHip],
	}
}

// draftSleeve drafts the sleeve to the armholes of a bodice, shorter by the
// depth of a cuff.
func (g *garment) draftSleeve(block bodice.Block) (sleeve.Block, error) {
	measures := sleeve.Measures{
		FrontArmhole: seam(block.Front, "armhole"), BackArmhole: seam(block.Back, "armhole"),
		FrontNotch: notch(block.Front, "front armhole"), BackNotch: notch(block.Back, "back armhole"),
		ShoulderToWrist: g.result.Body[ShoulderToWrist],
	}
	options := *g.Sleeve
	if cuff, ok := g.cuff(); ok {
		options.Cuffed = true
		if options.Length == 0 && options.Reach == sleeve.Full {
			options.Length = measures.ShoulderToWrist - cuff.FinishedDepth()
		}
	}
	return sleeve.Draft(measures, options)
}

// cuff is the cuff that the garment asks for.
func (g *garment) cuff() (part.Options, bool) {
	for _, p := range g.Parts {
		if p.IsCuff() {
			return p, true
		}
	}
	return part.Options{}, false
}

// seam is the length of a seam of a piece, darts closed.
func seam(piece pieces.Piece, name string) float64 { return construct.SeamLength(piece, name) }

// notch is the distance along its edge of the notch that meets another.
func notch(piece pieces.Piece, match string) float64 {
	for _, n := range piece.Notches {
		if n.Match == match {
			return n.At
		}
	}
	return 0
}
