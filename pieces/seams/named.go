package seams

// Every stands for every seam that is not named itself.
var Every = Name{role: everyRole}

// Seams that have no side.
var (
	Shoulder      = Name{role: shoulderRole}
	SideSeam      = Name{role: sideRole}
	Waist         = Name{role: waistRole}
	Underarm      = Name{role: underarmRole}
	Wrist         = Name{role: wristRole}
	CentreFront   = Name{role: centreFrontRole}
	CentreBack    = Name{role: centreBackRole}
	Centre        = Name{role: centreRole} // the centre line of what has neither front nor back
	Armhole       = Name{role: armholeRole}
	SleeveHead    = Name{role: sleeveHeadRole}
	Neck          = Name{role: neckRole}
	CollarEdge    = Name{role: collarEdgeRole}
	CuffEdge      = Name{role: cuffEdgeRole}
	Join          = Name{role: joinRole}
	FacingEdge    = Name{role: facingEdgeRole}
	CasingEdge    = Name{role: casingEdgeRole}
	RawEdge       = Name{role: rawEdgeRole} // cut, and left so
	WristHem      = Name{role: wristHemRole}
	SkirtHem      = Name{role: skirtHemRole}
	TrouserHem    = Name{role: trouserHemRole}
	BodyHem       = Name{role: bodyHemRole}
	NarrowHem     = Name{role: narrowHemRole}
	PocketHem     = Name{role: pocketHemRole}
	YokeSeam      = Name{role: yokeSeamRole}
	PrincessSeam  = Name{role: princessSeamRole}
	Crotch        = Name{role: crotchRole}
	InsideLeg     = Name{role: insideLegRole}
	OutsideLeg    = Name{role: outsideLegRole}
	Edge          = Name{role: edgeRole} // an edge that is neatened, not sewn to another
	End           = Name{role: endRole}  // the end of a band
	Top           = Name{role: topRole}
	Bottom        = Name{role: bottomRole}
	Left          = Name{role: leftRole} // of a rectangle
	Right         = Name{role: rightRole}
	BottomLeft    = Name{role: bottomLeftRole}
	BottomRight   = Name{role: bottomRightRole}
	PointLeft     = Name{role: pointLeftRole}
	PointRight    = Name{role: pointRightRole}
	CornerLevel   = Name{role: cornerLevelRole}
	CornerUpright = Name{role: cornerUprightRole}
	Hollow        = Name{role: hollowRole} // of an apron, from the bib to the side
	Hem           = Name{role: hemRole}
)

