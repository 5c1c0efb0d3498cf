package patternfile

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/pieces"
	"ellwand/testdata/sample"
)

// read gives the pieces of a text.
func read(t require.TestingT, text string) []pieces.Piece {
	file, err := Parse("x.yaml", []byte(text))
	require.NoError(t, err)
	all, _, err := file.OfSize("", Alone())
	require.NoError(t, err, text)
	return all
}

const skirt = `pieces_file: 1
name: Wrap skirt
units: cm
allowance: included 1.5
pieces:
  - name: waistband
    width: 8
    height: 74
    cut: {shell: 1, interfacing: 1}
  - name: front
    fold: centre front
    cut: {shell: 1}
    offsets:
      length: 60
      every: 10
      across: [28, 27.4, 26.5, 25.2, 23.5, 21.4, 19, 18.6]
      top: [0, 0.4, 1.2]
      bottom: [0, 0.1, 0.4, 0.9]
      edges: {left: centre front, right: side, top: waist, bottom: hem}
    allowance: {hem: included 4, seams: included 1.5}
    notches: [{edge: side, at: 20, match: hip}]
  - name: back
    cut: 2
    pair: yes
    outline:
      - {corner: [0, 0], edge: hem, arc: 0.5}
      - {corner: [28, 1], edge: side}
      - {curve: [26, 40]}
      - {corner: [20, 61], edge: waist}
      - {corner: [0, 60], edge: centre back}
    allowance: unknown
seams:
  - {name: side, of: {back: side}, to: {front: side}}
`

func TestRead(t *testing.T) {
	file, err := Parse("x.yaml", []byte(skirt))
	require.NoError(t, err)
	all, sewn, err := file.OfSize("", Alone())
	require.NoError(t, err)
	require.Len(t, all, 4)
	assert.Equal(t, []string{"interfacing", "shell", "shell", ""},
		[]string{all[0].Cloth, all[1].Cloth, all[2].Cloth, all[3].Cloth})
	front := all[2]
	assert.Equal(t, "centre front", front.Fold.String())
	assert.Equal(t, 2., front.Accuracy, "that of readings of a tape")
	box := front.Boundary(0.01).Bound()
	assert.InDelta(t, 280, box.Max[0], 1e-6)
	assert.InDelta(t, 612, box.Max[1], 1e-6)
	back := all[3]
	assert.Zero(t, back.Accuracy)
	for _, e := range back.Edges {
		assert.True(t, e.Unknown)
	}
	require.Len(t, sewn, 1)
	assert.True(t, sewn[0].AtCut)
	assert.InDelta(t, 600, sewn[0].Length, 20)
}

// A piece of 60 cm that is pieced together once is two lengths of 30, of each of which as
// many are cut as of the piece; of a pair each is cut for both sides.
func TestJoinedPieceIsCutInAllItsLengths(t *testing.T) {
	tests := []struct {
		cut   string
		count int
		pair  bool
	}{
		{"", 2, false},
		{"cut: 2, ", 4, false},
		{"cut: 2, pair: yes, ", 4, true},
		{"cut: {shell: 1}, ", 2, false},
	}
	for _, test := range tests {
		for shape, text := range map[string]string{
			"a rectangle": "width: 8, height: 60", "an outline": "outline: [[0, 0], [8, 0], [8, 60], [0, 60]], allowance: 1",
		} {
			file, err := Parse("x.yaml", []byte("pieces_file: 1\nunits: cm\npieces:\n  - {name: belt, joins: 1, "+test.cut+text+
				"}\n"))
			require.NoError(t, err)
			all, _, err := file.OfSize("", Alone())
			require.NoError(t, err)
			require.Len(t, all, 1)
			assert.Equal(t, test.count, all[0].Cut, "%s %s", shape, test.cut)
			assert.Equal(t, test.pair, all[0].Pair, "%s %s", shape, test.cut)
			box := all[0].Boundary(0.01).Bound()
			assert.InDelta(t, 300, box.Max[1]-box.Min[1], 1e-6)
		}
	}
}

