package job

import (
	"errors"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// faultsOf parses and resolves a job that must have faults.
func faultsOf(t *testing.T, text string) []Fault {
	t.Helper()
	file, err := Parse("x.yaml", []byte(text))
	if err == nil {
		_, err = file.Resolve()
	}
	require.Error(t, err, text)
	var faults *Faults
	require.True(t, errors.As(err, &faults), "%T is no list of faults: %s", err, err)
	for _, fault := range faults.List {
		assert.Positive(t, fault.Line, fault.Text)
	}
	return faults.List
}

// marked takes the arrow out of a job, and says in which line it stands.
func marked(t *testing.T, text string) (string, int) {
	t.Helper()
	before, _, found := strings.Cut(text, "→")
	require.True(t, found && strings.Count(text, "→") == 1, "one line is marked: %s", text)
	return strings.Replace(text, "→", "", 1), 1 + strings.Count(before, "\n")
}

// refusedJob is a job with the line marked that is to be blamed.
type refusedJob struct{ name, text, want string }

// TestEveryFaultNamesItsLine goes through the faults of a job file; in each of
// the jobs an arrow marks the line that is to be blamed. The text is the
// beginning of the sentence, and must be all that is found.
func TestEveryFaultNamesItsLine(t *testing.T) {
	for _, group := range [][]refusedJob{topFaults, bodyFaults, garmentFaults, pieceFaults, bodiceFaults, sleeveFaults, lowerFaults, partFaults, clothFaults, moneyFaults} {
		for _, tt := range group {
			t.Run(tt.name, func(t *testing.T) {
				text, line := marked(t, tt.text)
				got := faultsOf(t, text)
				assert.Len(t, got, 1, "%v", got)
				assert.Equal(t, line, got[0].Line, got[0].Text)
				assert.Contains(t, got[0].Text, tt.want)
			})
		}
	}
}

// A fault is a value: a page can show it beside its field.
func TestFaultsKnowTheirGarmentAndPiece(t *testing.T) {
	got := faultsOf(t, onBlouse("    pieces:\n      - {name: cuff, width: 24, height: 10, cut: 3, pair: yes}\n"))
	assert.Equal(t, Contradiction, got[0].Kind)
	assert.Equal(t, "garments[0].pieces[0].pair", got[0].Path.String())
	assert.Equal(t, [2]string{"blouse", "cuff"}, [2]string{got[0].Garment, got[0].Piece})
	got = faultsOf(t, onBlouse("    parts: [{kind: cuff, depth: -1}]\n"))
	assert.Equal(t, OutOfRange, got[0].Kind)
	assert.Equal(t, [2]string{"blouse", "cuff"}, [2]string{got[0].Garment, got[0].Piece})
}

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
	return "job: a\nunits: cm\ngarments:\n  - name: blouse\n    pieces: [{name: cuff, width: 24, height: 10}]\ncloths:\n  - name: shell\n" + more
}

// priced is a job of one rectangle with lines for a quote.
func priced(more string) string {
	return "job: a\nunits: cm\ncurrency: EUR\ngarments:\n  - name: blouse\n    pieces: [{name: cuff, width: 24, height: 10}]\n" + more
}

const pricedCloth = "cloths:\n  - {name: shell, width: 140, price: 10}\n"

