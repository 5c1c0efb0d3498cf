package trousers

import (
	"ellwand/draft/construct"
	"ellwand/pieces"
)

// Block is a pair of trousers as drafted.
type Block struct {
	Pieces []pieces.Piece
	Sheets []construct.Sheet
	// Waist is the length of the waist seam all round, darts closed;
	// WaistEase what it has over the waist girth.
	Waist, WaistEase float64
	// Hip is the width all round on the hip line, Hem that of one leg.
	Hip, Hem float64
	// Crotch is the length of the crotch seam from the centre front waist
	// through the legs to the centre back waist.
	Crotch float64
	// Elastic is the length that is cut for an elastic waist; 0 without.
	Elastic float64
	// Pairings are the lengths that must agree.
	Pairings []construct.Pairing
	Warnings []construct.Sentence
}
