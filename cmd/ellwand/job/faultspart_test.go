package job

// ofPart is a blouse with a part, an option of which is marked.
func ofPart(before, kind string, options ...string) string {
	text := before + "    parts:\n      - kind: " + kind + "\n"
	for _, option := range options {
		text += "        " + option + "\n"
	}
	return onBlouse(text)
}

const sleeved = "    bodice: {}\n    sleeve: {}\n"

var partFaults = []refusedJob{
	{"no kind", onBlouse("    bodice: {}\n    parts:\n      →- {depth: 4}\n"), "part 1 has no kind"},
	{"kind", onBlouse("    bodice: {}\n    parts:\n      →- kind: frill\n"), `the part's kind is "frill"`},
	{"cloth", ofPart("    bodice: {}\n", "collar", "→cloth: shel"), `part collar: there is no cloth "shel"`},
	{"depth", ofPart("    bodice: {}\n", "collar", "→depth: 0"), "collar: the depth is 0"},
	{"fullness", ofPart("    bodice: {}\n", "gathered skirt", "depth: 60", "→fullness: 9"),
		"a fullness of 9 cannot be gathered"},
	{"no length", onBlouse("    bodice: {}\n    parts:\n      →- kind: gathered skirt\n"),
		"the length is missing: give its depth"},
	{"no width", onBlouse("    bodice: {}\n    parts:\n      →- {kind: straight panel, depth: 60}\n"),
		"the width is missing"},
	{"collar without neck", onBlouse("    skirt: {}\n    parts:\n      - {kind: waistband}\n      →- kind: collar\n"),
		"there is no neck to fit it to"},
	{"facing without armhole", onBlouse("    skirt: {}\n    parts:\n      - →kind: armhole facing\n"),
		"there is no armhole to face"},
	{"placket without sleeve", onBlouse("    bodice: {}\n    parts:\n      - →kind: sleeve placket\n"),
		"there is no sleeve to slit"},
	{"long placket", ofPart(sleeved, "sleeve placket", "→length: 60"), "a slit of 60 cm is too long"},
	{"neck facing", ofPart("    bodice: {}\n", "neck facing", "→depth: 20"),
		"a depth of 20 cm is more than the shoulder has room for"},
	{"armhole facing", ofPart("    bodice: {}\n", "armhole facing", "→depth: 40"), "a depth of 40 cm is more than"},
	{"combined facing", ofPart("    bodice: {}\n", "neck and armhole facing", "→depth: 40"),
		"a depth of 40 cm is more than there is room for"},
	{"combined facing with sleeves", onBlouse(sleeved + "    parts:\n      - →kind: neck and armhole facing\n"),
		"there are sleeves in the armholes"},
	{"facing of nothing", onBlouse("    skirt: {}\n    parts:\n      →- {kind: facing}\n"),
		"facing: name the piece that it is of"},
	{"facing of a stranger", ofPart("    skirt: {}\n", "facing", "edge: waist", "→of: front skort"),
		`there is no piece "front skort"`},
	{"facing of no edge", ofPart("    skirt: {}\n", "facing", "of: front skirt", "→edge: hip"), `has no edge "hip"`},
	{"stand", ofPart("    bodice: {}\n", "shirt collar", "→stand: 20"), "a stand of 20 cm cannot be worn"},
	{"fall", ofPart("    bodice: {}\n", "shirt collar", "stand: 4", "→depth: 2"), "does not cover the seam of a stand"},
	{"mandarin collar", ofPart("    bodice: {}\n", "mandarin collar", "→depth: 20"), "a depth of 20 cm cannot be worn"},
	{"flat collar", ofPart("    bodice: {}\n", "flat collar", "→depth: 30"),
		"a depth of 30 cm is more than the shoulder has room for"},
	{"overlap", ofPart("    bodice: {}\n", "flat collar", "→overlap: 9"), "an overlap of 9 cm"},
	{"shaped waistband", ofPart("    skirt: {}\n", "shaped waistband", "→depth: 15"),
		"a depth of 15 cm is more than half the waist to hip"},
	{"short belt", ofPart("    bodice: {}\n", "belt", "→length: 2", "depth: 4"), "is too short for a depth"},
	{"strip without length", onBlouse("    bodice: {}\n    parts:\n      →- kind: bias strip\n"),
		"give the length of all strips joined"},
	{"wide strip", ofPart("    bodice: {}\n", "bias strip", "length: 100", "→depth: 120"), "cannot be cut on the bias"},
	{"grain of no strip", ofPart("    bodice: {}\n", "belt", "→grain: either"), "it is no straight strip"},
	{"joins of no strip", ofPart("    bodice: {}\n", "neck facing", "→joins: 1"), "it is no straight strip"},
	{"grain", ofPart("    skirt: {}\n", "waistband", "→grain: bias"), `waistband: the grain is "bias"`},
	{"joins", ofPart("    skirt: {}\n", "waistband", "→joins: 0"), `waistband: joins is "0"`},
	{"many joins", ofPart("    skirt: {}\n", "waistband", "→joins: 9"), "9 joins leave strips of only"},
	{"pocket", ofPart("    skirt: {}\n", "patch pocket", "→depth: 2", "length: 20"), "a height of 2 cm is too little"},
	{"shape", ofPart("    skirt: {}\n", "patch pocket", "→shape: star"), `patch pocket: the shape is "star"`},
	{"bag without skirt", onBlouse("    bodice: {}\n    parts:\n      - →kind: pocket bag\n"),
		"there is no front skirt with a side seam"},
	{"opening of a bag", ofPart("    skirt: {}\n", "pocket bag", "→length: 90"), "an opening of 90 cm cannot be"},
	{"lining of nothing", onBlouse("    bodice: {}\n    linings:\n      →- {shorter: 2}\n"),
		"the lining does not say what it is of"},
	{"lining of a stranger", onBlouse("    bodice: {}\n    linings:\n      - shorter: 2\n        →of: [hood]\n"),
		`lining: there is no piece "hood"`},
	{"lining too short", onBlouse("    bodice: {below_waist: 25}\n    linings:\n      - of: [front bodice]\n       " +
		" →shorter: 90\n"), "90 cm shorter is more than"},
	{"pleat", onBlouse("    bodice: {}\n    linings:\n      - of: [back bodice]\n        →back_pleat: 40\n"),
		"a back pleat of 40 cm cannot be"},
	{"lining's cloth", onBlouse("    bodice: {}\n    linings:\n      - of: [back bodice]\n        →cloth: silk\n"),
		`lining: there is no cloth "silk"`},
	{"interfacing of a stranger", onBlouse("    bodice: {}\n    interfacings:\n      - →of: [hood]\n"),
		`interfacing: there is no piece "hood"`},
	{"interfacing cut", onBlouse("    bodice: {}\n    interfacings:\n      - of: [front bodice]\n        →cut: 0\n"),
		"interfacing: cut is"},
	{"interfacing reduced",
		onBlouse("    bodice: {}\n    interfacings:\n      - of: [front bodice]\n        →reduce: -1\n"),
		"what the allowances of the interfacing are reduced by is -1"},
}
