package found

import "github.com/paulmach/orb"

// Reference is what is known in a photo; one of its fields is given, or none.
type Reference struct {
	// Square is the side of a square of the ground, mm.
	Square float64
	// Sheet is the width and height of sheets, mm.
	Sheet [2]float64
	// Distances between places of the photo: two, or none.
	Distances []Distance
}

// Distance between two places of a photo, which are pixels from its upper left corner,
// y down; its length is mm.
type Distance struct {
	From, To orb.Point
	Length   float64
}
