package sleeve

import (
	"ellwand/draft/construct"
	"ellwand/pieces"
)

// Measures that a sleeve is drafted from.
type Measures struct {
	// FrontArmhole and BackArmhole are the seams of the armhole from the underarm
	// to the shoulder, darts closed, on pieces whose centre line is on the left.
	FrontArmhole, BackArmhole pieces.Path
	// FrontNotch and BackNotch are the distances of the armhole's notches
	// from the underarm.
	FrontNotch, BackNotch float64
	// ShoulderToWrist is the length of the arm, UpperArm its girth.
	ShoulderToWrist, UpperArm float64
}

// Block is a sleeve as drafted.
type Block struct {
	// Piece is the sleeve, or the top sleeve of two pieces; Pieces are all.
	Piece  pieces.Piece
	Pieces []pieces.Piece
	Sheet  construct.Sheet
	// HeadHeight, BicepLine and WristWidth as drafted; Head is the length of
	// the sleeve head's seam, FrontHead that of its front half.
	HeadHeight, BicepLine, WristWidth, Head, FrontHead float64
	// Spread is by how much the bicep line is longer for the gathers of the head.
	Spread float64
	// Beside is how far the head lies beside the armhole under the arm; nothing of a cap,
	// which begins above.
	Beside Beside
	// IsCap says that it covers the shoulder only: its head begins at the notches of
	// the armhole, and it has no seam under the arm.
	IsCap bool
	// Under is the under sleeve, of two pieces; nil of one.
	Under *pieces.Piece
}

// leastUnderarm is the shortest underarm seam, in mm [source.CommonPractice].
const leastUnderarm = 30

// traits are what sets a style apart.
type traits struct {
	word  string // in a job file
	means string // what the word leaves open
	norm  Norm
	// draw draws the sleeve below its head.
	draw func(d drafting, sheet construct.Sheet, h head, ends ends) (Block, error)
	// isCap: it covers the shoulder only. isUpright: it is as wide at the lower edge
	// as on the bicep line before it is folded. hasPlacket: it is slit above a cuff.
	isCap, isUpright, hasPlacket bool
}

// drafting is one sleeve in the making.
type drafting struct {
	Measures
	Options
	traits
	// spread is what the gathers of the head add to its width.
	spread float64
	// height and length with the rise of the gathers, and that rise.
	height, length, rise float64
}
