package quote

import (
	"errors"
	"fmt"

	"ellwand/fabric"
)

// Offer is a cloth as a shop offers it.
type Offer struct {
	// Name tells the offers of one cloth apart: "Harbour Mills crepe".
	Name  string
	Cloth fabric.Cloth
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
}

// Check reports what is wrong with the offer itself.
func (o Offer) Check() error {
	var faults []error
	fault := func(format string, args ...any) {
		faults = append(faults, fmt.Errorf("offer %q: "+format, append([]any{o.Name}, args...)...))
	}
	if o.Price == nil && o.Remnant == nil {
		fault("it has no price; give the price of a metre or yard, or of a remnant")
	}
	if o.Price != nil && o.Price.Money < 0 || o.Remnant != nil && o.Remnant.Price < 0 {
		fault("its price is negative")
	}
	if o.Remnant != nil && o.Remnant.Length <= 0 {
		fault("the length of its remnant must be above 0")
	}
	return errors.Join(faults...)
}
