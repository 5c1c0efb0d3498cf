package draft

import (
	"math"
	"slices"

	"ellwand/draft/bodice"
	"ellwand/draft/construct"
	"ellwand/draft/sleeve"
	"ellwand/pieces/language"
)

// complete adds the measurements that are needed and were not given, as a size
// table has them for a body of this girth and height (see source and
// table.at). It refuses a body without the girths that nothing can stand in
// for.
func (r Request) complete() (Body, []Derivation, error) {
	full := r.Body.With(nil)
	var derived []Derivation
	for _, name := range r.needs() {
		if _, given := full[name]; given {
			continue
		}
		if name == BustGirth || name == WaistGirth {
			return nil, nil, construct.About(SubjectOf(name)).Refuse(
				"the %s is missing: measure it, or name a size of a table",
				"%s fehlt: messen Sie, oder wählen Sie eine Größe aus einer Tabelle", name)
		}
		value, rule, err := r.derive(full, name)
		if err != nil {
			return nil, nil, err
		}
		full[name] = value
		derived = append(derived, Derivation{name, value, rule})
	}
	return full, derived, nil
}

// derive finds a measurement from the others.
func (r Request) derive(body Body, name Measurement) (value float64, rule construct.Sentence, err error) {
	if inside, given := body[InsideLegLength]; given && name == OutsideLegLength {
		return inside + body[BodyRise], construct.Both("the inside leg length and the body rise",
			"innere Beinlänge und Sitzhöhe zusammen"), nil
	}
	if name == HipGirth {
		if _, given := body[BustGirth]; !given {
			return r.deriveFrom(body, name, WaistGirth)
		}
		// A body is as full below as the fuller of its waist and bust has it.
		byBust, rule, err := r.deriveFrom(body, name, BustGirth)
		byWaist, ruleByWaist, errByWaist := r.deriveFrom(body, name, WaistGirth)
		if errByWaist == nil && byWaist > byBust {
			return byWaist, ruleByWaist, nil
		}
		return byBust, rule, err
	}
	return r.deriveFrom(body, name, girthFor(body, name))
}

// girthFor is the girth that a measurement is derived from: below the waist the
// hip girth, above it the bust girth.
func girthFor(body Body, name Measurement) Measurement {
	switch name {
	case WaistToHip, BodyRise, OutsideLegLength:
		if _, given := body[HipGirth]; given {
			return HipGirth
		}
	}
	return BustGirth
}

// upright are the measurements that run along the height of the body or the
// length of its arm, and so go with its height.
var upright = []Measurement{BackNeckPointToWaist, ScyeDepth, ShoulderToWrist, WaistToHip, BodyRise, OutsideLegLength}

// deriveFrom reads a measurement from the table of the request for a girth.
// What runs along the body goes with its height, where that is known: as the
// row of the table has it for that height, or in proportion to the height that
// the whole table is for [source.CommonPractice].
func (r Request) deriveFrom(body Body, name, girth Measurement) (float64, construct.Sentence, error) {
	table, whose := r.derivingTable()
	height, tall := body[Height]
	tall = tall && slices.Contains(upright, name)
	if value, ok := table.at(name, Height, height); ok && tall {
		return math.Round(value), construct.Both("as the %s table has it for a height of %s",
			"wie die %s sie für eine Körpergröße von %s hat", whose,
			construct.Length(height)), nil
	}
	known, given := body[girth]
	if !given {
		return 0, construct.Sentence{}, construct.About(SubjectOf(name)).Refuse("the %s is missing: measure it, or "+
			"give the %s to derive it from", "%s fehlt: messen Sie, oder geben Sie zum Errechnen %s an", name, girth)
	}
	value, ok := table.at(name, girth, known)
	if !ok {
		return 0, construct.Sentence{}, construct.About(SubjectOf(name)).Refuse("the %s is missing and cannot be "+
			"derived: measure it", "%s fehlt und lässt sich nicht errechnen: messen Sie", name)
	}
	if tall && table.height > 0 {
		return math.Round(value * height / table.height), construct.Both("as the %s table has it for a %s of %s, in "+
			"proportion to a height of %s, the table's being %s",
			"wie die %s für %s %s, im Verhältnis zur Körpergröße von %s; die Tabelle gilt für %s",
			whose, girth, construct.Length(known),
			construct.Length(height), construct.Length(table.height)), nil
	}
	return math.Round(value), construct.Both("as the %s table has it for a %s of %s",
		"wie die %s für %s %s", whose, girth,
		construct.Length(known)), nil
}

// derivingTable is the table that measurements are derived from, and whose it
// is. That of misses, which has girths only, is women's too.
func (r Request) derivingTable() (table, language.Sentence) {
	name := r.Table
	if _, own := whoseTables[name]; !own {
		name = "women"
	}
	return tables()[name], WhoseTable(name)
}

// whoseTables are the tables of others than women.
var whoseTables = map[string]language.Sentence{
	"men": language.Say("men's", "Tabelle der Herren"), "children": language.Say("children's", "Tabelle der Kinder"),
}

// WhoseTable says whose a size table is: "men's". That of misses, which has girths only,
// is women's too.
func WhoseTable(name string) language.Sentence {
	if whose, own := whoseTables[name]; own {
		return whose
	}
	return language.Say("women's", "Tabelle der Damen")
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
		add(BustGirth, WaistGirth, NeckBaseGirth, BackNeckPointToWaist)
	}
	if r.Bodice != nil && r.Bodice.Method == bodice.Measured {
		add(ShoulderLength, AcrossBackWidth, AcrossFrontWidth, ScyeDepth)
	}
	if r.Bodice != nil && r.Bodice.BelowWaist > 0 {
		add(HipGirth, WaistToHip)
	}
	if r.Sleeve != nil {
		add(ShoulderToWrist, UpperArmGirth)
	}
	if r.Sleeve != nil && r.Sleeve.Style != sleeve.Cap { // a cap ends above the arm
		add(WristGirth)
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
