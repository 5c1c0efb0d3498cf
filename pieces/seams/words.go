package seams

// role is what a seam does, whatever its side.
type role uint8

const (
	noRole role = iota
	everyRole
	shoulderRole
	sideRole
	waistRole
	underarmRole
	wristRole
	centreFrontRole
	centreBackRole
	centreRole
	armholeRole
	sleeveHeadRole
	neckRole
	collarEdgeRole
	cuffEdgeRole
	joinRole
	facingEdgeRole
	casingEdgeRole
	rawEdgeRole
	wristHemRole
	skirtHemRole
	trouserHemRole
	bodyHemRole
	narrowHemRole
	pocketHemRole
	yokeSeamRole
	princessSeamRole
	lengthwiseSeamRole
	crotchRole
	insideLegRole
	outsideLegRole
	edgeRole
	endRole
	topRole
	bottomRole
	leftRole
	rightRole
	bottomLeftRole
	bottomRightRole
	pointLeftRole
	pointRightRole
	cornerLevelRole
	cornerUprightRole
	hollowRole
	hemRole
	roleCount
)

// roleWords are the roles in words: the one place where they stand.
var roleWords = [roleCount]string{
	everyRole:          "seams",
	shoulderRole:       "shoulder",
	sideRole:           "side",
	waistRole:          "waist",
	underarmRole:       "underarm",
	wristRole:          "wrist",
	centreFrontRole:    "centre front",
	centreBackRole:     "centre back",
	centreRole:         "centre",
	armholeRole:        "armhole",
	sleeveHeadRole:     "sleeve head",
	neckRole:           "neck",
	collarEdgeRole:     "collar edge",
	cuffEdgeRole:       "cuff edge",
	joinRole:           "join",
	facingEdgeRole:     "facing edge",
	casingEdgeRole:     "casing edge",
	rawEdgeRole:        "raw edge",
	wristHemRole:       "wrist hem",
	skirtHemRole:       "skirt hem",
	trouserHemRole:     "trouser hem",
	bodyHemRole:        "body hem",
	narrowHemRole:      "narrow hem",
	pocketHemRole:      "pocket hem",
	yokeSeamRole:       "yoke seam",
	princessSeamRole:   "princess seam",
	lengthwiseSeamRole: "seam",
	crotchRole:         "crotch",
	insideLegRole:      "inside leg",
	outsideLegRole:     "outside leg",
	edgeRole:           "edge",
	endRole:            "end",
	topRole:            "top",
	bottomRole:         "bottom",
	leftRole:           "left",
	rightRole:          "right",
	bottomLeftRole:     "bottom left",
	bottomRightRole:    "bottom right",
	pointLeftRole:      "point left",
	pointRightRole:     "point right",
	cornerLevelRole:    "corner level",
	cornerUprightRole:  "corner upright",
	hollowRole:         "hollow",
	hemRole:            "hem",
}

// Side tells seams of one role on a piece, or on a garment, apart.
type Side uint8

// The sides.
const (
	NoSide Side = iota
	OnFront
	OnBack
	OnLeft
	OnRight
	OnUpper
	OnLower
	OnOuter
	OnSide
	OnOther
	OnExtension
	OnFacing
	OnFly
	OnVent
	OnPocket
	OnSlit
	OnButton
	OnButtonhole
	OnBuckle
	OnOverlap
	sideCount
)

// sideWords are the sides in words: the one place where they stand.
var sideWords = [sideCount]string{
	OnFront:      "front",
	OnBack:       "back",
	OnLeft:       "left",
	OnRight:      "right",
	OnUpper:      "upper",
	OnLower:      "lower",
	OnOuter:      "outer",
	OnSide:       "side",
	OnOther:      "other",
	OnExtension:  "extension",
	OnFacing:     "facing",
	OnFly:        "fly",
	OnVent:       "vent",
	OnPocket:     "pocket",
	OnSlit:       "slit",
	OnButton:     "button",
	OnButtonhole: "buttonhole",
	OnBuckle:     "buckle",
	OnOverlap:    "overlap",
}

// String words the side; empty for NoSide.
func (s Side) String() string { return sideWords[s] }
