package job

import (
	"ellwand/draft/bodice"
	"ellwand/draft/sleeve"
)

// Bodice asks for a front and a back bodice.
type Bodice struct {
	Method        Choice  `yaml:"method" jsonschema:"enum=measured,enum=proportional" jsonschema_description:"measured (from all measurements) or proportional (from bust, waist and back neck point to waist; the widths are proportions of the bust); measured if not given"`
	Fit           Choice  `yaml:"fit" jsonschema:"enum=close,enum=easy,enum=shirt" jsonschema_description:"close (10 cm of ease at the bust), easy (14) or shirt (18, waist hanging straight); close if not given"`
	Dart          Choice  `yaml:"dart" jsonschema:"enum=side,enum=shoulder,enum=armhole,enum=none" jsonschema_description:"where the bust dart lies, or none for men and children; side if not given"`
	Princess      Choice  `yaml:"princess" jsonschema:"enum=none,enum=shoulder,enum=armhole" jsonschema_description:"where a seam over the bust point begins that takes up the bust and waist darts; none if not given"`
	Yoke          Measure `yaml:"yoke" jsonschema_description:"depth of a back yoke below the back neck point; no yoke if not given"`
	Back          Choice  `yaml:"back" jsonschema:"enum=seam,enum=fold,enum=opening" jsonschema_description:"the centre back: seam (two backs, a pair), fold (one back on the fold) or opening (two backs that button, each with an extension and a facing folded back); seam if not given"`
	Front         Choice  `yaml:"front" jsonschema:"enum=fold,enum=opening" jsonschema_description:"the centre front: fold (one front on the fold) or opening (two fronts that button, each with an extension and a facing folded back); fold if not given"`
	Extension     Measure `yaml:"extension" jsonschema_description:"how far an opening reaches beyond the centre line, about the width of a button; 2 cm if not given"`
	NeckWider     Measure `yaml:"neck_wider" jsonschema_description:"how much wider the neck is on each shoulder than the base of the neck"`
	FrontLower    Measure `yaml:"front_neck_lower" jsonschema_description:"how much lower the neck is at the centre front"`
	BackLower     Measure `yaml:"back_neck_lower" jsonschema_description:"how much lower the neck is at the centre back"`
	BelowWaist    Measure `yaml:"below_waist" jsonschema_description:"length below the waist, for a bodice that goes on to the hip or further, with a hem; not given, it ends at the waist"`
	HipEase       Measure `yaml:"hip_ease" jsonschema_description:"ease at the hip, all round, below the waist; half of the bust ease if not given"`
	BustEase      Measure `yaml:"bust_ease" jsonschema_description:"ease at the bust, all round; that of the fit if not given"`
	WaistEase     Measure `yaml:"waist_ease" jsonschema_description:"ease at the waist, all round; that of the fit if not given"`
	StraightWaist YesNo   `yaml:"straight_waist" jsonschema_description:"side seams hanging straight, without waist darts"`
}

// Sleeve asks for a sleeve set into the armholes of the bodice.
type Sleeve struct {
	Style      Choice  `yaml:"style" jsonschema:"enum=set-in,enum=shirt,enum=two-piece,enum=cap" jsonschema_description:"set-in; shirt with a lower head, little ease and a slit above the cuff; two-piece with a seam in front and behind; or cap, over the shoulder only; set-in if not given"`
	Reach      Choice  `yaml:"reach" jsonschema:"enum=full,enum=elbow,enum=short" jsonschema_description:"how far down the arm it goes when length is not given: full, elbow or short; full if not given"`
	Head       Text    `yaml:"head_fullness" jsonschema_description:"how many times the armhole a gathered sleeve head is between the notches: 1.2 to 2"`
	Hem        Text    `yaml:"hem_fullness" jsonschema_description:"how many times its usual width the lower edge is, gathered into a cuff or band: 1.2 to 2"`
	Length     Measure `yaml:"length" jsonschema_description:"from the crown to the wrist; the body's shoulder_to_wrist if not given"`
	Ease       Measure `yaml:"ease" jsonschema_description:"how much longer the sleeve head is than the armhole; 6 % of the armhole if not given, 6.8 % in two pieces, 1.5 % in a shirt"`
	HeadHeight Measure `yaml:"head_height" jsonschema_description:"from the crown down to the bicep line; four fifths of the depth of the armhole if not given, 7/10 in a shirt, or as near to it as suits the arm"`
	BicepEase  Measure `yaml:"bicep_ease" jsonschema_description:"how much longer than the upper arm girth the sleeve is on the bicep line; that of the usual head height if not given"`
	WristWidth Measure `yaml:"wrist_width" jsonschema_description:"whole width of the wrist or hem edge"`
}

