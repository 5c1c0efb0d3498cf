package job

import (
	"ellwand/draft/bodice"
	"ellwand/draft/sleeve"
	"ellwand/pieces/language"
)

// Bodice asks for a front and a back bodice.
type Bodice struct {
	Method        Choice[bodice.Method]   `yaml:"method" jsonschema_description:"measured (from all measurements) or proportional (from bust, waist and back neck point to waist; the widths are proportions of the bust); measured if not given"`
	Fit           Choice[bodice.Fit]      `yaml:"fit" jsonschema_description:"close (10 cm of ease at the bust), easy (14) or shirt (18, waist hanging straight); close if not given"`
	Dart          Choice[bodice.Shaping]  `yaml:"dart" jsonschema_description:"where the bust dart lies, or none for men and children; side if not given"`
	Princess      Choice[bodice.Princess] `yaml:"princess" jsonschema_description:"where a seam over the bust point begins that takes up the bust and waist darts; none if not given"`
	Yoke          Measure                 `yaml:"yoke" jsonschema_description:"depth of a back yoke below the back neck point; no yoke if not given"`
	Back          Choice[bodiceBack]      `yaml:"back" jsonschema_description:"the centre back: seam (two backs, a pair), fold (one back on the fold) or opening (two backs that button, each with an extension and a facing folded back); seam if not given"`
	Front         Choice[bodiceFront]     `yaml:"front" jsonschema_description:"the centre front: fold (one front on the fold) or opening (two fronts that button, each with an extension and a facing folded back); fold if not given"`
	Extension     Measure                 `yaml:"extension" jsonschema_description:"how far an opening reaches beyond the centre line, about the width of a button; 2 cm if not given"`
	NeckWider     Measure                 `yaml:"neck_wider" jsonschema_description:"how much wider the neck is on each shoulder than the base of the neck"`
	FrontLower    Measure                 `yaml:"front_neck_lower" jsonschema_description:"how much lower the neck is at the centre front"`
	BackLower     Measure                 `yaml:"back_neck_lower" jsonschema_description:"how much lower the neck is at the centre back"`
	BelowWaist    Measure                 `yaml:"below_waist" jsonschema_description:"length below the waist, for a bodice that goes on to the hip or further, with a hem; not given, it ends at the waist"`
	HipEase       Measure                 `yaml:"hip_ease" jsonschema_description:"ease at the hip, all round, below the waist; half of the bust ease if not given"`
	BustEase      Measure                 `yaml:"bust_ease" jsonschema_description:"ease at the bust, all round; that of the fit if not given"`
	WaistEase     Measure                 `yaml:"waist_ease" jsonschema_description:"ease at the waist, all round; that of the fit if not given"`
	StraightWaist YesNo                   `yaml:"straight_waist" jsonschema_description:"side seams hanging straight, without waist darts"`
}

// Sleeve asks for a sleeve set into the armholes of the bodice.
type Sleeve struct {
	Style      Choice[sleeve.Style] `yaml:"style"`
	Reach      Choice[sleeve.Reach] `yaml:"reach" jsonschema_description:"how far down the arm it goes when length is not given: full, elbow or short; full if not given"`
	Head       Text                 `yaml:"head_fullness" jsonschema_description:"how many times the armhole a gathered sleeve head is between the notches: 1.2 to 2"`
	Hem        Text                 `yaml:"hem_fullness" jsonschema_description:"how many times its usual width the lower edge is, gathered into a cuff or band: 1.2 to 2"`
	Length     Measure              `yaml:"length" jsonschema_description:"from the crown to the wrist; the body's shoulder_to_wrist if not given"`
	Ease       Measure              `yaml:"ease" jsonschema_description:"how much longer the sleeve head is than the armhole; 6 % of the armhole if not given, 6.8 % in two pieces, 1.5 % in a shirt"`
	HeadHeight Measure              `yaml:"head_height" jsonschema_description:"from the crown down to the bicep line; four fifths of the depth of the armhole if not given, 7/10 in a shirt, or as near to it as suits the arm"`
	BicepEase  Measure              `yaml:"bicep_ease" jsonschema_description:"how much longer than the upper arm girth the sleeve is on the bicep line; that of the usual head height if not given"`
	WristWidth Measure              `yaml:"wrist_width" jsonschema_description:"whole width of the wrist or hem edge"`
}

