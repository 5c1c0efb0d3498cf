package job

import (
	"ellwand/cmd/ellwand/strict"
	"ellwand/draft/skirt"
	"ellwand/draft/straightcut"
	"ellwand/draft/trousers"
	"ellwand/pieces/language"
)

// Skirt asks for a skirt from the waist down.
type Skirt struct {
	Shape      Choice[skirt.Shape] `yaml:"shape" jsonschema_description:"its shape; straight if not given"`
	Length     Measure             `yaml:"length" jsonschema_description:"from the natural waist to the hem; 60 cm if not given"`
	WaistEase  Measure             `yaml:"waist_ease" jsonschema_description:"ease at the waist, all round; 1.5 cm if not given"`
	HipEase    Measure             `yaml:"hip_ease" jsonschema_description:"ease at the hip, all round; 4 cm if not given"`
	Vent       YesNo               `yaml:"vent" jsonschema_description:"a straight skirt's vent at the centre back"`
	Back       Choice[skirtBack]   `yaml:"back" jsonschema_description:"the centre back of a straight or a-line skirt: seam (two backs, a pair) or fold; seam if not given"`
	Darts      Choice[dartsGo]     `yaml:"darts" jsonschema_description:"the darts of an a-line skirt: sewn at the waist, or closed into the hem, which flares for it; waist if not given"`
	Flare      Measure             `yaml:"flare" jsonschema_description:"how far each side seam of an a-line or gored skirt runs out from hip to hem; a ninth of that length if not given, or nothing with darts: hem"`
	Gores      Count               `yaml:"gores" jsonschema_description:"4, 6 or 8; 6 if not given"`
	Tiers      Count               `yaml:"tiers" jsonschema_description:"how many tiers; 3 if not given"`
	Fullness   Text                `yaml:"fullness" jsonschema_description:"how many times its finished length each tier is gathered from; 1.5 if not given"`
	Pleats     Count               `yaml:"pleats" jsonschema_description:"how many pleats all round; 4 cm wide ones (box pleats 8) if not given"`
	PanelWidth Measure             `yaml:"panel_width" jsonschema_description:"the most that a panel may be wide, without its allowances; wider ones are split; 1 m for tiers and pleats if not given"`
}

// Trousers asks for trousers or shorts.
type Trousers struct {
	Length    Measure                  `yaml:"length" jsonschema_description:"from the natural waist along the outside leg to the hem; to 2 cm above the floor if not given; shorts are short trousers"`
	WaistEase Measure                  `yaml:"waist_ease" jsonschema_description:"ease at the waist, all round; 1.5 cm if not given"`
	HipEase   Measure                  `yaml:"hip_ease" jsonschema_description:"ease at the hip, all round; 6 cm if not given"`
	HemWidth  Measure                  `yaml:"hem_width" jsonschema_description:"one leg at the hem, all round"`
	Opening   Choice[trousers.Opening] `yaml:"opening" jsonschema_description:"where they open: fly, side zip, or not at all: an elastic waist passes over the hips and has no darts; fly if not given"`
	Elastic   Measure                  `yaml:"elastic" jsonschema_description:"width of the elastic of an elastic waist, for which the casing is cut on; 2.5 cm if not given"`
	Pocket    Choice[trousers.Pocket]  `yaml:"pocket" jsonschema_description:"none, side (a bag in each outside leg seam) or patch (one on each back); none if not given"`
}

// StraightCut asks for a garment of rectangles and simple curves.
type StraightCut struct {
	Shape  Choice[straightcut.Shape] `yaml:"shape" jsonschema:"required" jsonschema_description:"what it is"`
	Length Measure                   `yaml:"length" jsonschema_description:"finished: of a kaftan or kimono from the neck point, of a wrapper or apron from the waist, the height of a bag"`
	Ease   Measure                   `yaml:"ease" jsonschema_description:"added to the fuller of bust and hip: 30 cm in a kaftan, 20 in a kimono if not given"`
	Width  Measure                   `yaml:"width" jsonschema_description:"finished width of a wrapper, an apron or a bag"`
	Depth  Measure                   `yaml:"depth" jsonschema_description:"of a bag's bottom; 10 cm if not given"`
	Flat   YesNo                     `yaml:"flat" jsonschema_description:"a bag without a bottom"`
}

