package page

import (
	"encoding/json"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/page/desk"
	"ellwand/fabric/remnant"
)

// A job that has something of every kind that is given up of single pieces.
const harmed = `job: Wren
units: cm
currency: EUR
size: 14
table: women
garments:
  - name: blouse
    bodice: {fit: easy, back: fold, below_waist: 24}
    sleeve: {reach: short}
    parts:
      - {kind: neck facing}
      - {kind: waistband, name: band, length: 80}
    pieces:
      - {name: belt, width: 8, height: 60, cut: 2} # to tie
      - {name: yoke, width: 20, height: 15, fold: left}
      - {name: flap, outline: [[0, 0], [20, 0], [20, 30], {corner: [0, 30], edge: middle}], fold: middle,
         allowance: included 1 cm}
      - {name: guard, width: 10, height: 12, kind: facing}
cloths:
  - {name: shell, width: 150, price: 12}
`

// remedyFor what is given up of the first cloth of a job.
func remedyFor(t *testing.T, text, other string, gives ...remnant.Given) []desk.Action {
	t.Helper()
	file, err := job.Parse("job.yaml", []byte(text))
	require.NoError(t, err)
	work, err := file.Resolve()
	require.NoError(t, err)
	r := remedy{path: "job.yaml", text: text, file: file, work: work, other: other}
	return r.actionsFor(gives)
}

func of(what remnant.Sacrifice, pieces ...string) remnant.Given {
	return remnant.Given{Of: what, Pieces: pieces}
}

// Each kind of change is written where the job has a key for it, and nothing else changes.
func TestRemediesAreWrittenInTheJob(t *testing.T) {
	const lining = "  - {name: lining, width: 140}\n"
	lined := strings.Replace(harmed+lining, "kind: facing}", "kind: facing}\n"+
		"      - {name: pad, width: 5, height: 5, cloth: lining}", 1)
	faced := strings.Replace(lined, "    pieces:\n", "    cut_from: {shell: [neck facing back, sleeve]}\n    pieces:\n", 1)
	tests := []struct {
		name, job, other string
		gives            remnant.Given
		old, new         string // empty where it cannot be written
	}{
		{"own on the cross", harmed, "", of(remnant.OnCrossGrain, "belt"), "cut: 2} # to", "cut: 2, grain: cross} # to"},
		{"own half on the cross", harmed, "", of(remnant.OnCrossGrain, "yoke"), "{name: yoke, width: 20, height: 15, " +
			"fold: left}", "{name: yoke, width: 40, height: 15, grain: cross}"},
		{"half of a shape on the cross", harmed, "", of(remnant.OnCrossGrain, "flap"), "", ""},
		{"a strip on the cross", harmed, "", of(remnant.OnCrossGrain, "band"), "length: 80}",
			"length: 80, grain: lengthwise}"},
		{"a drafted piece on the cross", harmed, "", of(remnant.OnCrossGrain, "sleeve"), "", ""},
		{"own in two", harmed, "", of(remnant.CutInTwo, "belt"), "cut: 2} # to", "cut: 2, joins: 1} # to"},
		{"own that is joined in two", strings.Replace(harmed, "cut: 2}", "cut: 2, joins: 1}", 1), "",
			of(remnant.CutInTwo, "belt"), "joins: 1", "joins: 3"},
		{"a strip in two", harmed, "", of(remnant.CutInTwo, "band"), "length: 80}", "length: 80, joins: 1}"},
		{"a drafted back", harmed, "", of(remnant.SeamForFold, "back bodice"), "back: fold", "back: seam"},
		{"a drafted front", harmed, "", of(remnant.SeamForFold, "front bodice"), "", ""},
		{"own half", harmed, "", of(remnant.SeamForFold, "yoke"), "height: 15, fold: left}",
			"height: 15, cut: 2, pair: yes}"},
		{"own half that says its allowance", harmed, "", of(remnant.SeamForFold, "flap"),
			"fold: middle,\n         allowance: included 1 cm}",
			"allowance: {middle: add, seams: included 1 cm}, cut: 2, pair: yes}"},
		{"own from a cloth of the job", lined, "lining", of(remnant.OtherCloth, "guard"), "kind: facing}\n",
			"kind: facing, cloth: lining}\n"},
		{"drafted ones from a cloth of the job", lined, "lining", of(remnant.OtherCloth, "neck facing back",
			"neck facing front"), "    pieces:\n", "    cut_from:\n      lining: [neck facing back, neck facing front]\n" +
			"    pieces:\n"},
		{"one that was listed", faced, "lining", of(remnant.OtherCloth, "neck facing back"),
			"{shell: [neck facing back, sleeve]}", "{shell: [sleeve], lining: [neck facing back]}"},
		{"from a new cloth", harmed, "other cloth", of(remnant.OtherCloth, "guard"), "kind: facing}\ncloths:\n" +
			"  - {name: shell, width: 150, price: 12}\n", "kind: facing, cloth: other cloth}\ncloths:\n  - {name: shell, " +
			"width: 150, price: 12}\n  - name: other cloth\n    width: 150 cm\n"},
		{"from no cloth", harmed, "", of(remnant.OtherCloth, "guard"), "", ""},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			do := remedyFor(t, test.job, test.other, test.gives)
			out, err := desk.TextAfter(test.job, do)
			require.NoError(t, err)
			if test.new == "" {
				assert.Empty(t, do)
				return
			}
			assert.Equal(t, strings.Replace(test.job, test.old, test.new, 1), out)
		})
	}
}

