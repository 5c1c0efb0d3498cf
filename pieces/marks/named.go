package marks

import "ellwand/pieces/seams"

// Marks inside a piece.
var (
	BustPoint   = Name{point: bustPoint}
	BustLine    = Name{point: bustLine}
	WaistLine   = Name{point: waistLine}
	HipLine     = Name{point: hipLine}
	KneeLine    = Name{point: kneeLine}
	ElbowLine   = Name{point: elbowLine}
	BicepLine   = Name{point: bicepLine}
	WaistGirth  = Name{point: waistGirthLine}
	FoldLine    = Name{point: foldLine}
	FacingFold  = Name{point: facingFoldLine}
	CasingFold  = Name{point: casingFoldLine}
	VentFold    = Name{point: ventFoldLine}
	LeftFold    = Name{point: leftFoldLine} // of a box pleat
	RightFold   = Name{point: rightFoldLine}
	PleatFold   = Name{point: pleatFoldLine} // of a knife pleat
	PleatLay    = Name{point: pleatLayLine}
	PlacketSlit = Name{point: placketSlitLine}
	HeadSlit    = Name{point: headSlitLine}
	Overlap     = Name{point: overlapLine}
	Buttonhole  = Name{point: buttonholeLine}
	Button      = Name{point: buttonPoint}
	PatchPocket = Name{point: patchPocketLine}
)

// Marks of patterns that came from elsewhere.
var (
	SewLine      = Name{point: sewLine} // inside a cutting line
	InternalLine = Name{point: internalLine}
	Cutout       = Name{point: cutoutLine}
	StripeLine   = Name{point: stripeLine} // lies on a stripe of the cloth
	PlaidLine    = Name{point: plaidLine}  // lies across the stripes of a check
	DrillHole    = Name{point: drillHolePoint}
)

// OfCentre is the mark of the centre line that an edge lies on; None of another edge.
func OfCentre(edge seams.Name) Name {
	switch edge.Role() {
	case seams.CentreFront:
		return CentreFront
	case seams.CentreBack:
		return CentreBack
	}
	return None
}

// Match points: notches that meet.
var (
	Armhole        = Name{point: armholePoint}
	FrontArmhole   = Armhole.On(seams.OnFront)
	BackArmhole    = Armhole.On(seams.OnBack)
	Shoulder       = Name{point: shoulderPoint}
	CollarShoulder = Name{point: collarShoulderPoint}
	Underarm       = Name{point: underarmPoint}
	Elbow          = Name{point: elbowPoint}
	FrontElbow     = Elbow.On(seams.OnFront)
	BackElbow      = Elbow.On(seams.OnBack)
	Placket        = Name{point: placketPoint}
	Pleat          = Name{point: pleatPoint}
	SlitTop        = Name{point: slitTopPoint}
	PocketTop      = Name{point: pocketTopPoint}
	PocketEnd      = Name{point: pocketEndPoint}
	Hip            = Name{point: hipPoint}
	ZipEnd         = Name{point: zipEndPoint}
	PanelMiddle    = Name{point: panelMiddlePoint}
	CentreFront    = Name{point: centreFrontPoint}
	CentreBack     = Name{point: centreBackPoint}
	OutsideKnee    = Name{point: outsideKneePoint}
	InsideKnee     = Name{point: insideKneePoint}
	OpenBelow      = Name{point: openBelowPoint} // where a seam is left open
	OpenAbove      = Name{point: openAbovePoint}
	Yoke           = Name{point: yokePoint}
	PrincessUpper  = Name{point: princessUpperPoint}
	PrincessLower  = Name{point: princessLowerPoint}
	PrincessWaist  = Name{point: princessWaistPoint}
	SideBySide     = Name{point: sideBySidePoint} // the lower edge of what hangs so, such as curtains
	Alike          = Name{point: alikePoint}      // the middle, across, of copies that lie alike on the stripes
)
