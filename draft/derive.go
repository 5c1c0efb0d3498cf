package draft

import (
	"fmt"
	"math"
	"slices"

	"ellwand/draft/construct"
)

// complete adds the measurements that are needed and were not given, as the
// women's table has them for a girth that was (see source and table.at). It
// refuses a body without the girths that nothing can stand in for.
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
		value, rule, err := derive(full, name)
		if err != nil {
			return nil, nil, err
		}
		full[name] = value
		derived = append(derived, Derivation{name, value, rule})
	}
	return full, derived, nil
}

// derive finds a measurement from the others.
func derive(body Body, name Measurement) (value float64, rule construct.Sentence, err error) {
	if inside, given := body[InsideLegLength]; given && name == OutsideLegLength {
		return inside + body[BodyRise], construct.Say("the inside leg length and the body rise"), nil
	}
	if name == HipGirth {
		if _, given := body[BustGirth]; !given {
			return deriveFrom(body, name, WaistGirth)
		}
		// A body is as full below as the fuller of its waist and bust has it.
		byBust, rule, err := deriveFrom(body, name, BustGirth)
		byWaist, ruleByWaist, errByWaist := deriveFrom(body, name, WaistGirth)
		if errByWaist == nil && byWaist > byBust {
			return byWaist, ruleByWaist, nil
		}
		return byBust, rule, err
	}
	return deriveFrom(body, name, source(body, name))
}

// source is the girth that a measurement is derived from: below the waist the
// hip girth, above it the bust girth.
func source(body Body, name Measurement) Measurement {
	switch name {
	case WaistToHip, BodyRise, OutsideLegLength:
		if _, given := body[HipGirth]; given {
			return HipGirth
		}
	}
	return BustGirth
}

func deriveFrom(body Body, name, girth Measurement) (float64, construct.Sentence, error) {
	known, given := body[girth]
	if !given {
		return 0, construct.Sentence{}, fmt.Errorf("the %s is missing: measure it, or give the %s to derive it from", name, girth)
	}
	value, ok := tables()["women"].at(name, girth, known)
	if !ok {
		return 0, construct.Sentence{}, fmt.Errorf("the %s is missing and cannot be derived: measure it", name)
	}
	return math.Round(value), construct.Say("as the women's table has it for a %s of %s", girth, construct.Length(known)), nil
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
	if r.Bodice != nil && r.Bodice.BelowWaist > 0 {
		add(HipGirth, WaistToHip)
	}
	if r.Sleeve != nil {
		add(ShoulderToWrist, UpperArmGirth, WristGirth)
	}
	if r.Skirt != nil {
		add(WaistGirth, HipGirth, WaistToHip)
	}
	if r.Trousers != nil {
		add(WaistGirth, HipGirth, WaistToHip, BodyRise, OutsideLegLength)
	}
	if r.StraightCut != nil {
		add(straightCutNeeds(r.StraightCut.Shape)...)
	}
	for _, p := range r.Parts {
		add(partNeeds(p)...)
	}
	return names
}
