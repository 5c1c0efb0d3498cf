package job

const anyCloth = "cloths:\n  - {name: shell, width: 140}\n"

// onBlouse is a job in size 12 with a garment that has more keys.
func onBlouse(more string) string {
	return "job: a\nunits: cm\nsize: 12\ntable: women\ngarments:\n  - name: blouse\n" + more + anyCloth
}

// onBody is a job by measurements, each on a line of its own.
func onBody(body, more string) string {
	return "job: a\nunits: cm\nbody:\n" + body + "garments:\n  - name: blouse\n" + more + anyCloth
}

// onCloth is a job of one rectangle with a cloth that has more keys.
func onCloth(more string) string {
	return "job: a\nunits: cm\ngarments:\n  - name: blouse\n    pieces: [{name: cuff, width: 24, height: " +
		"10}]\ncloths:\n  - name: shell\n" + more
}

// priced is a job of one rectangle with lines for a quote.
func priced(more string) string {
	return "job: a\nunits: cm\ncurrency: EUR\ngarments:\n  - name: blouse\n    pieces: [{name: cuff, width: 24, " +
		"height: 10}]\n" + more
}

const pricedCloth = "cloths:\n  - {name: shell, width: 140, price: 10}\n"

var topFaults = []refusedJob{
	{"empty", "→# nothing\n", "the file is empty"},
	{"no YAML", "job: a\n→\tunits: cm\n", "lines are indented with spaces, not tabs"},
	{"no name", "→units: cm\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, height: 5}]}\n" + anyCloth,
		"the job has no name"},
	{"no units", "→job: a\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, height: 5}]}\n" + anyCloth,
		"the job does not say its units"},
	{"units", "job: a\n→units: ell\n" + anyCloth, "units: "},
	{"unknown key", "job: a\n→clothes: []\n", `unknown key "clothes" in the job; did you mean cloths?`},
	{"unknown key inside", "job: a\nunits: cm\ngarments:\n  - name: a\n    →cloht: b\n",
		`unknown key "cloht" in garments, entry 1; did you mean cloth?`},
	{"no value", "job: a\n→units:\n", "units has no value"},
	{"no options", "job: a\nunits: cm\ngarments:\n  - name: a\n    →bodice:\n",
		"garments, entry 1: bodice has no value: write {}"},
	{"no list", "job: a\nunits: cm\n→garments: blouse\n", "garments should be a list"},
	{"no keys", "job: a\nunits: cm\ngarments:\n  →- blouse\n", "garments, entry 1 should hold keys with values"},
	{"no single value", "job: a\nunits: cm\nclient:\n  →- b\n", "client should be a single value, but is a list"},
	{"two jobs", "job: a\n---\n→job: b\n", "a file holds one job"},
	{"twice", "job: a\n→job: b\n", "this key stands twice"},
	{"no cloths", "→job: a\nunits: cm\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, height: 5}]}\n",
		"the job has no cloths"},
	{"no garments", "→job: a\nunits: cm\n" + anyCloth, "the job has no garments"},
	{"currency", "job: a\nunits: cm\n→currency: shells\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, " +
		"height: 5}]}\n" + anyCloth, "currency: "},
	{"allowance of nothing",
		"job: a\nunits: cm\nallowances:\n  →pocket flap: 2\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, " +
			"height: 5}]}\n" + anyCloth, `there is no seam "pocket flap"`},
	{"allowance", "job: a\nunits: cm\nsize: 12\ntable: women\nallowances:\n  →Sleeve-head: 20\ngarments:\n  - " +
		"{name: a, bodice: {}}\n" + anyCloth,
		`garment "a": allowances: the seam allowance on "sleeve head" is 20 cm; 15 cm is the most`},
	{"allowance of a garment", onBlouse("    bodice: {}\n    allowances:\n      →side: 20\n"),
		`allowances: the seam allowance on "side" is 20 cm`},
}

