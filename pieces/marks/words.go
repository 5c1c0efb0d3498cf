package marks

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
	sideBySidePoint
	alikePoint
	sewLine
	internalLine
	cutoutLine
	stripeLine
	plaidLine
	drillHolePoint
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
	sideBySidePoint:     "side by side",
	alikePoint:          "copies",
	sewLine:             "sew line",
	internalLine:        "internal line",
	cutoutLine:          "cut-out",
	stripeLine:          "stripe line",
	plaidLine:           "plaid line",
	drillHolePoint:      "drill hole",
}

// briefWords are those of a point among others of its seam, where they are
// shorter.
var briefWords = [pointCount]string{
	princessUpperPoint: "upper",
	princessLowerPoint: "lower",
	princessWaistPoint: "waist",
}
