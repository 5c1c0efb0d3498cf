package draft

import (
	"ellwand/draft/bodice"
	"ellwand/draft/construct"
	"ellwand/draft/part"
	"ellwand/draft/sleeve"
	"ellwand/draft/subject"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// armholeStep is by how much the armhole is lowered or raised at a time, in mm
// [source.OwnChoice].
const armholeStep = 5

// draftBodice drafts the bodice, and the sleeve if there is one. Where no head of
// the sleeve's norm makes it go round the upper arm the armhole is lowered; where
// none makes it narrow enough for the arm it is raised, up to that of a close
// fit.
func (g *garment) draftBodice() error {
	options := *g.Bodice
	for {
		block, err := bodice.Draft(g.bodiceMeasures(), options)
		if lowered := options.ArmholeDrop - g.Bodice.ArmholeDrop; err != nil && lowered > 0 {
			return construct.About(subject.UpperArmGirth, subject.HeadHeight).Refuse(
				"sleeve: the upper arm girth of %s is too large for the armhole, even %s lower: "+
					"measure it again, or ask for a lower head height",
				"Ärmel: der Oberarmumfang von %s ist zu groß für das Armloch, auch wenn es %s tiefer "+
					"ist: messen Sie noch einmal, oder verlangen Sie eine niedrigere Armkugel",
				construct.Length(g.result.Body[UpperArmGirth]),
				construct.Length(lowered-armholeStep))
		}
		if err != nil || g.Sleeve == nil {
			g.bodice = block
			return err
		}
		made, err := g.draftSleeve(block)
		if err != nil {
			return at(SleeveSection, err)
		}
		step := g.armholeStep(made, options)
		if step == 0 {
			g.bodice, g.sleeve = block, made
			g.warnArmhole(options.ArmholeDrop - g.Bodice.ArmholeDrop)
			return nil
		}
		options.ArmholeDrop += step
	}
}

// armholeStep is by how much to lower the armhole for a sleeve, less than 0 to
// raise it; 0 where the sleeve suits the arm, or the armhole can give way no
// further.
func (g *garment) armholeStep(made sleeve.Block, o bodice.Options) float64 {
	within := g.bicepLimits()
	lowered, plain := o.ArmholeDrop-g.Bodice.ArmholeDrop, made.BicepLine-made.Spread
	switch {
	case plain < within.Least && lowered >= 0:
		return armholeStep
	case plain > within.Most && lowered <= 0 && o.Raisable() >= armholeStep:
		return -armholeStep
	}
	return 0
}

// bicepLimits are how long the bicep line of the sleeve may be, without what the
// gathers of its head add.
func (g *garment) bicepLimits() sleeve.Limits {
	return g.Sleeve.BicepLimits(g.result.Body[UpperArmGirth])
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
		FrontArmhole: part.Closed(block.Front, seams.Armhole), BackArmhole: part.Closed(block.Back, seams.Armhole),
		FrontNotch: notch(block.Front, marks.FrontArmhole), BackNotch: notch(block.Back, marks.BackArmhole),
		ShoulderToWrist: g.result.Body[ShoulderToWrist], UpperArm: g.result.Body[UpperArmGirth],
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

// warnArmhole says that the armhole was lowered, or raised where by is less than
// 0, for the sleeve.
func (g *garment) warnArmhole(by float64) {
	arm := construct.Length(g.result.Body[UpperArmGirth])
	switch {
	case by > 0:
		g.warnf("the armhole is %s lower than the fit has it, so that the sleeve goes round an upper arm of %s",
			"das Armloch ist %s tiefer als in dieser Passform, damit der Ärmel um einen Oberarm von "+
				"%s geht",
			construct.Length(by), arm)
	case by < 0:
		g.warnf("the armhole is %s higher than the fit has it, so that the sleeve is not too wide for an upper arm "+
			"of %s",
			"das Armloch ist %s höher als in dieser Passform, damit der Ärmel für einen Oberarm von "+
				"%s nicht zu weit wird", construct.Length(-by), arm)
	}
}
