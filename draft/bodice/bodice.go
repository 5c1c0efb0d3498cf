package bodice

import (
	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// Block is a bodice as drafted.
type Block struct {
	// Front and Back are whole, as the other blocks measure them.
	Front, Back pieces.Piece
	// Pieces are what is cut: front and back, or their panels and yoke.
	Pieces []pieces.Piece
	// Sheets are the drafts of the back and the front, step by step.
	Sheets []construct.Sheet
	// BustEase and WaistEase are the eases drafted with; BustWidth is the
	// width of front and back together on the bust line: half the garment.
	BustEase, WaistEase, BustWidth float64
	// Fitted says that the waist seam was drawn to the waist girth.
	Fitted bool
	// WaistWidth and HipWidth are the widths all round, darts closed, of a
	// bodice that goes on below the waist; 0 for one that ends there.
	WaistWidth, HipWidth float64
}

// Draft drafts the bodice. The error is a sentence that names the measurement
// that cannot be.
func Draft(m Measures, o Options) (Block, error) {
	if o.Princess != NoPrincess && o.Yoke != 0 {
		return Block{}, construct.About(subject.Princess, subject.Yoke).Refuse(
			"bodice: a back with a princess seam has no yoke; leave out one of them")
	}
	if err := o.checkProportional(); err != nil {
		return Block{}, err
	}
	o = o.settled()
	f, err := reckon(m, o)
	if err != nil {
		return Block{}, err
	}
	backSheet, frontSheet := construct.Sheet{Piece: role.BackBodice.String()}, construct.Sheet{Piece: role.FrontBodice.String()}
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
func (f figures) cut(backSheet, frontSheet *construct.Sheet, o Options, front frontUpper, back backUpper, w waists, whole Block) ([]pieces.Piece, error) {
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
	if err := checkAcross("across back width", subject.AcrossBackWidth, f.acrossBack, back.tip.X(), f.AcrossBack, f.Shoulder); err != nil {
		return err
	}
	if err := checkAcross("across front width", subject.AcrossFrontWidth, f.acrossFront, front.tip.X(), f.AcrossFront, f.Shoulder); err != nil {
		return err
	}
	if f.bustDart > 0 && front.bustPoint.X() > front.openAcross.X()-15 {
		return construct.About(subject.AcrossFrontWidth, subject.BustGirth).Refuse(
			"bodice: the across front width of %s is too narrow for the bust girth of %s: "+
				"measure both again", construct.Length(f.AcrossFront), construct.Length(f.Bust))
	}
	if rise := front.centreNeck.Y() - f.bustLine; rise < 30 {
		return construct.About(subject.NeckBaseGirth, subject.ScyeDepth).Refuse(
			"bodice: the neck base girth of %s brings the neck down to the bust line of a scye "+
				"depth of %s: measure both again", construct.Length(f.NeckBase), construct.Length(f.ScyeDepth))
	}
	if back.tip.Y()-f.bustLine < 90 {
		return construct.About(subject.ScyeDepth, subject.ShoulderLength).Refuse(
			"bodice: the scye depth of %s leaves no height for the armhole below a "+
				"shoulder length of %s: measure both again", construct.Length(f.ScyeDepth), construct.Length(f.Shoulder))
	}
	return nil
}

// waists are the waist seams and side seams of both pieces.
type waists struct {
	front, back         waistSeam
	frontSide, backSide pieces.Path
	// waist and hip are the widths all round of a bodice that goes on below
	// the waist.
	waist, hip float64
}

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
	frontDarts, okFront := placeDarts(f.dartWidths(s.front), f.bustPoint, frontWidth-s.taper, func(i int, middle float64) float64 {
		return f.frontApex(i, middle, frontWidth)
	})
	backDarts, okBack := placeDarts(f.dartWidths(s.back), f.acrossBack/2, backWidth-s.taper, func(i int, _ float64) float64 {
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

func (f figures) noRoomForDarts() error {
	return construct.About(subject.WaistGirth, subject.BustGirth).Refuse(
		"bodice: the waist girth of %s leaves no room for its darts on a bust girth of %s: "+
			"measure both again, or let the waist hang straight", construct.Length(f.Waist), construct.Length(f.Bust))
}

func (f figures) taperedWaists(front, back, taper float64) waists {
	w := waists{frontSide: f.side(front, taper), backSide: f.side(back, taper)}
	w.front, w.back = drawWaist(w.frontSide, nil), drawWaist(w.backSide, nil)
	return w
}

// edges of the waist from the centre line to the side: "waist", or with darts
// "waist 1", "waist mouth 1", "waist 2" and so on.
func (w waistSeam) edges() ([]pieces.Edge, []pieces.Dart) {
	if w.below != nil {
		return w.below.edges()
	}
	if len(w.darts) == 0 {
		return []pieces.Edge{construct.Edge(seams.Waist, w.stretches[0])}, nil
	}
	var edges []pieces.Edge
	darts := make([]pieces.Dart, len(w.darts))
	for i, d := range w.darts {
		d.Name, d.Mouth = seams.Waist.Dart(i+1), seams.Waist.Mouth(i+1)
		darts[i] = d
		edges = append(edges,
			construct.Edge(seams.Waist.Stretch(i+1), w.stretches[i]),
			construct.Edge(d.Mouth, w.mouths[i]))
	}
	last := len(w.stretches)
	return append(edges, construct.Edge(seams.Waist.Stretch(last), w.stretches[last-1])), darts
}