var bodyFaults = []refusedJob{
	{"table", "job: a\nunits: cm\nsize: 12\n→table: dolls\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth,
		`there is no size table "dolls"`},
	{"size", "job: a\nunits: cm\n→size: 13\ntable: women\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth,
		`the table "women" has no size "13"`},
	{"size without table", "job: a\nunits: cm\n→size: 12\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth,
		"size 12 of which table?"},
	{"table without size", "job: a\nunits: cm\n→table: women\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth,
		`the table "women" is named without a size`},
	{"table beside measurements",
		"job: a\nunits: cm\n→table: dolls\nbody: {bust_girth: 92}\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth,
		`there is no size table "dolls"`},
	{"unknown measurement", onBody("  →bust: 92\n", "    bodice: {}\n"), `unknown measurement "bust"`},
	{"a size within the body", onBody("  →size: 12\n", "    bodice: {}\n"), "size is no measurement; write it above body"},
	{"no length", onBody("  →bust_girth: wide\n", "    bodice: {}\n"), "the bust girth: "},
	{"negative", onBody("  →bust_girth: -92\n", "    bodice: {}\n"), "the bust girth is -92; it cannot be negative"},
	{"impossible", onBody("  bust_girth: 92\n  →hip_girth: 300\n", "    bodice: {}\n"),
		"the hip girth is 300 cm; between 50 cm and 200 cm is possible"},
	{"twice", onBody("  bust-girth: 92\n  →bust_girth: 92\n", "    bodice: {}\n"), "the bust girth stands twice"},
	{"two girths", onBody("  bust_girth: 50\n  →waist_girth: 160\n", "    bodice: {}\n"),
		"the waist girth of 160 cm is over three times the bust girth of 50 cm"},
	{"missing", "job: a\nunits: cm\n→body:\n  bust_girth: 92\ngarments:\n  - name: a\n    skirt: {}\n" + anyCloth,
		"the waist girth is missing"},
	{"no body", "→job: a\nunits: cm\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth,
		"the job has no body to draft from"},
	{"wearers and a body",
		"job: a\nunits: cm\nsize: 12\ntable: women\n→wearers: [{name: Odile, size: 12, table: women}]\ngarments:\n  - " +
			"{name: a, bodice: {}}\n" + anyCloth, "the job has wearers and a body of its own"},
	{"nameless wearer", "job: a\nunits: cm\nwearers:\n  →- {size: 12, table: women}\ngarments:\n  - {name: a, " +
		"pieces: [{name: c, width: 4, height: 5}]}\n" + anyCloth, "wearer 1 has no name"},
	{"same wearer", "job: a\nunits: cm\nwearers:\n  - {name: Odile, size: 12, table: women}\n  - size: 14\n    " +
		"table: women\n    →name: odile\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth, "two wearers are named"},
	{"wearer's size", "job: a\nunits: cm\nwearers:\n  - name: Odile\n    table: women\n    →size: 13\ngarments:\n  " +
		"- {name: a, bodice: {}}\n" + anyCloth, `has no size "13"`},
	{"wearer's girth", "job: a\nunits: cm\nwearers:\n  - name: Odile\n    body:\n      →bust_girth: 9\ngarments:\n " +
		" - {name: a, bodice: {}}\n" + anyCloth, "the bust girth is 9 cm"},
}

var garmentFaults = []refusedJob{
	{"nameless", "job: a\nunits: cm\ngarments:\n  →- pieces: [{name: c, width: 4, height: 5}]\n" + anyCloth,
		"garment 1 has no name"},
	{"same name", "job: a\nunits: cm\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, height: 5}]}\n  - " +
		"pieces: [{name: c, width: 4, height: 5}]\n    →name: A\n" + anyCloth, `two garments are named "A"`},
	{"for nobody", onBlouse("    bodice: {}\n    for:\n      →- Odile\n"),
		`garment "blouse" is for "Odile", but the job has no wearers`},
	{"for a stranger", "job: a\nunits: cm\nwearers: [{name: Odile, size: 12, table: women}]\ngarments:\n  - name: " +
		"a\n    bodice: {}\n    for:\n      - Odile\n      →- Odette\n" + anyCloth,
		`garment "a" is for "Odette", who is not under wearers:`},
	{"quantity", onBlouse("    bodice: {}\n    →quantity: some\n"), `the quantity is "some"; it must be a whole number`},
	{"cloth", onBlouse("    bodice: {}\n    →cloth: shel\n"),
		`garment "blouse": there is no cloth "shel" under cloths:; did you mean shell?`},
	{"no pieces", "job: a\nunits: cm\ngarments:\n  →- name: blouse\n" + anyCloth, `garment "blouse" has no pieces`},
	{"cut from no cloth", onBlouse("    bodice: {}\n    cut_from:\n      →shel: [front bodice]\n"),
		`cut_from: there is no cloth "shel"`},
	{"cut from of nothing",
		onBlouse("    bodice: {}\n    cut_from:\n      shell:\n        - front bodice\n        →- front bodise\n"),
		`garment "blouse" has no drafted piece "front bodise"`},
	{"two pieces of a name",
		onBlouse("    bodice: {}\n    pieces:\n      - width: 4\n        height: 5\n        →name: front bodice\n"),
		`garment "blouse" has two pieces named "front bodice"`},
	{"two parts of a name",
		onBlouse("    bodice: {}\n    parts:\n      - {kind: collar}\n      - kind: belt\n        →name: collar\n"),
		`two pieces are called "collar"`},
	{"skirt and trousers", onBlouse("    skirt: {}\n    →trousers: {}\n"),
		"one garment has a skirt or trousers, not both"},
	{"below the waist of a dress", onBlouse("    skirt: {}\n    bodice:\n      →below_waist: 30\n"),
		"the bodice goes on below the waist"},
	{"sleeve without bodice", onBlouse("    →sleeve: {}\n"), "sleeve: it is drafted to the armholes of a bodice"},
	{"elastic and waistband", onBlouse("    parts: [{kind: waistband}]\n    trousers:\n      →opening: elastic waist\n"),
		"an elastic waist has its casing cut on"},
}

var pieceFaults = []refusedJob{
	{"nameless", onBlouse("    pieces:\n      →- {width: 4, height: 5}\n"), `piece 1 of garment "blouse" has no name`},
	{"no width", onBlouse("    pieces:\n      →- {name: c, height: 5}\n"), `piece "c": the width is missing`},
	{"no height", onBlouse("    pieces:\n      - name: c\n        width: 5\n        →height: 0\n"),
		`piece "c": the height is 0`},
	{"cut", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        →cut: 1.5\n"),
		`piece "c": cut is "1.5"`},
	{"pair", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        →pair: maybe\n"),
		`piece "c": pair is "maybe"; write yes or no`},
	{"odd pair", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        →pair: yes\n " +
		"       cut: 3\n"), `piece "c" is a pair, but 3 are cut`},
	{"grain", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        →grain: slanted\n"),
		`piece "c": the grain is "slanted", which is not known; use one of: straight, cross, bias`},
	{"kind", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        →kind: faced\n"),
		`piece "c": the kind is "faced"`},
	{"allowance", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        " +
		"→allowance: -1\n"), `piece "c": the allowance is -1`},
	{"cloth", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        →cloth: shel\n"),
		`piece "c": there is no cloth "shel"`},
	{"fold", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        →fold: middle\n"),
		`piece "c": the fold edge is "middle"`},
	{"fold on the bias", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        " +
		"grain: bias\n        →fold: left\n"), "is on the bias, so it cannot lie on the fold"},
	{"fold across", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        grain: " +
		"cross\n        →fold: left\n"), "with cross grain it is bottom or top, not left"},
	{"fold of a pair", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        cut: " +
		"2\n        pair: yes\n        →fold: left\n"), "cannot be a pair and lie on the fold"},
}
