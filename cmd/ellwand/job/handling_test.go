package job

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
)

const handledJob = `job: cuffs
units: cm
garments:
  - name: blouse
    pieces: [{name: cuff, width: 24, height: 10, cut: 2, pair: yes}]
cloths:
  - name: shell
    width: 1.50 m
    gap: 2 mm
    tilt: 2 %
    alike_both_sides: yes
    one_way_pieces: [cuff]
    shrinkage: {warp: 4 %, weft: "2,5", cut_first: yes}
    repeat: {along: 9, across: 6, centre: [cuff], centre_line: 12}
    flaws:
      - {name: stain, at: [40, 30], radius: 3}
      - {name: faded edge, across: [0, 5]}
      - {name: shaded, along: [100, 1.2 m]}
      - {name: patch, along: [10, 20], across: [10, 30]}
      - {name: tear, outline: [[1, 1], [5, 1], [1, 4]]}
`

func TestHandling(t *testing.T) {
	file, err := Parse("cuffs.yaml", []byte(handledJob))
	require.NoError(t, err)
	work, err := file.Resolve()
	require.NoError(t, err)
	c := work.Cloths[0].Cloth
	assert.Equal(t, 2.0, c.Gap)
	assert.InDelta(t, 0.02, c.Tilt, 1e-12)
	assert.True(t, c.Alike)
	assert.Equal(t, []string{"cuff"}, c.OneWayPieces)
	assert.InDelta(t, 0.04, c.Shrinkage.Warp, 1e-12)
	assert.InDelta(t, 0.025, c.Shrinkage.Weft, 1e-12)
	assert.True(t, c.Shrinkage.CutFirst)
	assert.Equal(t, 90.0, c.Repeat.Along)
	assert.Equal(t, 120.0, c.Repeat.CentreLine)
	require.Len(t, c.Flaws, 5)
	assert.InDelta(t, 400, c.Flaws[0].Outline.Bound().Center()[0], 1e-9)
	assert.Equal(t, 1200.0, c.Flaws[2].Outline.Bound().Max[0])
	assert.Equal(t, orb.Point{200, 300}, c.Flaws[3].Outline.Bound().Max)
	assert.Equal(t, "tear", c.Flaws[4].Name)
	assert.NoError(t, compiled(t).Validate(instanceOf(t, []byte(handledJob))))
}

func TestHandlingRefuses(t *testing.T) {
	const head = "job: a\nunits: cm\ngarments:\n  - name: b\n    pieces: [{name: c, width: 5, height: " +
		"5}]\ncloths:\n  - name: shell\n    width: 90\n    "
	for _, tt := range []struct{ name, text, want string }{
		{"tilt", "tilt: 9 %", `x.yaml:9: cloth "shell": the tilt is "9 %"; it must be a percentage from 0 to 5`},
		{"shrinkage", "shrinkage: {warp: much}", `the shrinkage of the warp is "much"; it must be a percentage`},
		{"repeat", "repeat: {match: [side]}", `has a repeat without a length`},
		{"centre", "repeat: {across: 5, centre: [c]}", `on which line is the centre to lie?`},
		{"no place", "flaws: [{name: stain}]", `flaw "stain" has no place`},
		{"no radius", "flaws: [{name: stain, at: [1, 2]}]", `flaw "stain": the radius is missing`},
		{"one distance", "flaws: [{name: stain, at: [1], radius: 2}]", `must be two distances`},
		{"backwards", "flaws: [{name: edge, across: [5, 2]}]", `the second must be the larger`},
		{"negative gap", "gap: -1", `the gap between pieces`},
	} {
		t.Run(tt.name, func(t *testing.T) {
			file, err := Parse("x.yaml", []byte(head+tt.text+"\n"))
			if err == nil {
				_, err = file.Resolve()
			}
			assert.ErrorContains(t, err, tt.want)
		})
	}
}

const endsJob = `job: ends
units: cm
garments:
  - name: blouse
    pieces: [{name: cuff, width: 24, height: 10}]
cloths:
  - name: shell
    remnants:
      - {name: end of the bolt, length: 70, width: 115}
      - {outline: [[0, 0], [70, 0], [0, 80]], flaws: [{at: [5, 5], radius: 1}]}
`