func TestRefused(t *testing.T) {
	const begin, piece = "pieces_file: 1\nunits: cm\npieces:\n", "pieces_file: 1\nunits: cm\npieces:\n  - name: front\n"
	tests := []struct{ name, text, want string }{
		{"another version", "pieces_file: 2\nunits: cm\npieces: []", "x.yaml:1: this is a file of pieces of version \"2\""},
		{"no units", "pieces_file: 1\npieces: []", "units: "},
		{"an unknown key", begin + "  - {nam: a}", `x.yaml:4: unknown key "nam" in pieces, entry 1; did you mean name?`},
		{"no shape", piece, `x.yaml:4: piece "front" has no shape`},
		{"two shapes", piece + "    width: 3\n    height: 3\n    outline: [[0, 0], [1, 0], [0, 1]]", "has a shape twice"},
		{"no allowance", piece + "    outline: [[0, 0], [10, 0], [0, 10]]",
			`does not say of its edge "edge 1" whether the outline includes`},
		{"a wrong edge", piece + "    allowance: {sid: 1, seams: 1}\n    outline:\n      - {corner: [0, 0], edge: " +
			"side}\n      - [10, 0]\n      - [0, 10]",
			`has no edge "sid" to give an allowance to; did you mean side?`},
		{"a crossing", piece + "    allowance: 1\n    outline: [[0, 0], [10, 10], [10, 0], [0, 10]]",
			"crosses or touches itself"},
		{"a point twice", piece + "    allowance: 1\n    outline: [[0, 0], [10, 0], [10, 0], [0, 10]]",
			"x.yaml:6: piece \"front\": point 3: it lies on the point before it"},
		{"one number", piece + "    allowance: 1\n    outline: [[0, 0], [10], [0, 10]]", "point 2: a point has two numbers"},
		{"three controls", piece + "    allowance: 1\n    outline:\n      - {corner: [0, 0], bezier: [[1, 1], [2, 2], " +
			"[3, 3]]}\n      - [10, 0]\n      - [0, 10]",
			"x.yaml:7: piece \"front\": point 1: a Bezier curve has two control points"},
		{"corner and curve", piece + "    allowance: 1\n    outline: [{corner: [0, 0], curve: [1, 1]}]",
			"is a corner: [x, y] or a curve"},
		{"too few readings", piece + "    allowance: unknown\n    offsets: {length: 60, every: 10, across: [28, 27, 26]}",
			`across: from the lower corner, at 0 cm, to the upper, at 60 cm, there are 7 readings (at 0 cm, 10 cm, ... 50 cm ` +
				`and 60 cm), but it has 3`},
		{"no step", piece + "    allowance: unknown\n    offsets: {length: 60, across: [28, 27, 26]}",
			"it is not said how far apart the readings are"},
		{"across the fold", piece + "    allowance: unknown\n    fold: side\n    outline:\n      - {corner: [0, 0], " +
			"edge: hem}\n      - {corner: [10, 0], edge: side}\n      - [5, 30]\n      - [0, 30]",
			"the fold edge runs along the warp"},
		{"a notch off its edge", piece + "    width: 3\n    height: 4\n    notches: [{edge: top, at: 5}]",
			"lies 5 cm along the edge \"top\", which is only 3 cm long"},
		{"an odd pair", piece + "    width: 3\n    height: 4\n    pair: yes", "is a pair, but 1 are cut"},
		{"twice", begin + "  - {name: a, width: 1, height: 2}\n  - {name: A, width: 1, height: 2}",
			`x.yaml:5: two pieces are named "A"`},
		{"a seam of no piece", piece + "    width: 3\n    height: 4\nseams: [{name: side, of: {front: left}, to: " +
			"{bak: left}}]",
			`seam side: there is no piece "bak"`},
		{"kilometres", piece + "    allowance: 1\n    outline: [[0, 0], [5000000, 0], [0, 10]]",
			`x.yaml:6: piece "front" is 5000000 cm over all; a piece is at most 10000 cm`},
		{"an arc of kilometres", piece + "    allowance: 1\n    outline: [{corner: [0, 0], arc: 400000}, [50, 0], [0, 10]]",
			`over all; a piece is at most 10000 cm: look at the units of its numbers, and at its arcs`},
		{"far away", piece + "    allowance: 1\n    outline: [[9000000, 0], [9000050, 0], [9000000, 10]]",
			`lies 9000050 cm away from [0, 0]`},
		{"not a number", piece + "    allowance: 1\n    outline: [[0, 0], [.nan, 0], [0, 10]]", "point 2: "},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			file, err := Parse("x.yaml", []byte(tt.text))
			if err == nil {
				_, _, err = file.OfSize("", Alone())
			}
			assert.ErrorContains(t, err, tt.want)
		})
	}
}

func written(t require.TestingT, all []pieces.Piece) string {
	var out bytes.Buffer
	require.NoError(t, Write(&out, "", all))
	return out.String()
}

