package edit

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/strict"
)

const handwritten = `# My blouse
job: Wren     # the name
units: cm

body:   # taken in May
  bust_girth: 94       # over the vest
  waist_girth: "76"
  # hips to come

garments:
  - name: blouse
    # close, since she likes it
    bodice: {fit: easy, back: seam}
    sleeve: {}
    parts:
    - kind: collar
    - kind: cuff   # two
cloths:
  - name: shell
    widths: [115, 140]
quote:
  terms:
    - |
      Half on order,
      half on collection.
    - ` + "second\n"

// path of keys and indices.
func path(steps ...any) strict.Path {
	var out strict.Path
	for _, step := range steps {
		if key, is := step.(string); is {
			out = out.Key(key)
		} else {
			out = out.Entry(step.(int))
		}
	}
	return out
}

func TestSetKeepsAllElse(t *testing.T) {
	for name, test := range map[string]struct {
		at       strict.Path
		value    Value
		old, new string
	}{
		"a plain value":          {path("body", "bust_girth"), Text("96,5"), "bust_girth: 94 ", "bust_girth: 96,5 "},
		"a value in marks":       {path("body", "waist_girth"), Text("30 1/8"), `waist_girth: "76"`, "waist_girth: 30 1/8"},
		"one that needs marks":   {path("job"), Text("yes: # no"), "job: Wren ", `job: "yes: # no" `},
		"a word that YAML reads": {path("job"), Text("null"), "job: Wren ", `job: "null" `},
		"in braces":              {path("garments", 0, "bodice", "fit"), Text("close"), "{fit: easy,", "{fit: close,"},
		"a key more in braces": {path("garments", 0, "bodice", "hip"), Text("a, b"), "back: seam}",
			`back: seam, hip: "a, b"}`},
		"a key in empty braces": {path("garments", 0, "sleeve", "length"), Text("60"), "sleeve: {}",
			"sleeve:\n      length: 60"},
		"an entry in brackets": {path("cloths", 0, "widths", 2), Text("150"), "[115, 140]", "[115, 140, 150]"},
		"a key more":           {path("body", "hip_girth"), Text("100"), "\"76\"\n", "\"76\"\n  hip_girth: 100\n"},
		"a mapping more": {path("garments", 0, "skirt", "length"), Text("60"), "# two\n",
			"# two\n    skirt:\n      length: 60\n"},
		"an entry more": {path("garments", 0, "parts", 2, "kind"), Text("pocket"), "# two\n",
			"# two\n    - kind: pocket\n"},
		"a list more": {path("wearers", 0, "name"), Text("Imke"), "    - second\n",
			"    - second\nwearers:\n  - name: Imke\n"},
		"a text in a block": {path("quote", "terms", 0), Text("Cash."),
			"|\n      Half on order,\n      half on collection.", "Cash."},
		"a whole entry": {path("garments", 0, "parts", 1), Value{Keys: []Pair{{"kind", Text("facing")},
			{"depth", Text("5")}}}, "kind: cuff ", "kind: facing\n      depth: 5 "},
		"a mapping for a mapping": {path("garments", 0, "sleeve"), Value{Keys: []Pair{{"length", Text("60")}}}, "sleeve: {}",
			"sleeve:\n      length: 60"},
	} {
		t.Run(name, func(t *testing.T) {
			require.Contains(t, handwritten, test.old)
			got, err := Set(handwritten, test.at, test.value, nil)
			require.NoError(t, err)
			assert.Equal(t, replaceOnce(handwritten, test.old, test.new), got)
		})
	}
}

func TestUnsetKeepsAllElse(t *testing.T) {
	for name, test := range map[string]struct {
		at       strict.Path
		old, new string
	}{
		"a value": {path("body", "bust_girth"), "  bust_girth: 94       # over the vest\n", ""},
		"the first key": {path("garments", 0, "name"), "  - name: blouse\n    # close, since she likes it\n    bodice",
			"  # close, since she likes it\n  - bodice"},
		"from braces":        {path("garments", 0, "bodice", "fit"), "{fit: easy, back", "{back"},
		"the last of braces": {path("garments", 0, "bodice", "back"), ", back: seam}", "}"},
		"an entry":           {path("garments", 0, "parts", 0), "    - kind: collar\n", ""},
		"the only key":       {path("garments", 0, "parts", 1, "kind"), "    - kind: cuff   # two\n", ""},
		"all of a list": {path("quote"), handwritten[len(handwritten)-len("quote:\n  terms:\n    - |\n      Half on "+
			"order,\n      half on collection.\n    - second\n"):], ""},
		"nothing": {path("client"), "job", "job"},
	} {
		t.Run(name, func(t *testing.T) {
			require.Contains(t, handwritten, test.old)
			got, err := Unset(handwritten, test.at)
			require.NoError(t, err)
			assert.Equal(t, replaceOnce(handwritten, test.old, test.new), got)
		})
	}
}

func TestKeysStandInTheirOrder(t *testing.T) {
	order := func(strict.Path) []string { return []string{"job", "client", "units", "body"} }
	got, err := Set("job: a\nunits: cm\n", path("client"), Text("Oda"), order)
	require.NoError(t, err)
	assert.Equal(t, "job: a\nclient: Oda\nunits: cm\n", got)
	got, err = Set("units: cm\n", path("job"), Text("b"), order)
	require.NoError(t, err)
	assert.Equal(t, "job: b\nunits: cm\n", got)
}

func TestLinesEndAsTheyDid(t *testing.T) {
	got, err := Set("job: a\r\nbody:\r\n  bust_girth: 90\r\n", path("body", "hip_girth"), Text("100"), nil)
	require.NoError(t, err)
	assert.Equal(t, "job: a\r\nbody:\r\n  bust_girth: 90\r\n  hip_girth: 100\r\n", got)
	got, err = Set("\ufeffjob: a", path("job"), Text("ü"), nil)
	require.NoError(t, err)
	assert.Equal(t, "\ufeffjob: ü", got)
}

func TestWhatHasNoPlaceIsRefused(t *testing.T) {
	for _, text := range []string{"job: [", "job: a\nbody: 7\n", "- a\n"} {
		_, err := Set(text, path("body", "bust_girth"), Text("1"), nil)
		assert.ErrorIs(t, err, ErrNoPlace, text)
	}
}

func TestEmptyTextIsBegun(t *testing.T) {
	for _, text := range []string{"", "# nothing yet\n"} {
		got, err := Set(text, path("job"), Text("a"), nil)
		require.NoError(t, err)
		assert.Equal(t, text+"job: a\n", got)
	}
}

// replaceOnce replaces what stands once in a text.
func replaceOnce(text, old, with string) string {
	before, after, _ := strings.Cut(text, old)
	return before + with + after
}
