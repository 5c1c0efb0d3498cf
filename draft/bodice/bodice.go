package bodice

import (
	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// Draft drafts the bodice. The error is a sentence that names the measurement
// that cannot be.
func Draft(m Measures, o Options) (Block, error) {
	if o.Princess != NoPrincess && o.Yoke != 0 {
		return Block{}, construct.About(subject.Princess, subject.Yoke).Refuse(
			"bodice: a back with a princess seam has no yoke; leave out one of them",
			"Oberteil: ein Rücken mit Prinzessnaht hat keine Passe; lassen Sie eines davon weg")
	}
	if err := o.checkProportional(); err != nil {
		return Block{}, err
	}
	o = o.settled()
	f, err := reckon(m, o)
	if err != nil {
		return Block{}, err
	}
	backSheet := construct.Sheet{Piece: role.BackBodice.String()}
	frontSheet := construct.Sheet{Piece: role.FrontBodice.String()}
	front := f.frontUpper(&frontSheet)
	armhole, err := f.armholeWidth(front.openAcross.X())
	if err != nil {
		return Block{}, err
	}
	front.setUnderarm(&frontSheet, armhole)
	back := f.backUpper(&backSheet, armhole)
	if err := f.checkUpper(front, back); err != nil {
		return Block{}, err
	}

	if err := f.checkNeck(o, front, back); err != nil {
		return Block{}, err
	}

	straight := o.StraightWaist || o.Fit == Shirt
	if err := o.checkOpening(); err != nil {
		return Block{}, err
	}
	waists, err := f.lower(o, straight, front, back)
	if err != nil {
		return Block{}, err
	}
	b := Block{
		Front:    f.front(&frontSheet, o, &front, waists.frontSide, waists.front),
		Back:     f.back(&backSheet, o, &back, waists.backSide, waists.back),
		BustEase: f.bustEase, WaistEase: f.waistEase, BustWidth: back.underarm.X() + front.underarm.X(),
		Fitted:     o.BelowWaist == 0 && (!straight || f.waist > f.half),
		WaistWidth: waists.waist, HipWidth: waists.hip,
	}
	if err := f.checkNeckGirth(b.Front, b.Back); err != nil {
		return Block{}, err
	}
	b.Pieces, err = f.cut(&backSheet, &frontSheet, o, front, back, waists, b)
	switch o.opens() {
	case seams.CentreFront:
		b.Front = f.open(&construct.Sheet{}, o, b.Front)
	case seams.CentreBack:
		b.Back = f.open(&construct.Sheet{}, o, b.Back)
	}
	b.Sheets = []construct.Sheet{backSheet, frontSheet}
	return b, err
}

// cut gives the pieces that front and back are cut as.
func (f figures) cut(backSheet, frontSheet *construct.Sheet, o Options, front frontUpper, back backUpper, w waists,
	whole Block) ([]pieces.Piece, error) {
	list := []pieces.Piece{whole.Front, whole.Back}
	switch {
	case o.Princess != NoPrincess:
		list = f.panels(backSheet, frontSheet, o, front, back, w, whole)
	case o.Yoke != 0:
		lower, yoke, err := f.yoke(backSheet, o, back, whole.Back)
		if err != nil {
			return nil, err
		}
		list = []pieces.Piece{whole.Front, lower, yoke}
	}
	switch o.opens() {
	case seams.CentreFront:
		list[0] = f.open(frontSheet, o, list[0])
	case seams.CentreBack:
		list[1] = f.open(backSheet, o, list[1])
	}
	return list, nil
}

func (f figures) checkUpper(front frontUpper, back backUpper) error {
	if err := checkAcross("across back width", subject.AcrossBackWidth, f.acrossBack, back.tip.X(), f.AcrossBack,
		f.Shoulder); err != nil {
		return err
	}
	if err := checkAcross("across front width", subject.AcrossFrontWidth, f.acrossFront, front.tip.X(), f.AcrossFront,
		f.Shoulder); err != nil {
		return err
	}
	if f.bustDart > 0 && front.bustPoint.X() > front.openAcross.X()-15 {
		return construct.About(subject.AcrossFrontWidth, subject.BustGirth).Refuse(
			"bodice: the across front width of %s is too narrow for the bust girth of %s: "+
				"measure both again",
			"Oberteil: die Brustbreite von %s ist zu schmal für den Brustumfang von %s: messen Sie "+
				"beide noch einmal", construct.Length(f.AcrossFront), construct.Length(f.Bust))
	}
	if rise := front.centreNeck.Y() - f.bustLine; rise < 30 {
		return construct.About(subject.NeckBaseGirth, subject.ScyeDepth).Refuse(
			"bodice: the neck base girth of %s brings the neck down to the bust line of a scye "+
				"depth of %s: measure both again",
			"Oberteil: der Halsansatzumfang von %s bringt den Hals bis auf die Brustlinie einer "+
				"Armlochtiefe von %s: messen Sie beide noch einmal",
			construct.Length(f.NeckBase), construct.Length(f.ScyeDepth))
	}
	if back.tip.Y()-f.bustLine < 90 {
		return construct.About(subject.ScyeDepth, subject.ShoulderLength).Refuse(
			"bodice: the scye depth of %s leaves no height for the armhole below a "+
				"shoulder length of %s: measure both again",
			"Oberteil: die Armlochtiefe von %s lässt unter einer Schulterlänge von %s keine Höhe "+
				"für das Armloch: messen Sie beide noch einmal", construct.Length(f.ScyeDepth),
			construct.Length(f.Shoulder))
	}
	return nil
}