var (
	methods = []string{"measured", "proportional"}

	fits  = []string{"close", "easy", "shirt"}
	darts = []string{"side", "shoulder", "armhole", "none"}
	seams = []string{"none", "shoulder", "armhole"}
	backs = []string{"seam", "fold"}
	// bodiceBacks are those of a bodice, which may also button there.
	bodiceBacks = []string{"seam", "fold", "opening"}
	fronts      = []string{"fold", "opening"}

	styles  = []string{"set-in", "shirt", "two-piece", "cap"}
	reaches = []string{"full", "elbow", "short"}
)

func (r *resolver) bodice(path string, asked *Bodice) *bodice.Options {
	if asked == nil {
		return nil
	}
	back := r.choose(path+".back", "the bodice's back", string(asked.Back), bodiceBacks)
	return &bodice.Options{
		Method:        bodice.Method(r.choose(path+".method", "the bodice's method", string(asked.Method), methods)),
		Fit:           bodice.Fit(r.choose(path+".fit", "the bodice's fit", string(asked.Fit), fits)),
		Shaping:       bodice.Shaping(r.choose(path+".dart", "the bodice's dart", string(asked.Dart), darts)),
		Princess:      bodice.Princess(r.choose(path+".princess", "the princess seam", string(asked.Princess), seams)),
		Yoke:          r.optional(path+".yoke", "the yoke", asked.Yoke),
		BackOnFold:    back == 1,
		BackOpening:   back == 2,
		FrontOpening:  r.choose(path+".front", "the bodice's front", string(asked.Front), fronts) == 1,
		Extension:     r.optional(path+".extension", "the extension", asked.Extension),
		NeckWiden:     r.optional(path+".neck_wider", "neck_wider", asked.NeckWider),
		FrontNeckDrop: r.optional(path+".front_neck_lower", "front_neck_lower", asked.FrontLower),
		BackNeckDrop:  r.optional(path+".back_neck_lower", "back_neck_lower", asked.BackLower),
		BelowWaist:    r.optional(path+".below_waist", "the length below the waist", asked.BelowWaist),
		HipEase:       r.optional(path+".hip_ease", "the hip ease", asked.HipEase),
		BustEase:      r.optional(path+".bust_ease", "the bust ease", asked.BustEase),
		WaistEase:     r.optional(path+".waist_ease", "the waist ease", asked.WaistEase),
		StraightWaist: r.yes(path+".straight_waist", "straight_waist", asked.StraightWaist),
	}
}

func (r *resolver) sleeve(path string, asked *Sleeve) *sleeve.Options {
	if asked == nil {
		return nil
	}
	options := &sleeve.Options{
		Style:        sleeve.Style(r.choose(path+".style", "the sleeve's style", string(asked.Style), styles)),
		Reach:        sleeve.Reach(r.choose(path+".reach", "the sleeve's reach", string(asked.Reach), reaches)),
		HeadFullness: r.fullness(path+".head_fullness", "the sleeve head", asked.Head),
		HemFullness:  r.fullness(path+".hem_fullness", "the sleeve hem", asked.Hem),
		HeadHeight:   r.optional(path+".head_height", "the sleeve head height", asked.HeadHeight),
		BicepEase:    r.optional(path+".bicep_ease", "the bicep ease", asked.BicepEase),
		Length:       r.optional(path+".length", "the sleeve length", asked.Length),
		WristWidth:   r.optional(path+".wrist_width", "the wrist width", asked.WristWidth),
	}
	if asked.Ease != "" {
		if ease, ok := r.length(path+".ease", "the sleeve ease", asked.Ease); ok {
			options.Ease = &ease
		}
	}
	return options
}
