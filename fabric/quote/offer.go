package quote

import (
	"ellwand/fabric/cloth"
)

// Offer is a cloth as a shop offers it.
type Offer struct {
	// Name tells the offers of one cloth apart: "Harbour Mills crepe".
	Name  string
	Cloth cloth.Cloth
	// Price of a length from the bolt; nil when there is only a remnant.
	Price *Price
	// Remnant is a piece at a fixed price that the shop also has; nil for
	// none.
	Remnant *Remnant
}

// Remnant is a length of cloth that is sold whole.
type Remnant struct {
	Length float64 // mm
	Price  Money
	// Straighten is what straightening its ends takes where the cloth does not
	// say, mm.
	Straighten float64
}