// Two things that are given up at once are one step; where one of them cannot be written,
// nothing is.
func TestRemediesOfTwoThings(t *testing.T) {
	do := remedyFor(t, harmed, "", of(remnant.OnCrossGrain, "belt"), of(remnant.CutInTwo, "belt"))
	out, err := desk.TextAfter(harmed, do)
	require.NoError(t, err)
	assert.Equal(t, strings.Replace(harmed, "cut: 2} # to", "cut: 2, grain: cross, joins: 1} # to", 1), out)
	assert.Empty(t, remedyFor(t, harmed, "", of(remnant.OnCrossGrain, "belt"), of(remnant.OnCrossGrain, "sleeve")))
}

const narrow = `job: Narrow # to be kept
units: cm
garments:
  - name: bag
    pieces:
      - {name: belt, width: 8, height: 80}
      - {name: side, width: 20, height: 30}
cloths:
  - {name: shell, width: 140, hand_laying: none, straighten: 0, price: 12}
currency: EUR
`

// What makes a piece of cloth enough is done as one step, after which it is enough, and
// which can be gone back; then it is taken as the cloth of the job.
func TestRemedyMakesItEnough(t *testing.T) {
	v := newVisit(t).enter()
	require.NoError(t, os.WriteFile(v.folder+"/blouse.yaml", []byte(narrow), 0o600))
	const piece = `{"cloth":"shell","width":"54cm","length":"80cm"}`
	act := func(base float64, do any) float64 {
		t.Helper()
		body, err := json.Marshal(map[string]any{"base": base, "do": do})
		require.NoError(t, err)
		return v.told("POST", "/api/jobs/blouse.yaml/act", string(body))["revision"].(float64)
	}
	revision := v.told("GET", "/api/jobs/blouse.yaml", "")["revision"].(float64)
	short := v.told("POST", "/api/jobs/blouse.yaml/remnant", piece)
	require.NotEqual(t, "yes", short["answer"])
	var inTwo map[string]any
	for _, change := range short["changes"].([]any) {
		if one := change.(map[string]any); strings.HasPrefix(one["label"].(string), "piece the belt") {
			inTwo = one
		}
	}
	require.NotNil(t, inTwo, "%v", short["changes"])
	revision = act(revision, inTwo["do"])
	assert.Equal(t, strings.Replace(narrow, "height: 80}", "height: 80, joins: 1}", 1), v.file())
	enough := v.told("POST", "/api/jobs/blouse.yaml/remnant", piece)
	assert.Equal(t, "yes", enough["answer"])
	changed := v.file()
	revision = act(revision, enough["take"])
	taken := strings.Replace(changed, "width: 140,", "width: 54cm,", 1)
	assert.Equal(t, strings.Replace(taken, "price: 12}", "price: 12, length: 80cm}", 1), v.file())
	revision = act(revision, []any{map[string]any{"undo": map[string]any{}}})
	assert.Equal(t, changed, v.file())
	act(revision, []any{map[string]any{"undo": map[string]any{}}})
	assert.Equal(t, narrow, v.file())
}
