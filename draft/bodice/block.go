package bodice

import (
	"ellwand/draft/construct"
	"ellwand/pieces"
)

// Measures of the body that a bodice is drafted from.
type Measures struct {
	Bust, Waist, NeckBase, BackNeckPointToWaist, Shoulder float64
	AcrossBack, AcrossFront, ScyeDepth                    float64
	// Hip and WaistToHip are needed below the waist only.
	Hip, WaistToHip float64
}

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

// figures are the lengths that both pieces are drawn from.
type figures struct {
	Measures
	bustEase, waistEase float64
	// half is the width of front and back together on the bust line; waist
	// the length of their waist seams together, darts closed.
	half, waist float64
	// bustLine and underarm are heights above the waist line.
	bustLine, underarm float64
	// acrossBack and acrossFront are half widths with their ease.
	acrossBack, acrossFront float64
	// bustPoint is the distance of the bust point from the centre front.
	bustPoint float64
	// bustDart is the width of the bust dart, measured at the level of the
	// neck point.
	bustDart float64
	// proportional says that the widths are proportions of the bust.
	proportional bool
	// princess says that a seam takes up bust and waist darts.
	princess bool
}
