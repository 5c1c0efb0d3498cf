package app

import (
	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/purchase"
	"ellwand/pieces/measure"
	"fmt"
)

// Converted is a known amount of cloth in another width.
type Converted struct {
	Request purchase.ConversionRequest
	purchase.Conversion
	// Buy is the length rounded up to what the shop sells, mm, but no more than
	// is known to be enough.
	Buy float64
}

// Convert says how much cloth of another width to buy. Step is what the shop
// rounds up to, mm; 0 takes the usual one of those who count in the unit.
func Convert(request purchase.ConversionRequest, unit measure.Unit, step float64) (Converted, error) {
	if step == 0 {
		step = job.UsualStep(unit)
	}
	found, err := purchase.Convert(request)
	if err != nil {
		return Converted{}, err
	}
	out := Converted{Request: request, Conversion: found, Buy: request.Purchase(found, step)}
	if err := found.Proven(request, out.Buy, step); err != nil {
		return Converted{}, failure.Of(fmt.Errorf("a conversion is wrong and is not shown: %w", err))
	}
	return out, nil
}