var topFaults = []refusedJob{
	{"empty", "→# nothing\n", "the file is empty"},
	{"no YAML", "job: a\n→\tunits: cm\n", "lines are indented with spaces, not tabs"},
	{"no name", "→units: cm\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, height: 5}]}\n" + anyCloth, "the job has no name"},
	{"no units", "→job: a\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, height: 5}]}\n" + anyCloth, "the job does not say its units"},
	{"units", "job: a\n→units: ell\n" + anyCloth, "units: "},
	{"unknown key", "job: a\n→clothes: []\n", `unknown key "clothes" in the job; did you mean cloths?`},
	{"unknown key inside", "job: a\nunits: cm\ngarments:\n  - name: a\n    →cloht: b\n", `unknown key "cloht" in garments, entry 1; did you mean cloth?`},
	{"no value", "job: a\n→units:\n", "units has no value"},
	{"no options", "job: a\nunits: cm\ngarments:\n  - name: a\n    →bodice:\n", "garments, entry 1: bodice has no value: write {}"},
	{"no list", "job: a\nunits: cm\n→garments: blouse\n", "garments should be a list"},
	{"no keys", "job: a\nunits: cm\ngarments:\n  →- blouse\n", "garments, entry 1 should hold keys with values"},
	{"no single value", "job: a\nunits: cm\nclient:\n  →- b\n", "client should be a single value, but is a list"},
	{"two jobs", "job: a\n---\n→job: b\n", "a file holds one job"},
	{"twice", "job: a\n→job: b\n", "this key stands twice"},
	{"no cloths", "→job: a\nunits: cm\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, height: 5}]}\n", "the job has no cloths"},
	{"no garments", "→job: a\nunits: cm\n" + anyCloth, "the job has no garments"},
	{"currency", "job: a\nunits: cm\n→currency: shells\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, height: 5}]}\n" + anyCloth, "currency: "},
	{"allowance of nothing", "job: a\nunits: cm\nallowances:\n  →pocket flap: 2\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, height: 5}]}\n" + anyCloth, `there is no seam "pocket flap"`},
	{"allowance", "job: a\nunits: cm\nsize: 12\ntable: women\nallowances:\n  →Sleeve-head: 20\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth, `garment "a": allowances: the seam allowance on "sleeve head" is 20 cm; 15 cm is the most`},
	{"allowance of a garment", onBlouse("    bodice: {}\n    allowances:\n      →side: 20\n"), `allowances: the seam allowance on "side" is 20 cm`},
}

var bodyFaults = []refusedJob{
	{"table", "job: a\nunits: cm\nsize: 12\n→table: dolls\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth, `there is no size table "dolls"`},
	{"size", "job: a\nunits: cm\n→size: 13\ntable: women\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth, `the table "women" has no size "13"`},
	{"size without table", "job: a\nunits: cm\n→size: 12\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth, "size 12 of which table?"},
	{"table without size", "job: a\nunits: cm\n→table: women\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth, `the table "women" is named without a size`},
	{"table beside measurements", "job: a\nunits: cm\n→table: dolls\nbody: {bust_girth: 92}\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth, `there is no size table "dolls"`},
	{"unknown measurement", onBody("  →bust: 92\n", "    bodice: {}\n"), `unknown measurement "bust"`},
	{"no length", onBody("  →bust_girth: wide\n", "    bodice: {}\n"), "the bust girth: "},
	{"negative", onBody("  →bust_girth: -92\n", "    bodice: {}\n"), "the bust girth is -92; it cannot be negative"},
	{"impossible", onBody("  bust_girth: 92\n  →hip_girth: 300\n", "    bodice: {}\n"), "the hip girth is 300 cm; between 50 cm and 200 cm is possible"},
	{"twice", onBody("  bust-girth: 92\n  →bust_girth: 92\n", "    bodice: {}\n"), "the bust girth stands twice"},
	{"two girths", onBody("  bust_girth: 50\n  →waist_girth: 160\n", "    bodice: {}\n"), "the waist girth of 160 cm is over three times the bust girth of 50 cm"},
	{"missing", "job: a\nunits: cm\n→body:\n  bust_girth: 92\ngarments:\n  - name: a\n    skirt: {}\n" + anyCloth, "the waist girth is missing"},
	{"no body", "→job: a\nunits: cm\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth, "the job has no body to draft from"},
	{"wearers and a body", "job: a\nunits: cm\nsize: 12\ntable: women\n→wearers: [{name: Odile, size: 12, table: women}]\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth, "the job has wearers and a body of its own"},
	{"nameless wearer", "job: a\nunits: cm\nwearers:\n  →- {size: 12, table: women}\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, height: 5}]}\n" + anyCloth, "wearer 1 has no name"},
	{"same wearer", "job: a\nunits: cm\nwearers:\n  - {name: Odile, size: 12, table: women}\n  - size: 14\n    table: women\n    →name: odile\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth, "two wearers are named"},
	{"wearer's size", "job: a\nunits: cm\nwearers:\n  - name: Odile\n    table: women\n    →size: 13\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth, `has no size "13"`},
	{"wearer's girth", "job: a\nunits: cm\nwearers:\n  - name: Odile\n    body:\n      →bust_girth: 9\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth, "the bust girth is 9 cm"},
}

var garmentFaults = []refusedJob{
	{"nameless", "job: a\nunits: cm\ngarments:\n  →- pieces: [{name: c, width: 4, height: 5}]\n" + anyCloth, "garment 1 has no name"},
	{"same name", "job: a\nunits: cm\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, height: 5}]}\n  - pieces: [{name: c, width: 4, height: 5}]\n    →name: A\n" + anyCloth, `two garments are named "A"`},
	{"for nobody", onBlouse("    bodice: {}\n    for:\n      →- Odile\n"), `garment "blouse" is for "Odile", but the job has no wearers`},
	{"for a stranger", "job: a\nunits: cm\nwearers: [{name: Odile, size: 12, table: women}]\ngarments:\n  - name: a\n    bodice: {}\n    for:\n      - Odile\n      →- Odette\n" + anyCloth, `garment "a" is for "Odette", who is not under wearers:`},
	{"quantity", onBlouse("    bodice: {}\n    →quantity: some\n"), `the quantity is "some"; it must be a whole number`},
	{"cloth", onBlouse("    bodice: {}\n    →cloth: shel\n"), `garment "blouse": there is no cloth "shel" under cloths:; did you mean shell?`},
	{"no pieces", "job: a\nunits: cm\ngarments:\n  →- name: blouse\n" + anyCloth, `garment "blouse" has no pieces`},
	{"cut from no cloth", onBlouse("    bodice: {}\n    cut_from:\n      →shel: [front bodice]\n"), `cut_from: there is no cloth "shel"`},
	{"cut from of nothing", onBlouse("    bodice: {}\n    cut_from:\n      shell:\n        - front bodice\n        →- front bodise\n"), `garment "blouse" has no drafted piece "front bodise"`},
	{"two pieces of a name", onBlouse("    bodice: {}\n    pieces:\n      - width: 4\n        height: 5\n        →name: front bodice\n"), `garment "blouse" has two pieces named "front bodice"`},
	{"two parts of a name", onBlouse("    bodice: {}\n    parts:\n      - {kind: collar}\n      - kind: belt\n        →name: collar\n"), `two pieces are called "collar"`},
	{"skirt and trousers", onBlouse("    skirt: {}\n    →trousers: {}\n"), "one garment has a skirt or trousers, not both"},
	{"below the waist of a dress", onBlouse("    skirt: {}\n    bodice:\n      →below_waist: 30\n"), "the bodice goes on below the waist"},
	{"sleeve without bodice", onBlouse("    →sleeve: {}\n"), "sleeve: it is drafted to the armholes of a bodice"},
	{"elastic and waistband", onBlouse("    parts: [{kind: waistband}]\n    trousers:\n      →opening: elastic waist\n"), "an elastic waist has its casing cut on"},
}

var pieceFaults = []refusedJob{
	{"nameless", onBlouse("    pieces:\n      →- {width: 4, height: 5}\n"), `piece 1 of garment "blouse" has no name`},
	{"no width", onBlouse("    pieces:\n      →- {name: c, height: 5}\n"), `piece "c": the width is missing`},
	{"no height", onBlouse("    pieces:\n      - name: c\n        width: 5\n        →height: 0\n"), `piece "c": the height is 0`},
	{"cut", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        →cut: 1.5\n"), `piece "c": cut is "1.5"`},
	{"pair", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        →pair: maybe\n"), `piece "c": pair is "maybe"; write yes or no`},
	{"odd pair", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        →pair: yes\n        cut: 3\n"), `piece "c" is a pair, but 3 are cut`},
	{"grain", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        →grain: slanted\n"), `piece "c": the grain is "slanted", which is not known; use one of: straight, cross, bias`},
	{"kind", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        →kind: faced\n"), `piece "c": the kind is "faced"`},
	{"allowance", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        →allowance: -1\n"), `piece "c": the allowance is -1`},
	{"cloth", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        →cloth: shel\n"), `piece "c": there is no cloth "shel"`},
	{"fold", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        →fold: middle\n"), `piece "c": the fold edge is "middle"`},
	{"fold on the bias", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        grain: bias\n        →fold: left\n"), "is on the bias, so it cannot lie on the fold"},
	{"fold across", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        grain: cross\n        →fold: left\n"), "with cross grain it is top or bottom, not left"},
	{"fold of a pair", onBlouse("    pieces:\n      - name: c\n        width: 5\n        height: 5\n        cut: 2\n        pair: yes\n        →fold: left\n"), "cannot be a pair and lie on the fold"},
}

// inBlock is a blouse or a dress with a block, an option of which is marked.
func inBlock(before, block string, options ...string) string {
	text := before + "    " + block + ":\n"
	for _, option := range options {
		text += "      " + option + "\n"
	}
	return onBlouse(text)
}

var bodiceFaults = []refusedJob{
	{"method", inBlock("", "bodice", "→method: guessed"), `the bodice's method is "guessed"`},
	{"fit", inBlock("", "bodice", "→fit: tight"), `the bodice's fit is "tight"`},
	{"dart", inBlock("", "bodice", "→dart: neck"), `the bodice's dart is "neck"`},
	{"princess", inBlock("", "bodice", "→princess: neck"), `the princess seam is "neck"`},
	{"back", inBlock("", "bodice", "→back: open"), `the bodice's back is "open"`},
	{"front", inBlock("", "bodice", "→front: seam"), `the bodice's front is "seam"`},
	{"straight waist", inBlock("", "bodice", "→straight_waist: perhaps"), `straight_waist is "perhaps"`},
	{"yoke", inBlock("", "bodice", "fit: easy", "→yoke: 40"), "a yoke of 40 cm"},
	{"yoke and princess", inBlock("", "bodice", "yoke: 9", "→princess: shoulder"), "a back with a princess seam has no yoke"},
	{"extension", inBlock("", "bodice", "front: opening", "→extension: 40"), "an extension of 40 cm"},
	{"neck wider", inBlock("", "bodice", "→neck_wider: 20"), "a neck wider by 20 cm"},
	{"front neck lower", inBlock("", "bodice", "→front_neck_lower: 40"), "a front neck lower by 40 cm"},
	{"back neck lower", inBlock("", "bodice", "→back_neck_lower: 40"), "a back neck lower by 40 cm"},
	{"below waist, too short", inBlock("", "bodice", "→below_waist: 5"), "a length of 5 cm below the waist ends above the hip"},
	{"below waist, too long", inBlock("", "bodice", "→below_waist: 500"), "a length of 500 cm below the waist is too much"},
	{"ease of nothing", inBlock("", "bodice", "→bust_ease: 0"), "the bust ease is 0; it must be above 0"},
	{"two openings", inBlock("", "bodice", "back: opening", "→front: opening"), "it opens at the front or at the back"},
	{"opening with a yoke", inBlock("", "bodice", "back: opening", "→yoke: 9"), "a back that opens has no yoke"},
	{"proportional with a fit", inBlock("", "bodice", "method: proportional", "→fit: easy"), "the proportional draft has one fit"},
	{"proportional without a dart", inBlock("", "bodice", "method: proportional", "→dart: none"), "the proportional draft shapes a bust"},
	{"proportional with panels", inBlock("", "bodice", "method: proportional", "→princess: shoulder"), "neither princess seams nor a yoke"},
	{"waist too wide", onBody("  bust_girth: 80\n  →waist_girth: 170\n", "    bodice: {}\n"), "the waist girth of 170 cm with"},
	{"waist too small", onBody("  bust_girth: 120\n  →waist_girth: 45\n", "    bodice: {}\n"), "the waist girth of 45 cm"},
	{"scye depth", onBody("  bust_girth: 92\n  waist_girth: 76\n  →scye_depth: 33\n  back_neck_point_to_waist: 34\n", "    bodice: {}\n"), "scye depth"},
	{"across back", onBody("  bust_girth: 92\n  waist_girth: 76\n  →across_back_width: 55\n", "    bodice: {}\n"), "across back width"},
	{"shoulder", onBody("  bust_girth: 92\n  waist_girth: 76\n  →shoulder_length: 20\n", "    bodice: {}\n"), "the shoulder length of 20 cm"},
	{"of a size", "job: a\nunits: cm\nsize: 12\ntable: women\nbody:\n  →waist_girth: 140\ngarments:\n  - {name: a, bodice: {}}\n" + anyCloth, "the waist girth of 140 cm"},
}

var sleeveFaults = []refusedJob{
	{"style", inBlock("    bodice: {}\n", "sleeve", "→style: puffed"), `the sleeve's style is "puffed"`},
	{"reach", inBlock("    bodice: {}\n", "sleeve", "→reach: knee"), `the sleeve's reach is "knee"`},
	{"head fullness", inBlock("    bodice: {}\n", "sleeve", "→head_fullness: much"), `the sleeve head: the fullness is "much"`},
	{"hem fullness", inBlock("    bodice: {}\n", "sleeve", "→hem_fullness: 5"), "a hem fullness of 5 cannot be gathered"},
	{"head fullness too much", inBlock("    bodice: {}\n", "sleeve", "→head_fullness: 5"), "a head fullness of 5 cannot be gathered"},
	{"head too low", inBlock("    bodice: {}\n", "sleeve", "length: 60", "→head_height: 1"), "a head height of 1 cm"},
	{"head too high", inBlock("    bodice: {}\n", "sleeve", "→head_height: 60"), "a head height of 60 cm"},
	{"length", inBlock("    bodice: {}\n", "sleeve", "→length: 10"), "a length of 10 cm"},
	{"ease", inBlock("    bodice: {}\n", "sleeve", "→ease: 30"), "an ease of 30 cm"},
	{"ease of a gathered head", inBlock("    bodice: {}\n", "sleeve", "head_fullness: 1.5", "→ease: 2"), "a gathered head has no ease"},
	{"hem twice", inBlock("    bodice: {}\n", "sleeve", "wrist_width: 25", "→hem_fullness: 1.5"), "the hem has a width or a fullness"},
	{"cap", inBlock("    bodice: {}\n", "sleeve", "style: cap", "→length: 50"), "a cap sleeve of 50 cm"},
	{"gathered in two pieces", inBlock("    bodice: {}\n", "sleeve", "style: two-piece", "→head_fullness: 1.5"), "a two-piece sleeve is not gathered"},
	{"two pieces too short", inBlock("    bodice: {}\n", "sleeve", "style: two-piece", "→length: 30"), "does not go past the elbow"},
	{"wrist of two pieces", inBlock("    bodice: {}\n", "sleeve", "style: two-piece", "→wrist_width: 90"), "a wrist width of 90 cm does not suit two pieces"},
}

var lowerFaults = []refusedJob{
	{"shape", inBlock("", "skirt", "→shape: bell"), `the skirt's shape is "bell"`},
	{"too short", inBlock("", "skirt", "→length: 10"), "a length of 10 cm ends above or at the hip"},
	{"too long", inBlock("", "skirt", "→length: 900"), "is longer than a body"},
	{"panel", inBlock("", "skirt", "shape: tiered", "→panel_width: 1"), "a panel width of 1 cm is too narrow"},
	{"vent", inBlock("", "skirt", "shape: a-line", "→vent: yes"), "only a straight skirt has a vent"},
	{"vent on the fold", inBlock("", "skirt", "back: fold", "→vent: yes"), "a vent needs a centre back seam"},
	{"darts", inBlock("", "skirt", "→darts: hem"), "only in an a-line skirt"},
	{"flare", inBlock("", "skirt", "shape: a-line", "→flare: 300"), "a flare of 300 cm is too much"},
	{"gores", inBlock("", "skirt", "shape: gored", "→gores: 5"), "5 gores"},
	{"gores, no number", inBlock("", "skirt", "shape: gored", "→gores: six"), `the number of gores is "six"`},
	{"tiers", inBlock("", "skirt", "shape: tiered", "→tiers: 20"), "20 tiers"},
	{"fullness", inBlock("", "skirt", "shape: tiered", "→fullness: 8"), "a fullness of 8 cannot be gathered"},
	{"pleats", inBlock("", "skirt", "shape: knife pleated", "→pleats: 2"), "2 pleats"},
	{"waist of a skirt", onBody("  →waist_girth: 50\n  hip_girth: 150\n", "    skirt: {}\n"), "the waist girth of 50 cm is too small"},
	{"waist of gores", onBody("  →waist_girth: 50\n  hip_girth: 180\n", "    skirt: {shape: gored, gores: 4}\n"), "in 4 gores"},
	{"hip of a circle", onBody("  waist_girth: 60\n  →hip_girth: 190\n", "    skirt: {shape: quarter circle}\n"), "the hip girth of 190 cm does not go into"},
	{"hip of tiers", onBody("  waist_girth: 60\n  →hip_girth: 190\n", "    skirt: {shape: tiered, fullness: 1}\n"), "the hip girth of 190 cm cannot be gathered"},
	{"trousers too short", inBlock("", "trousers", "→length: 20"), "leaves no leg below"},
	{"trousers too long", inBlock("", "trousers", "→length: 150"), "reaches past the floor"},
	{"hem too narrow", inBlock("", "trousers", "→hem_width: 10"), "no foot goes through"},
	{"hem too wide", inBlock("", "trousers", "→hem_width: 300"), "more than a leg can flare"},
	{"opening", inBlock("", "trousers", "→opening: back"), `the opening is "back"`},
	{"pocket", inBlock("", "trousers", "→pocket: front"), `the pocket is "front"`},
	{"elastic", inBlock("", "trousers", "opening: elastic waist", "→elastic: 30"), "an elastic 30 cm wide"},
	{"elastic, waist ease", inBlock("", "trousers", "opening: elastic waist", "→waist_ease: 2"), "a waist ease of 2 cm draws"},
	{"body rise", onBody("  waist_girth: 76\n  hip_girth: 100\n  waist_to_hip: 31\n  →body_rise: 20\n", "    trousers: {}\n"), "the body rise of 20 cm"},
	{"no shape", onBlouse("    →straight_cut: {}\n"), "straight_cut has no shape"},
	{"wrong shape", inBlock("", "straight_cut", "→shape: tent"), `the shape is "tent"`},
	{"length of a kaftan", inBlock("", "straight_cut", "shape: kaftan", "→length: 900"), "a length of 900 cm cannot be"},
	{"wrapper", inBlock("", "straight_cut", "shape: wrapper", "→width: 50"), "a width of 50 cm does not overlap"},
	{"apron", inBlock("", "straight_cut", "shape: apron", "→width: 20"), "a width of 20 cm is too narrow"},
	{"bag", inBlock("", "straight_cut", "shape: bag", "→width: 900"), "a width of 900 cm cannot be"},
	{"bottom of a bag", inBlock("", "straight_cut", "shape: bag", "→depth: 90"), "a depth of 90 cm is more than the bag"},
	{"flat", inBlock("", "straight_cut", "shape: bag", "→flat: rather"), `flat is "rather"`},
}

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
	{"fullness", ofPart("    bodice: {}\n", "gathered skirt", "depth: 60", "→fullness: 9"), "a fullness of 9 cannot be gathered"},
	{"no length", onBlouse("    bodice: {}\n    parts:\n      →- kind: gathered skirt\n"), "the length is missing: give its depth"},
	{"no width", onBlouse("    bodice: {}\n    parts:\n      →- {kind: straight panel, depth: 60}\n"), "the width is missing"},
	{"collar without neck", onBlouse("    skirt: {}\n    parts:\n      - {kind: waistband}\n      →- kind: collar\n"), "there is no neck to fit it to"},
	{"facing without armhole", onBlouse("    skirt: {}\n    parts:\n      - →kind: armhole facing\n"), "there is no armhole to face"},
	{"placket without sleeve", onBlouse("    bodice: {}\n    parts:\n      - →kind: sleeve placket\n"), "there is no sleeve to slit"},
	{"long placket", ofPart(sleeved, "sleeve placket", "→length: 60"), "a slit of 60 cm is too long"},
	{"neck facing", ofPart("    bodice: {}\n", "neck facing", "→depth: 20"), "a depth of 20 cm is more than the shoulder has room for"},
	{"armhole facing", ofPart("    bodice: {}\n", "armhole facing", "→depth: 40"), "a depth of 40 cm is more than"},
	{"combined facing", ofPart("    bodice: {}\n", "neck and armhole facing", "→depth: 40"), "a depth of 40 cm is more than there is room for"},
	{"combined facing with sleeves", onBlouse(sleeved + "    parts:\n      - →kind: neck and armhole facing\n"), "there are sleeves in the armholes"},
	{"facing of nothing", onBlouse("    skirt: {}\n    parts:\n      →- {kind: facing}\n"), "facing: name the piece that it is of"},
	{"facing of a stranger", ofPart("    skirt: {}\n", "facing", "edge: waist", "→of: front skort"), `there is no piece "front skort"`},
	{"facing of no edge", ofPart("    skirt: {}\n", "facing", "of: front skirt", "→edge: hip"), `has no edge "hip"`},
	{"stand", ofPart("    bodice: {}\n", "shirt collar", "→stand: 20"), "a stand of 20 cm cannot be worn"},
	{"fall", ofPart("    bodice: {}\n", "shirt collar", "stand: 4", "→depth: 2"), "does not cover the seam of a stand"},
	{"mandarin collar", ofPart("    bodice: {}\n", "mandarin collar", "→depth: 20"), "a depth of 20 cm cannot be worn"},
	{"flat collar", ofPart("    bodice: {}\n", "flat collar", "→depth: 30"), "a depth of 30 cm is more than the shoulder has room for"},
	{"overlap", ofPart("    bodice: {}\n", "flat collar", "→overlap: 9"), "an overlap of 9 cm"},
	{"shaped waistband", ofPart("    skirt: {}\n", "shaped waistband", "→depth: 15"), "a depth of 15 cm is more than half the waist to hip"},
	{"short belt", ofPart("    bodice: {}\n", "belt", "→length: 2", "depth: 4"), "is too short for a depth"},
	{"strip without length", onBlouse("    bodice: {}\n    parts:\n      →- kind: bias strip\n"), "give the length of all strips joined"},
	{"wide strip", ofPart("    bodice: {}\n", "bias strip", "length: 100", "→depth: 120"), "cannot be cut on the bias"},
	{"pocket", ofPart("    skirt: {}\n", "patch pocket", "→depth: 2", "length: 20"), "a height of 2 cm is too little"},
	{"shape", ofPart("    skirt: {}\n", "patch pocket", "→shape: star"), `patch pocket: the shape is "star"`},
	{"bag without skirt", onBlouse("    bodice: {}\n    parts:\n      - →kind: pocket bag\n"), "there is no front skirt with a side seam"},
	{"opening of a bag", ofPart("    skirt: {}\n", "pocket bag", "→length: 90"), "an opening of 90 cm cannot be"},
	{"lining of nothing", onBlouse("    bodice: {}\n    linings:\n      →- {shorter: 2}\n"), "the lining does not say what it is of"},
	{"lining of a stranger", onBlouse("    bodice: {}\n    linings:\n      - shorter: 2\n        →of: [hood]\n"), `lining: there is no piece "hood"`},
	{"lining too short", onBlouse("    bodice: {below_waist: 25}\n    linings:\n      - of: [front bodice]\n        →shorter: 90\n"), "90 cm shorter is more than"},
	{"pleat", onBlouse("    bodice: {}\n    linings:\n      - of: [back bodice]\n        →back_pleat: 40\n"), "a back pleat of 40 cm cannot be"},
	{"lining's cloth", onBlouse("    bodice: {}\n    linings:\n      - of: [back bodice]\n        →cloth: silk\n"), `lining: there is no cloth "silk"`},
	{"interfacing of a stranger", onBlouse("    bodice: {}\n    interfacings:\n      - →of: [hood]\n"), `interfacing: there is no piece "hood"`},
	{"interfacing cut", onBlouse("    bodice: {}\n    interfacings:\n      - of: [front bodice]\n        →cut: 0\n"), "interfacing: cut is"},
	{"interfacing reduced", onBlouse("    bodice: {}\n    interfacings:\n      - of: [front bodice]\n        →reduce: -1\n"), "what the allowances of the interfacing are reduced by is -1"},
}

var clothFaults = []refusedJob{
	{"nameless", "job: a\nunits: cm\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, height: 5}]}\ncloths:\n  →- {width: 140}\n", "cloth 1 has no name"},
	{"same name", onCloth("    width: 140\n  - width: 90\n    →name: Shell\n"), ""},
	{"no width", "job: a\nunits: cm\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, height: 5}]}\ncloths:\n  →- name: shell\n", `cloth "shell": the width is missing`},
	{"narrow", onCloth("    →width: 2\n"), "a width of 2 cm leaves nothing between selvedges"},
	{"one of the widths", onCloth("    widths:\n      - 140\n      →- wide\n"), `cloth "shell": the width: `},
	{"width and widths", onCloth("    width: 140\n    →widths: [90]\n"), "has both width and widths"},
	{"length", onCloth("    width: 140\n    →length: -3\n"), `cloth "shell": the length is -3`},
	{"selvedge", onCloth("    width: 140\n    →selvedge: -1\n"), "the selvedge is -1"},
	{"nap", onCloth("    width: 140\n    →nap: oneway\n"), `the nap is "oneway"`},
	{"step", onCloth("    width: 140\n    →step: 0\n"), "the step is 0"},
	{"straighten", onCloth("    width: 140\n    →straighten: much\n"), "the straightening: "},
	{"gap", onCloth("    width: 140\n    →gap: -1\n"), "the gap between pieces is -1"},
	{"tilt", onCloth("    width: 140\n    →tilt: 9 %\n"), `the tilt is "9 %"`},
	{"alike", onCloth("    width: 140\n    →alike_both_sides: nearly\n"), `alike_both_sides is "nearly"`},
	{"one-way piece", onCloth("    width: 140\n    one_way_pieces:\n      →- collar\n"), `there is no piece "collar" to go one way`},
	{"warp", onCloth("    width: 140\n    shrinkage:\n      →warp: 50 %\n"), "the shrinkage of the warp"},
	{"weft", onCloth("    width: 140\n    shrinkage:\n      →weft: a lot\n"), "the shrinkage of the weft"},
	{"cut first", onCloth("    width: 140\n    shrinkage:\n      →cut_first: later\n"), "cut_first is"},
	{"no repeat", onCloth("    width: 140\n    →repeat: {centre_line: 3}\n"), "has a repeat without a length"},
	{"fine repeat", onCloth("    width: 140\n    →repeat: {along: 0.1}\n"), "a repeat of 0.1 cm cannot be matched"},
	{"no centre line", onCloth("    width: 140\n    repeat:\n      across: 5\n      →centre: [cuff]\n"), "on which line is the centre to lie?"},
	{"centred on no stripe", onCloth("    width: 140\n    repeat:\n      along: 5\n      centre_line: 10\n      →centre: [cuff]\n"), "pieces can only be centred on stripes along the cloth"},
	{"centred stranger", onCloth("    width: 140\n    repeat:\n      across: 5\n      centre_line: 10\n      centre:\n        →- collar\n"), `there is no piece "collar" to be centred`},
	{"matched stranger", onCloth("    width: 140\n    repeat:\n      along: 5\n      match:\n        →- hood\n"), `no piece has a match point "hood"`},
	{"flaw without place", onCloth("    width: 140\n    flaws:\n      →- {name: stain}\n"), `flaw "stain" has no place`},
	{"flaw's centre", onCloth("    width: 140\n    flaws:\n      - radius: 2\n        →at: [1]\n"), "must be two distances"},
	{"flaw's radius", onCloth("    width: 140\n    flaws:\n      - at: [1, 2]\n        →radius: 0\n"), "the radius is 0"},
	{"flaw backwards", onCloth("    width: 140\n    flaws:\n      - name: edge\n        →across: [5, 2]\n"), "the second must be the larger"},
	{"flaw's corner", onCloth("    width: 140\n    flaws:\n      - outline:\n          - [0, 0]\n          - [5, 0]\n          →- [5]\n"), "a corner must be two distances"},
	{"flaw of nothing", onCloth("    width: 140\n    flaws:\n      →- outline: [[0, 0], [5, 0], [9, 0]]\n"), "encloses nothing"},
	{"crossed flaw", onCloth("    width: 140\n    flaws:\n      →- outline: [[0, 0], [5, 5], [5, 0], [0, 9]]\n"), "crosses itself"},
	{"remnants and a width", onCloth("    width: 90\n    →remnants: [{length: 70, width: 90}]\n"), "has remnants and a width or length of its own"},
	{"remnant without width", onCloth("    remnants:\n      →- {length: 70}\n"), "remnant 1: the width is missing"},
	{"remnant twice", onCloth("    remnants:\n      - length: 70\n        →outline: [[0, 0], [70, 0], [0, 80]]\n"), "has an outline and a length or width"},
	{"remnant's corner", onCloth("    remnants:\n      - outline:\n          - [0, 0]\n          - [70, 0]\n          →- [0]\n"), "a corner must be two distances"},
	{"narrow remnants", onCloth("    →remnants: [{length: 70, width: 1}]\n"), ""},
	{"safety", onCloth("    width: 140\n    →safety: some\n"), "the safety"},
	{"minimum", onCloth("    width: 140\n    →minimum: some\n"), "the minimum"},
	{"unused", "job: a\nunits: cm\ngarments:\n  - {name: a, pieces: [{name: c, width: 4, height: 5}]}\ncloths:\n  - {name: shell, width: 140}\n  →- {name: lining, width: 140}\n", `nothing is cut from cloth "lining"`},
}

var moneyFaults = []refusedJob{
	{"no currency", onCloth("    width: 140\n    →price: 10\n"), "the price is in no currency"},
	{"price", priced("cloths:\n  - name: shell\n    width: 140\n    →price: cheap\n"), `cloth "shell": the price: `},
	{"price of a foot", priced("cloths:\n  - name: shell\n    width: 140\n    →price: 10 per cm\n"), "cloth is priced by the metre or the yard"},
	{"nameless offer", priced("cloths:\n  - name: shell\n    offers:\n      →- {width: 140, price: 10}\n"), "the offer has no name"},
	{"same offer", priced("cloths:\n  - name: shell\n    offers:\n      - {name: Stall, width: 140, price: 10}\n      - width: 90\n        price: 8\n        →name: stall\n"), "has two offers named"},
	{"offer without price", priced("cloths:\n  - name: shell\n    offers:\n      →- {name: Stall, width: 140}\n"), `offer "Stall" has no price`},
	{"offer without width", priced("cloths:\n  - name: shell\n    offers:\n      →- {name: Stall, price: 10}\n"), `offer "Stall": the width is missing`},
	{"offer's nap", priced("cloths:\n  - name: shell\n    offers:\n      - name: Stall\n        width: 140\n        price: 10\n        →nap: up\n"), `offer "Stall": the nap is "up"`},
	{"offer's step", priced("cloths:\n  - name: shell\n    offers:\n      - name: Stall\n        width: 140\n        price: 10\n        →step: -1\n"), `offer "Stall": the step is -1`},
	{"remnant without length", priced("cloths:\n  - name: shell\n    offers:\n      - name: Stall\n        width: 140\n        price: 10\n        →remnant_price: 5\n"), "has a remnant_price without the length"},
	{"remnant without price", priced("cloths:\n  - name: shell\n    offers:\n      →- {name: Stall, width: 140, price: 10, remnant: 2 m}\n"), "the remnant_price is missing"},
	{"date", priced("quote:\n  →date: tomorrow\n" + pricedCloth), `the date is "tomorrow"`},
	{"valid before its date", priced("quote:\n  date: 2026-05-01\n  →valid_until: 2026-04-01\n" + pricedCloth), "before its own date"},
	{"valid twice", priced("quote:\n  valid_until: 2026-05-01\n  →valid_days: 30\n" + pricedCloth), "has both valid_until and valid_days"},
	{"valid days", priced("quote:\n  →valid_days: many\n" + pricedCloth), `valid_days is "many"`},
	{"rate", priced("quote:\n  →rate: fair\n" + pricedCloth), "the rate: "},
	{"margin", priced("quote:\n  →margin: fair\n" + pricedCloth), "the margin: "},
	{"deposit", priced("quote:\n  →deposit: 120 %\n" + pricedCloth), "it cannot be more than the whole"},
	{"tax without rate", priced("quote:\n  →tax: {name: VAT}\n" + pricedCloth), "the tax has no rate"},
	{"tax rate", priced("quote:\n  tax:\n    →rate: high\n" + pricedCloth), "the rate of the tax: "},
	{"tax included", priced("quote:\n  tax:\n    rate: 21 %\n    →included: partly\n" + pricedCloth), "included is"},
	{"nameless notion", priced("quote:\n  notions:\n    →- {price: 3}\n" + pricedCloth), "the notion has no name"},
	{"notion without price", priced("quote:\n  notions:\n    →- {name: zip}\n" + pricedCloth), `the price of "zip" is missing`},
	{"count of a notion", priced("quote:\n  notions:\n    - name: zip\n      price: 3\n      →count: few\n" + pricedCloth), `the count of "zip"`},
	{"no making", priced("quote:\n  making:\n    →- {name: fitting}\n" + pricedCloth), "the making has neither hours nor a sum"},
	{"making twice", priced("quote:\n  making:\n    - hours: 2\n      rate: 20\n      →sum: 50\n" + pricedCloth), "the making has both hours and a sum"},
	{"hours", priced("quote:\n  making:\n    - rate: 20\n      →hours: long\n" + pricedCloth), `the hours are "long"`},
	{"no rate", priced("quote:\n  making:\n    →- hours: 2\n" + pricedCloth), "the rate of the making is missing"},
	{"sum", priced("quote:\n  making:\n    - →sum: much\n" + pricedCloth), "the sum of the making: "},
}