func TestRemnants(t *testing.T) {
	file, err := Parse("ends.yaml", []byte(endsJob))
	require.NoError(t, err)
	work, err := file.Resolve()
	require.NoError(t, err)
	offer := work.Cloths[0]
	assert.Equal(t, []float64{1150}, offer.Widths, "that of the widest")
	require.Len(t, offer.Remnants, 2)
	assert.Equal(t, 700.0, offer.Remnants[0].Length)
	assert.Equal(t, orb.Ring{{0, 0}, {700, 0}, {0, 800}}, offer.Remnants[1].Outline)
	assert.Len(t, offer.Remnants[1].Flaws, 1)
	assert.NoError(t, compiled(t).Validate(instanceOf(t, []byte(endsJob))))
	for text, want := range map[string]string{
		"remnants: [{length: 70}]":                                        `cloth "shell": remnant 1: the width`,
		"width: 90\n    remnants: [{length: 70, width: 90}]":              "has remnants and a width or length of its own",
		"remnants: [{length: 70, outline: [[0, 0], [70, 0], [0, 80]]}]":   "remnant 1 has an outline and a length or width",
		"remnants: [{length: 70, width: 1}]":                              "no remnant is wider than two selvedges",
		"remnants: [{name: end, outline: [[0, 0], [70, 0], [0, 80, 3]]}]": `remnant "end": a corner must be two distances`,
	} {
		const head = "job: a\nunits: cm\ngarments:\n  - name: b\n    pieces: [{name: c, width: 5, height: " +
			"5}]\ncloths:\n  - name: shell\n    "
		file, err := Parse("x.yaml", []byte(head+text+"\n"))
		if err == nil {
			_, err = file.Resolve()
		}
		assert.ErrorContains(t, err, want, text)
	}
}

// What is reckoned beside the lay has a usual value, and a word that switches it off.
func TestHandLayingAndShrinkage(t *testing.T) {
	const head = "job: a\nunits: cm\ngarments:\n  - name: b\n    pieces: [{name: c, width: 5, height: 5}]\n" +
		"cloths:\n  - name: shell\n    width: 90\n"
	percent := func(warp, weft float64) cloth.Shrinkage { return cloth.Shrinkage{Warp: warp / 100, Weft: weft / 100} }
	for _, tt := range []struct {
		text   string
		laying cloth.Addition
		shrink cloth.Shrinkage
	}{
		{"", cloth.Addition{Share: 0.02}, cloth.Shrinkage{}},
		{"    hand_laying: none\n", cloth.Addition{}, cloth.Shrinkage{}},
		{"    hand_laying: No\n", cloth.Addition{}, cloth.Shrinkage{}},
		{"    hand_laying: 3 %\n", cloth.Addition{Share: 0.03}, cloth.Shrinkage{}},
		{"    hand_laying: 4\n", cloth.Addition{Length: 40}, cloth.Shrinkage{}},
		{"    fibre: cotton\n", cloth.UsualHandLaying, cloth.Cotton.Shrinkage(false)},
		{"    fibre: linen\n    shrinkage: {cut_first: yes}\n", cloth.UsualHandLaying, cloth.Linen.Shrinkage(true)},
		{"    fibre: cotton\n    shrinkage: none\n", cloth.UsualHandLaying, cloth.Shrinkage{}},
		{"    fibre: cotton\n    shrinkage: {warp: 7 %}\n", cloth.UsualHandLaying, percent(7, 0)},
	} {
		text := []byte(head + tt.text)
		file, err := Parse("x.yaml", text)
		require.NoError(t, err, tt.text)
		work, err := file.Resolve()
		require.NoError(t, err, tt.text)
		assert.Equal(t, tt.laying, work.Cloths[0].Cloth.HandLaying, tt.text)
		assert.Equal(t, tt.shrink, work.Cloths[0].Cloth.Shrinkage, tt.text)
		assert.NoError(t, compiled(t).Validate(instanceOf(t, text)), tt.text)
	}
	for text, want := range map[string]string{
		"    hand_laying: much\n":  "(a percentage such as 5 %, a length, or none)",
		"    fibre: cottton\n":     "use one of: unknown, cotton, linen",
		"    shrinkage: nothing\n": "write {warp: nothing}",
		"    repeat: none\n":       "repeat should hold keys with values",
	} {
		file, err := Parse("x.yaml", []byte(head+text))
		if err == nil {
			_, err = file.Resolve()
		}
		assert.ErrorContains(t, err, want, text)
	}
}
