package job

var moreFaults = []refusedJob{
	{"bust over three waists", onBody("  →bust_girth: 150\n  waist_girth: 45\n", "    bodice: {}\n"),
		"the bust girth of 150 cm is over three times the waist girth"},
	{"hip of a long bodice", onBody("  bust_girth: 80\n  waist_girth: 70\n  →hip_girth: 180\n", "    bodice: {below_waist: 40}\n"),
		"the hip girth of 180 cm is too large for the bust girth"},
	{"two ways to a bicep line", inBlock("    bodice: {}\n", "sleeve", "head_height: 14", "→bicep_ease: 4"),
		"the bicep line follows from the head height"},
	{"bicep ease", inBlock("    bodice: {}\n", "sleeve", "→bicep_ease: 90"), "a bicep ease of 90 cm cannot be"},
	{"no neck to face", onBlouse("    skirt: {}\n    parts:\n      - →kind: neck facing\n"), "there is no neck to face"},
	{"no neck for a flat collar", onBlouse("    skirt: {}\n    parts:\n      - →kind: flat collar\n"), "there is no neck to fit it to"},
	{"nothing to face", onBlouse("    skirt: {}\n    parts:\n      - →kind: neck and armhole facing\n"),
		"there is no neck and armhole to face"},
	{"darts into the hem", onBody("  →waist_girth: 50\n  hip_girth: 150\n", "    skirt: {shape: a-line, darts: hem}\n"),
		"to close the darts into the hem"},
	{"too much cloth round", inBlock("", "skirt", "shape: tiered", "fullness: 3", "→tiers: 8"), "of cloth round"},
	{"elastic, hip ease", inBlock("", "trousers", "opening: elastic waist", "→hip_ease: 0.1"), "a hip ease of 0.1 cm draws"},
	{"border without line", onCloth("    width: 140\n    →border: {pieces: [cuff]}\n"), "has a border without a line"},
	{"border without pieces", onCloth("    width: 140\n    →border: {line: 10}\n"), "has a border and no pieces on it"},
	{"crossed remnant", onCloth("    remnants:\n      →- outline: [[0, 0], [50, 50], [50, 0], [0, 90]]\n"), "crosses itself"},
}
