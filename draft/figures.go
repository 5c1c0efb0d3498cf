package draft

import (
	"ellwand/draft/construct"
	"ellwand/draft/part"
	"ellwand/draft/sleeve"
	"ellwand/pieces/seams"
)

// figures of the draft that a pattern maker asks for.
func (g *garment) figures() []Figure {
	var list []Figure
	add := func(name string, value float64) { list = append(list, Figure{Name: name, Value: value}) }
	if g.Bodice != nil {
		add("front armhole", seam(g.bodice.Front, seams.Armhole))
		add("back armhole", seam(g.bodice.Back, seams.Armhole))
	}
	if g.Sleeve != nil {
		add("sleeve head height", g.sleeve.HeadHeight)
		add("sleeve head", g.sleeve.Head)
		add("ease of the sleeve head, front", g.sleeve.FrontHead-seam(g.bodice.Front, seams.Armhole))
		add("ease of the sleeve head, back", g.sleeve.Head-g.sleeve.FrontHead-seam(g.bodice.Back, seams.Armhole))
		add("bicep line", g.sleeve.BicepLine)
		add("width at the lower edge of the sleeve", g.sleeve.WristWidth)
	}
	if g.Skirt != nil {
		add("skirt waist seam", g.skirt.Waist)
		add("skirt on the hip line, all round", g.skirt.Hip)
		add("skirt hem, all round", g.skirt.Hem)
	}
	if g.Trousers != nil {
		add("trousers waist seam", g.trousers.Waist)
		add("trousers on the hip line, all round", g.trousers.Hip)
		add("crotch seam, waist to waist", g.trousers.Crotch)
		add("leg at the hem, all round", g.trousers.Hem)
		if g.trousers.Elastic > 0 {
			add("elastic to cut", g.trousers.Elastic)
		}
	}
	return append(list, g.partFigures...)
}

// warn adds what will not wear well.
func (g *garment) warn() {
	for _, row := range g.result.Truing.Rows {
		if !row.InRange {
			g.warnf("%s: the %s is %s against the %s; normal is: %s",
				"%s: %s ist %s gegen %s; üblich ist: %s", row.Seam, row.Of, row.Verdict, row.Against,
				row.Normal)
		}
	}
	if g.Bodice != nil && g.bodice.Back.Fold != seams.None && g.bodice.Front.Fold != seams.None {
		g.warnf("both centre lines lie on the fold: the neck has no opening for the head; lower the neck, or cut the "+
			"back with a centre back seam",
			"beide Mitten liegen im Stoffbruch: der Kopf geht nicht durch das Halsloch; machen Sie es "+
				"tiefer, oder schneiden Sie den Rücken mit einer Naht in der hinteren Mitte")
	}
	if g.Sleeve != nil {
		g.warnWide()
		g.warnBeside()
		g.warnWrist()
	}
}

// warnWide says that no sleeve of the style is narrow enough for the arm.
func (g *garment) warnWide() {
	arm, plain := g.result.Body[UpperArmGirth], g.sleeve.BicepLine-g.sleeve.Spread
	if plain > g.bicepLimits().Most && !g.sleeve.IsCap {
		g.warnf("the sleeve is %s wide on the bicep line, for an upper arm of %s: narrower ones do not go into this "+
			"armhole; ask for a closer fit of the bodice, or a higher head",
			"der Ärmel ist auf der Oberarmlinie %s weit, bei einem Oberarm von %s: engere passen "+
				"nicht in dieses Armloch; verlangen Sie ein engeres Oberteil, oder eine höhere Armkugel",
			construct.Length(plain),
			construct.Length(arm))
	}
}

// warnBeside says where the head does not lie on the armhole under the arm.
func (g *garment) warnBeside() {
	for _, armhole := range []struct {
		name   string
		beside float64
	}{{"front", g.sleeve.Beside.Front}, {"back", g.sleeve.Beside.Back}} {
		if armhole.beside > sleeve.MostBeside {
			g.warnf("under the arm the sleeve head lies up to %s off the %s armhole, which is wide and low there: baste "+
				"and fit it before you sew it, or measure the scye depth and the across %[2]s width again",
				"unter dem Arm liegt die Armkugel bis zu %s neben dem Armloch %s, das dort weit und tief "+
					"ist: heften und anprobieren Sie vor dem Nähen, oder messen Sie Armlochtiefe und Breite "+
					"(%[2]s) noch einmal",
				construct.Length(armhole.beside), armhole.name)
		}
	}
}

// warnWrist compares the wrist of a full-length sleeve with the body's.
func (g *garment) warnWrist() {
	options, wrist := *g.Sleeve, g.result.Body[WristGirth]
	full := options.Reach == sleeve.Full && options.Length == 0 || options.Length > 0.9*g.result.Body[ShoulderToWrist]
	if full && !g.sleeve.IsCap && g.sleeve.WristWidth < wrist+20 {
		g.warnf("the sleeve is %s wide at the wrist, for a wrist girth of %s: the hand will not go through without "+
			"an opening",
			"der Ärmel ist am Handgelenk %s weit, bei einem Umfang von %s: ohne Schlitz geht die Hand "+
				"nicht durch", construct.Length(g.sleeve.WristWidth), construct.Length(wrist))
	}
	cuff, ok := g.cuff()
	if ok && g.sleeve.WristWidth > 0 && cuff.Length == 0 && g.sleeve.WristWidth < part.CuffLength(wrist)-20 {
		g.warnf("the sleeve is narrower at the wrist than its cuff: ask for a wrist width of %s or more",
			"der Ärmel ist am Handgelenk enger als seine Manschette: verlangen Sie dort %s oder mehr",
			construct.AtLeast(part.CuffLength(wrist)))
	}
}
