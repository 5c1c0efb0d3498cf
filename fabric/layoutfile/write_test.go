package layoutfile_test

import (
	"bytes"
	"encoding/json"
	"io"
	"testing"

	"github.com/paulmach/orb"
	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/layoutfile"
	"ellwand/fabric/plan"
	"ellwand/pieces"
	"ellwand/pieces/marks"
)

// schema is compiled by a reader that is not ours.
func schema(t *testing.T) *jsonschema.Schema {
	t.Helper()
	var text bytes.Buffer
	require.NoError(t, layoutfile.WriteSchema(&text))
	document, err := jsonschema.UnmarshalJSON(&text)
	require.NoError(t, err)
	compiler := jsonschema.NewCompiler()
	require.NoError(t, compiler.AddResource("layout.schema.json", document))
	out, err := compiler.Compile("layout.schema.json")
	require.NoError(t, err)
	return out
}

// apron is a half piece on the fold, a pair of pockets and a single yoke on
// the cross grain, matched at "side".
func apron() []pieces.Piece {
	front := pieces.Rectangle("front", 300, 500)
	front.Fold = front.Edges[3].Name
	front.Notches = []pieces.Notch{{Edge: front.Edges[1].Name, At: 200, Count: 1, Match: marks.Called("side")}}
	pocket := pieces.Rectangle("pocket", 150, 200)
	pocket.Cut, pocket.Pair = 2, true
	pocket.Notches = []pieces.Notch{{Edge: pocket.Edges[1].Name, At: 50, Count: 1, Match: marks.Called("side")}}
	yoke := pieces.Rectangle("yoke", 90, 400)
	yoke.Cut, yoke.Grain.Lie = 2, pieces.CrossGrain
	return []pieces.Piece{front, pocket, yoke}
}

func required(t *testing.T, c cloth.Cloth, lays ...lay.Kind) []lay.Plan {
	t.Helper()
	got, err := plan.Require(t.Context(), c, apron(), plan.Options{Passes: 20, Seed: 3, Workers: 1, Lays: lays})
	require.NoError(t, err)
	return got.Lays
}

// Every layout written keeps the schema and says what was asked and laid.
func TestWrite(t *testing.T) {
	kept := schema(t)
	written := 0
	for name, c := range map[string]cloth.Cloth{
		"plain": {Name: "shell", Width: 1020, Selvedge: 10, PurchaseStep: 100, Straighten: 30,
			HandLaying: cloth.UsualHandLaying,
			Shrinkage:  cloth.Polyester.Shrinkage(false), Safety: cloth.Addition{Length: 20}},
		"striped": {Name: "shell", Width: 1020, Selvedge: 10,
			Repeat: cloth.Repeat{Along: 60, Across: 40, Centred: []string{"front"}, CentreLine: 15}},
		"flawed": {Name: "shell", Width: 1020, Selvedge: 10,
			Flaws: []cloth.Flaw{cloth.RoundFlaw("stain", orb.Point{200, 300}, 20), cloth.BandFlaw("faded edge", 0, 15)}},
		"washed": {Name: "shell", Width: 1020, Selvedge: 10, Nap: cloth.OneWay, Gap: 3, Tilt: 0.02,
			Shrinkage: cloth.Shrinkage{Warp: 0.05, Weft: 0.02, CutFirst: true}},
	} {
		for _, plan := range required(t, c) {
			if !plan.Possible() {
				continue
			}
			t.Run(name+" "+plan.Lay.String(), func(t *testing.T) {
				var text bytes.Buffer
				require.NoError(t, layoutfile.Write(&text, plan))
				value, err := jsonschema.UnmarshalJSON(bytes.NewReader(text.Bytes()))
				require.NoError(t, err)
				require.NoError(t, kept.Validate(value))
				var file layoutfile.File
				strict := json.NewDecoder(&text)
				strict.DisallowUnknownFields()
				require.NoError(t, strict.Decode(&file))
				agrees(t, plan, file)
			})
			written++
		}
	}
	assert.GreaterOrEqual(t, written, 10)
}

func agrees(t *testing.T, plan lay.Plan, file layoutfile.File) {
	t.Helper()
	assert.Equal(t, layoutfile.Version, file.Version)
	assert.Equal(t, "shell", file.Cloth)
	assert.Equal(t, plan.Lay.String(), file.Lay)
	assert.Equal(t, plan.Width, file.Width)
	assert.Equal(t, plan.Length, file.Length)
	assert.Equal(t, plan.Taken, file.Taken)
	if assert.NotNil(t, file.Amount) {
		a := *file.Amount
		assert.InDelta(t, plan.Buy, plan.Taken+a.HandLaying+a.Straighten+a.Shrinkage+a.Safety+a.Rounding, 1e-6)
		assert.InDelta(t, plan.Cloth.HandLaying.Share*plan.Taken, a.HandLaying, 1e-9)
		assert.InDelta(t, plan.Cloth.Straighten, a.Straighten, 1e-9)
	}
	assert.Len(t, file.Asked, 3)
	assert.Len(t, file.Pieces, len(plan.Pieces))
	require.Len(t, file.Parts, len(plan.Beds))
	for _, part := range file.Parts {
		assert.NotEmpty(t, part.Plies)
		assert.LessOrEqual(t, part.End, file.Length+1e-9)
	}
	for _, laid := range file.Pieces {
		assert.Equal(t, laid.Name, file.Asked[laid.Piece].Name)
		assert.NotEmpty(t, laid.Turnings)
	}
	if !plan.Cloth.Repeat.IsPlain() {
		require.NotNil(t, file.Repeat)
		require.Len(t, file.Repeat.Matches, len(plan.Matches))
		for i, match := range plan.Matches {
			assert.Len(t, file.Repeat.Matches[i].Points, len(match.Pieces), "%s", match.Name)
		}
	}
}

func TestImpossiblePlansAreRefused(t *testing.T) {
	plan := lay.Plan{Lay: lay.FoldedAlong, Why: []lay.Reason{{Of: lay.OddCount, Piece: "yoke", Count: 1}}}
	assert.ErrorContains(t, layoutfile.Write(io.Discard, plan), "it is not possible")
}

// The schema refuses a file with a key too many or too few, and words that it
// does not know.
func TestSchemaRefuses(t *testing.T) {
	kept := schema(t)
	plan := required(t, cloth.Cloth{Name: "shell", Width: 1020, Selvedge: 10}, lay.Open)[0]
	for name, spoil := range map[string]func(map[string]any){
		"a key too many": func(f map[string]any) { f["plys"] = 1 },
		"no pieces":      func(f map[string]any) { delete(f, "pieces") },
		"an unknown nap": func(f map[string]any) { f["nap"] = "up" },
		"a point of three": func(f map[string]any) {
			f["pieces"].([]any)[0].(map[string]any)["outline"] = []any{[]any{1, 2, 3}}
		},
	} {
		t.Run(name, func(t *testing.T) {
			var text bytes.Buffer
			require.NoError(t, layoutfile.Write(&text, plan))
			value, err := jsonschema.UnmarshalJSON(&text)
			require.NoError(t, err)
			require.NoError(t, kept.Validate(value))
			spoil(value.(map[string]any))
			assert.Error(t, kept.Validate(value))
		})
	}
}
