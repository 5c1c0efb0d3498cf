package job

import (
	"ellwand/draft/bodice"
	"ellwand/draft/sleeve"
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
	back := choose(v, path.Key("back"), "the bodice's back", asked.Back)
	return &bodice.Options{
		Method:        choose(v, path.Key("method"), "the bodice's method", asked.Method),
		Fit:           choose(v, path.Key("fit"), "the bodice's fit", asked.Fit),
		Shaping:       choose(v, path.Key("dart"), "the bodice's dart", asked.Dart),
		Princess:      choose(v, path.Key("princess"), "the princess seam", asked.Princess),
		Yoke:          v.optional(path.Key("yoke"), "the yoke", asked.Yoke),
		BackOnFold:    back == backFold,
		BackOpening:   back == backOpening,
		FrontOpening:  choose(v, path.Key("front"), "the bodice's front", asked.Front) == frontOpening,
		Extension:     v.optional(path.Key("extension"), "the extension", asked.Extension),
		NeckWiden:     v.optional(path.Key("neck_wider"), "neck_wider", asked.NeckWider),
		FrontNeckDrop: v.optional(path.Key("front_neck_lower"), "front_neck_lower", asked.FrontLower),
		BackNeckDrop:  v.optional(path.Key("back_neck_lower"), "back_neck_lower", asked.BackLower),
		BelowWaist:    v.optional(path.Key("below_waist"), "the length below the waist", asked.BelowWaist),
		HipEase:       v.optional(path.Key("hip_ease"), "the hip ease", asked.HipEase),
		BustEase:      v.optional(path.Key("bust_ease"), "the bust ease", asked.BustEase),
		WaistEase:     v.optional(path.Key("waist_ease"), "the waist ease", asked.WaistEase),
		StraightWaist: v.yes(path.Key("straight_waist"), "straight_waist", asked.StraightWaist),
	}
}

func (v values) sleeve(path Path, asked *Sleeve) *sleeve.Options {
	if asked == nil {
		return nil
	}
	options := &sleeve.Options{
		Style:        choose(v, path.Key("style"), "the sleeve's style", asked.Style),
		Reach:        choose(v, path.Key("reach"), "the sleeve's reach", asked.Reach),
		HeadFullness: v.fullness(path.Key("head_fullness"), "the sleeve head", asked.Head),
		HemFullness:  v.fullness(path.Key("hem_fullness"), "the sleeve hem", asked.Hem),
		HeadHeight:   v.optional(path.Key("head_height"), "the sleeve head height", asked.HeadHeight),
		BicepEase:    v.optional(path.Key("bicep_ease"), "the bicep ease", asked.BicepEase),
		Length:       v.optional(path.Key("length"), "the sleeve length", asked.Length),
		WristWidth:   v.optional(path.Key("wrist_width"), "the wrist width", asked.WristWidth),
	}
	if asked.Ease != "" {
		if ease, ok := v.length(path.Key("ease"), "the sleeve ease", asked.Ease); ok {
			options.Ease = &ease
		}
	}
	return options
}