func (v values) skirt(path Path, asked *Skirt) *skirt.Options {
	if asked == nil {
		return nil
	}
	return &skirt.Options{
		Shape:  choose(v, path.Key("shape"), language.Say("the skirt's shape", "Form des Rocks"), asked.Shape),
		Length: v.optional(path.Key("length"), language.Say("the skirt length", "Rocklänge"), asked.Length),
		WaistEase: v.optional(path.Key("waist_ease"), language.Say("the waist ease",
			"Bequemlichkeit an der Taille"), asked.WaistEase),
		HipEase: v.optional(path.Key("hip_ease"), language.Say("the hip ease",
			"Bequemlichkeit an der Hüfte"), asked.HipEase),
		Vent: v.yes(path.Key("vent"), language.Say("vent", "Schlitz"), asked.Vent),
		BackOnFold: choose(v, path.Key("back"), language.Say("the skirt's back", "Hinterseite des Rocks"),
			asked.Back) == skirtFold,
		DartsIntoHem: choose(v, path.Key("darts"), language.Say("where the darts go", "wohin die Abnäher gehen"),
			asked.Darts) == toHem,
		Flare: v.optional(path.Key("flare"), language.Say("the flare", "Ausstellung"), asked.Flare),
		Gores: v.optionalCount(path.Key("gores"), language.Say("the number of gores", "Zahl der Bahnen"),
			asked.Gores),
		Tiers: v.optionalCount(path.Key("tiers"), language.Say("the number of tiers", "Zahl der Stufen"),
			asked.Tiers),
		Fullness: v.fullness(path.Key("fullness"), language.Say("skirt", "Rock"), asked.Fullness),
		Pleats: v.optionalCount(path.Key("pleats"), language.Say("the number of pleats",
			"Zahl der Falten"), asked.Pleats),
		PanelWidth: v.optional(path.Key("panel_width"), language.Say("the panel width", "Breite der Bahn"),
			asked.PanelWidth),
	}
}

func (v values) trousers(path Path, asked *Trousers) *trousers.Options {
	if asked == nil {
		return nil
	}
	return &trousers.Options{
		Length: v.optional(path.Key("length"), language.Say("the trouser length", "Hosenlänge"), asked.Length),
		WaistEase: v.optional(path.Key("waist_ease"), language.Say("the waist ease",
			"Bequemlichkeit an der Taille"), asked.WaistEase),
		HipEase: v.optional(path.Key("hip_ease"), language.Say("the hip ease", "Bequemlichkeit an der Hüfte"),
			asked.HipEase),
		HemWidth: v.optional(path.Key("hem_width"), language.Say("the hem width", "Saumweite"), asked.HemWidth),
		Opening:  choose(v, path.Key("opening"), language.Say("the opening", "Verschluss"), asked.Opening),
		Elastic:  v.optional(path.Key("elastic"), language.Say("the elastic", "Gummiband"), asked.Elastic),
		Pocket:   choose(v, path.Key("pocket"), language.Say("the pocket", "Tasche"), asked.Pocket),
	}
}

func (v values) straightCut(path Path, asked *StraightCut) *straightcut.Options {
	if asked == nil {
		return nil
	}
	if asked.Shape == "" {
		v.fault(path, strict.Missing, "straight_cut has no shape; add one of: %s",
			"dem geraden Schnitt fehlt die Form; es gibt: %s", joined(asked.Shape.Words()))
		return nil
	}
	return &straightcut.Options{
		Shape:  choose(v, path.Key("shape"), language.Say("the shape", "Form"), asked.Shape),
		Length: v.optional(path.Key("length"), language.Say("the length", "Länge"), asked.Length),
		Ease:   v.optional(path.Key("ease"), language.Say("the ease", "Bequemlichkeit"), asked.Ease),
		Width:  v.optional(path.Key("width"), language.Say("the width", "Breite"), asked.Width),
		Depth:  v.optional(path.Key("depth"), language.Say("the depth", "Höhe"), asked.Depth),
		Flat:   v.yes(path.Key("flat"), language.Say("flat", "flach"), asked.Flat),
	}
}