// Seams of a side.
var (
	FrontUnderarm      = Name{role: underarmRole, side: OnFront}
	BackUnderarm       = Name{role: underarmRole, side: OnBack}
	FrontSeam          = Name{role: lengthwiseSeamRole, side: OnFront}
	BackSeam           = Name{role: lengthwiseSeamRole, side: OnBack}
	FrontEdge          = Name{role: edgeRole, side: OnFront}
	LeftSide           = Name{role: sideRole, side: OnLeft}
	RightSide          = Name{role: sideRole, side: OnRight}
	ExtensionNeck      = Name{role: neckRole, side: OnExtension}
	FacingNeck         = Name{role: neckRole, side: OnFacing}
	ExtensionWaist     = Name{role: waistRole, side: OnExtension}
	FacingWaist        = Name{role: waistRole, side: OnFacing}
	FacingEnd          = Name{role: endRole, side: OnFacing}
	FlyWaist           = Name{role: waistRole, side: OnFly}
	FlyEdge            = Name{role: edgeRole, side: OnFly}
	VentTop            = Name{role: topRole, side: OnVent}
	VentEdge           = Name{role: edgeRole, side: OnVent}
	FrontCollarEdge    = Name{role: collarEdgeRole, side: OnFront}
	OuterCollarEdge    = Name{role: collarEdgeRole, side: OnOuter}
	UpperCollarEdge    = Name{role: collarEdgeRole, side: OnUpper}
	LowerCollarEdge    = Name{role: collarEdgeRole, side: OnLower}
	ButtonCuffEdge     = Name{role: cuffEdgeRole, side: OnButton}
	ButtonholeCuffEdge = Name{role: cuffEdgeRole, side: OnButtonhole}
	LowerCuffEdge      = Name{role: cuffEdgeRole, side: OnLower}
	OuterCuffEdge      = Name{role: cuffEdgeRole, side: OnOuter}
	SlitCuffEdge       = Name{role: cuffEdgeRole, side: OnSlit}
	UpperWrist         = Name{role: wristRole, side: OnUpper}
	LowerWrist         = Name{role: wristRole, side: OnLower}
	UpperJoin          = Name{role: joinRole, side: OnUpper}
	LowerJoin          = Name{role: joinRole, side: OnLower}
	LeftRawEdge        = Name{role: rawEdgeRole, side: OnLeft}
	RightRawEdge       = Name{role: rawEdgeRole, side: OnRight}
	LeftNarrowHem      = Name{role: narrowHemRole, side: OnLeft}
	RightNarrowHem     = Name{role: narrowHemRole, side: OnRight}
	SideNarrowHem      = Name{role: narrowHemRole, side: OnSide}
	OtherNarrowHem     = Name{role: narrowHemRole, side: OnOther}
	PocketSide         = Name{role: sideRole, side: OnPocket}
	PocketTop          = Name{role: topRole, side: OnPocket}
	PocketEdge         = Name{role: edgeRole, side: OnPocket}
	LowerEdge          = Name{role: edgeRole, side: OnLower}
	UpperEdge          = Name{role: edgeRole, side: OnUpper}
	BuckleEnd          = Name{role: endRole, side: OnBuckle}
	OverlapEnd         = Name{role: endRole, side: OnOverlap}
	RightCornerLevel   = Name{role: cornerLevelRole, side: OnRight}
	RightCornerUpright = Name{role: cornerUprightRole, side: OnRight}
	LeftCornerLevel    = Name{role: cornerLevelRole, side: OnLeft}
	LeftCornerUpright  = Name{role: cornerUprightRole, side: OnLeft}
)

// named lists every seam above, for Called.
var named = []Name{
	Every,
	Shoulder, SideSeam, Waist, Underarm, Wrist, CentreFront, CentreBack, Centre, Armhole, SleeveHead,
	Neck, CollarEdge, CuffEdge, Join, FacingEdge, CasingEdge, RawEdge, WristHem, SkirtHem, TrouserHem,
	BodyHem, NarrowHem, PocketHem, YokeSeam, PrincessSeam, Crotch, InsideLeg, OutsideLeg, Edge, End,
	Top, Bottom, Left, Right, BottomLeft, BottomRight, PointLeft, PointRight, CornerLevel,
	CornerUpright, Hollow, Hem, FrontUnderarm, BackUnderarm, FrontSeam, BackSeam, FrontEdge, LeftSide,
	RightSide, ExtensionNeck, FacingNeck, ExtensionWaist, FacingWaist, FacingEnd, FlyWaist, FlyEdge,
	VentTop, VentEdge, FrontCollarEdge, OuterCollarEdge, UpperCollarEdge, LowerCollarEdge,
	ButtonCuffEdge, ButtonholeCuffEdge, LowerCuffEdge, OuterCuffEdge, SlitCuffEdge, UpperWrist,
	LowerWrist, UpperJoin, LowerJoin, LeftRawEdge, RightRawEdge, LeftNarrowHem, RightNarrowHem,
	SideNarrowHem, OtherNarrowHem, PocketSide, PocketTop, PocketEdge, LowerEdge, UpperEdge, BuckleEnd,
	OverlapEnd, RightCornerLevel, RightCornerUpright, LeftCornerLevel, LeftCornerUpright,
}