// same says that pieces are the same to 0.001 mm.
func same(t require.TestingT, want, got pieces.Piece) {
	require.Len(t, got.Edges, len(want.Edges), want.Name)
	for i, e := range want.Edges {
		g := got.Edges[i]
		require.Equal(t, e.Name, g.Name)
		require.InDelta(t, e.Path.Length(), g.Path.Length(), 0.001, "%s %s", want.Name, e.Name)
		for k := range 21 {
			at := e.Path.Length() * float64(k) / 20
			p, q := e.Path.At(at), g.Path.At(at)
			require.LessOrEqual(t, math.Hypot(p[0]-q[0], p[1]-q[1]), 0.001, "%s %s at %v", want.Name, e.Name, at)
		}
		require.InDelta(t, e.Allowance, g.Allowance, 0.001)
		require.InDelta(t, e.Included, g.Included, 0.001)
		require.Equal(t, e.Unknown, g.Unknown)
		require.Equal(t, e.Hem, g.Hem)
	}
	require.Equal(t, []any{want.Name, want.Size, want.Cloth, want.Kind, want.Cut, want.Pair, want.Fold, want.Grain.Lie},
		[]any{got.Name, got.Size, got.Cloth, got.Kind, got.Cut, got.Pair, got.Fold, got.Grain.Lie})
	require.Len(t, got.Notches, len(want.Notches))
	for i, n := range want.Notches {
		require.InDelta(t, n.At, got.Notches[i].At, 0.001)
		n.At = got.Notches[i].At
		require.Equal(t, n, got.Notches[i])
	}
	require.Len(t, got.Darts, len(want.Darts))
	require.Len(t, got.Marks, len(want.Marks))
	for i, m := range want.Marks {
		require.Equal(t, m.Name, got.Marks[i].Name)
		require.InDelta(t, m.Path.Length(), got.Marks[i].Path.Length(), 0.001)
	}
}

// Whatever is read is written so that it reads back the same, and the second time
// to the last byte.
func roundTrip(t require.TestingT, all []pieces.Piece) {
	first := written(t, all)
	again := read(t, first)
	require.Len(t, again, len(all), first)
	for i := range all {
		same(t, all[i], again[i])
	}
	require.Equal(t, first, written(t, again))
}

func TestRoundTrip(t *testing.T) { roundTrip(t, read(t, skirt)) }

func TestRoundTripOfDrawnPieces(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		number := func(from, to float64, name string) float64 { return rapid.Float64Range(from, to).Draw(t, name) }
		var text strings.Builder
		text.WriteString("pieces_file: 1\nunits: mm\npieces:\n  - name: panel\n    outline:\n")
		n := rapid.IntRange(3, 9).Draw(t, "points")
		for i := range n {
			angle := 2 * math.Pi * (float64(i) + number(0, 0.6, "turn")) / float64(n)
			reach := number(100, 400, "reach")
			kind, rest := "corner", ""
			switch rapid.IntRange(0, 3).Draw(t, "way") {
			case 1:
				rest = ", arc: " + numberText(number(-10, 10, "rise"))
			case 2:
				rest = ", edge: side " + string(rune('a'+i))
			}
			text.WriteString("      - {" + kind + ": [" + numberText(reach*math.Cos(angle)) + ", " +
				numberText(reach*math.Sin(angle)) + "]" + rest + "}\n")
		}
		text.WriteString("    allowance: " +
			rapid.SampledFrom([]string{"15", "unknown", "included 2.5"}).Draw(t, "allowance") + "\n")
		file, err := Parse("x.yaml", []byte(text.String()))
		require.NoError(t, err, text.String())
		all, _, err := file.OfSize("", Alone())
		if err != nil {
			t.Skip("no sound outline")
		}
		roundTrip(t, all)
	})
}

func numberText(x float64) string { return number(x) }

// Whatever is typed is read or refused with a sentence, and what is read is written
// so that it reads back.
func FuzzParse(f *testing.F) {
	sample.MinimizeBriefly()
	f.Add([]byte(skirt))
	f.Add([]byte("pieces_file: 1\nunits: in\npieces: [{name: a, width: 3 1/2, height: 2, fold: left}]"))
	f.Add([]byte("pieces_file: 1\nunits: mm\npieces: [{name: a, outline: [[0, 0], [9, 0], [0, 9]], allowance: add, " +
		"cut: {x: 3}}]"))
	f.Fuzz(func(t *testing.T, text []byte) {
		file, err := Parse("x.yaml", text)
		if err != nil {
			require.NotEmpty(t, err.Error())
			return
		}
		all, _, err := file.OfSize("", Alone())
		if err != nil {
			require.NotEmpty(t, err.Error())
			return
		}
		first := written(t, all)
		again, err := Parse("x.yaml", []byte(first))
		require.NoError(t, err, first)
		_, _, err = again.OfSize("", Alone())
		require.NoError(t, err, first)
	})
}