func (v values) bodice(path Path, asked *Bodice) *bodice.Options {
	if asked == nil {
		return nil
	}
	back := choose(v, path.Key("back"), language.Say("the bodice's back", "Rücken des Oberteils"), asked.Back)
	return &bodice.Options{
		Method: choose(v, path.Key("method"), language.Say("the bodice's method",
			"Konstruktion des Oberteils"), asked.Method),
		Fit: choose(v, path.Key("fit"), language.Say("the bodice's fit", "Passform des Oberteils"),
			asked.Fit),
		Shaping: choose(v, path.Key("dart"), language.Say("the bodice's dart", "Abnäher des Oberteils"),
			asked.Dart),
		Princess: choose(v, path.Key("princess"), language.Say("the princess seam", "Prinzessnaht"),
			asked.Princess),
		Yoke:        v.optional(path.Key("yoke"), language.Say("the yoke", "Passe"), asked.Yoke),
		BackOnFold:  back == backFold,
		BackOpening: back == backOpening,
		FrontOpening: choose(v, path.Key("front"), language.Say("the bodice's front",
			"Vorderseite des Oberteils"), asked.Front) == frontOpening,
		Extension: v.optional(path.Key("extension"), language.Say("the extension", "Übertritt"), asked.Extension),
		NeckWiden: v.optional(path.Key("neck_wider"), language.Say("neck_wider", "Halsloch weiter"),
			asked.NeckWider),
		FrontNeckDrop: v.optional(path.Key("front_neck_lower"), language.Say("front_neck_lower",
			"Halsloch vorn tiefer"), asked.FrontLower),
		BackNeckDrop: v.optional(path.Key("back_neck_lower"), language.Say("back_neck_lower",
			"Halsloch hinten tiefer"), asked.BackLower),
		BelowWaist: v.optional(path.Key("below_waist"), language.Say("the length below the waist",
			"Länge unter der Taille"), asked.BelowWaist),
		HipEase: v.optional(path.Key("hip_ease"), language.Say("the hip ease",
			"Bequemlichkeit an der Hüfte"), asked.HipEase),
		BustEase: v.optional(path.Key("bust_ease"), language.Say("the bust ease",
			"Bequemlichkeit an der Brust"), asked.BustEase),
		WaistEase: v.optional(path.Key("waist_ease"), language.Say("the waist ease",
			"Bequemlichkeit an der Taille"), asked.WaistEase),
		StraightWaist: v.yes(path.Key("straight_waist"), language.Say("straight_waist", "Gerade Taille"),
			asked.StraightWaist),
	}
}

func (v values) sleeve(path Path, asked *Sleeve) *sleeve.Options {
	if asked == nil {
		return nil
	}
	options := &sleeve.Options{
		Style: choose(v, path.Key("style"), language.Say("the sleeve's style", "Form des Ärmels"),
			asked.Style),
		Reach: choose(v, path.Key("reach"), language.Say("the sleeve's reach", "Länge des Ärmels"),
			asked.Reach),
		HeadFullness: v.fullness(path.Key("head_fullness"), language.Say("the sleeve head", "Armkugel"), asked.Head),
		HemFullness:  v.fullness(path.Key("hem_fullness"), language.Say("the sleeve hem", "Ärmelsaum"), asked.Hem),
		HeadHeight: v.optional(path.Key("head_height"), language.Say("the sleeve head height",
			"Höhe der Armkugel"), asked.HeadHeight),
		BicepEase: v.optional(path.Key("bicep_ease"), language.Say("the bicep ease",
			"Bequemlichkeit am Oberarm"), asked.BicepEase),
		Length: v.optional(path.Key("length"), language.Say("the sleeve length", "Ärmellänge"), asked.Length),
		WristWidth: v.optional(path.Key("wrist_width"), language.Say("the wrist width", "Weite am Handgelenk"),
			asked.WristWidth),
	}
	if asked.Ease != "" {
		if ease, ok := v.length(path.Key("ease"), language.Say("the sleeve ease", "Einhalteweite der Armkugel"),
			asked.Ease); ok {
			options.Ease = &ease
		}
	}
	return options
}
