package draft

import (
	"fmt"
	"math"
	"slices"

	"ellwand/draft/construct"
)

// complete adds the measurements that are needed and were not given, as the
// women's table has them for this bust girth (see table.at). It refuses a body
// without the girths that nothing can stand in for.
func complete(body Body, needed []Measurement) (Body, []Derivation, error) {
	full := body.With(nil)
	var derived []Derivation
	for _, name := range needed {
		if _, given := full[name]; given {
			continue
		}
		if name == BustGirth || name == WaistGirth {
			return nil, nil, fmt.Errorf("the %s is missing: measure it, or name a size of a table", name)
		}
		if _, given := full[BustGirth]; !given {
			return nil, nil, fmt.Errorf("the %s is missing: measure it, or give the bust girth to derive it from", name)
		}
		value, ok := tables()["women"].at(name, full[BustGirth])
		if !ok {
			return nil, nil, fmt.Errorf("the %s is missing and cannot be derived: measure it", name)
		}
		value = math.Round(value)
		full[name] = value
		derived = append(derived, Derivation{name, value, fmt.Sprintf("as the women's table has it for a bust girth of %s", construct.Cm(full[BustGirth]))})
	}
	return full, derived, nil
}

// needs lists the measurements that a request is drafted from, girths first.
func (r Request) needs() []Measurement {
	var names []Measurement
	add := func(more ...Measurement) {
		for _, name := range more {
			if !slices.Contains(names, name) {
				names = append(names, name)
			}
		}
	}
	if r.Bodice != nil {
		add(BustGirth, WaistGirth, NeckBaseGirth, BackNeckPointToWaist, ShoulderLength, AcrossBackWidth, AcrossFrontWidth, ScyeDepth)
	}
	if r.Sleeve != nil {
		add(ShoulderToWrist, UpperArmGirth, WristGirth)
	}
	for _, p := range r.Parts {
		add(partNeeds(p)...)
	}
	return names
}
