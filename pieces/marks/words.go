package marks

import "ellwand/pieces/seams"

// point is what is marked, whatever its side.
type point uint8

const (
	noPoint point = iota
	armholePoint
	shoulderPoint
	collarShoulderPoint
	underarmPoint
	elbowPoint
	placketPoint
	pleatPoint
	slitTopPoint
	pocketTopPoint
	pocketEndPoint
	hipPoint
	zipEndPoint
	panelMiddlePoint
	centreFrontPoint
	centreBackPoint
	outsideKneePoint
	insideKneePoint
	openBelowPoint
	openAbovePoint
	yokePoint
	princessUpperPoint
	princessLowerPoint
	princessWaistPoint
	bustPoint
	bustLine
	waistLine
	hipLine
	kneeLine
	elbowLine
	bicepLine
	waistGirthLine
	foldLine
	facingFoldLine
	casingFoldLine
	ventFoldLine
	leftFoldLine
	rightFoldLine
	pleatFoldLine
	pleatLayLine
	placketSlitLine
	headSlitLine
	overlapLine
	buttonholeLine
	buttonPoint
	patchPocketLine
	pointCount
)

// pointWords are the points in words: the one place where they stand.
var pointWords = [pointCount]string{
	armholePoint:        "armhole",
	shoulderPoint:       "shoulder",
	collarShoulderPoint: "collar shoulder",
	underarmPoint:       "underarm",
	elbowPoint:          "elbow",
	placketPoint:        "placket",
	pleatPoint:          "pleat",
	slitTopPoint:        "top of the slit",
	pocketTopPoint:      "pocket top",
	pocketEndPoint:      "pocket end",
	hipPoint:            "hip",
	zipEndPoint:         "zip end",
	panelMiddlePoint:    "middle of the panel",
	centreFrontPoint:    "centre front",
	centreBackPoint:     "centre back",
	outsideKneePoint:    "outside knee",
	insideKneePoint:     "inside knee",
	openBelowPoint:      "open below",
	openAbovePoint:      "open above",
	yokePoint:           "yoke",
	princessUpperPoint:  "princess upper",
	princessLowerPoint:  "princess lower",
	princessWaistPoint:  "princess waist",
	bustPoint:           "bust point",
	bustLine:            "bust line",
	waistLine:           "waist line",
	hipLine:             "hip line",
	kneeLine:            "knee line",
	elbowLine:           "elbow line",
	bicepLine:           "bicep line",
	waistGirthLine:      "waist girth",
	foldLine:            "fold line",
	facingFoldLine:      "fold line of the facing",
	casingFoldLine:      "fold line of the casing",
	ventFoldLine:        "fold line of the vent",
	leftFoldLine:        "left fold",
	rightFoldLine:       "right fold",
	pleatFoldLine:       "fold",
	pleatLayLine:        "lay the next fold to here",
	placketSlitLine:     "slit for the placket",
	headSlitLine:        "slit for the head",
	overlapLine:         "overlap",
	buttonholeLine:      "buttonhole",
	buttonPoint:         "button",
	patchPocketLine:     "patch pocket",
}

// briefWords are those of a point among others of its seam, where they are
// shorter.
var briefWords = [pointCount]string{
	princessUpperPoint: "upper",
	princessLowerPoint: "lower",
	princessWaistPoint: "waist",
}

// Match points: notches that meet.
var (
	None           Name // a notch that meets no other
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
)

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
