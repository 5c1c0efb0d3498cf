package job

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/seams"
)

const shirtJob = `job: shirt
units: cm
size: 12
table: women
garments:
  - name: shirt
    bodice: {front: opening, back: fold, below_waist: 25}
    sleeve: {style: shirt}
    parts: [{kind: shirt collar}, {kind: buttoned cuff}]
    `

const shirtCloths = "\ncloths: [{name: shell, widths: [140, 100]}, {name: lining, width: 140}]\n"

func made(t *testing.T, text string) map[string]pieces.Piece {
	work, err := resolve(t, text+shirtCloths)
	require.NoError(t, err)
	out := map[string]pieces.Piece{}
	for _, p := range work.Garments[0].Pieces {
		out[p.Name] = p
	}
	return out
}

func TestLiningsInTheJobFile(t *testing.T) {
	got := made(t, shirtJob+`linings: [{of: [front bodice, back bodice], cloth: lining, shorter: 3, back_pleat: 2}]
    interfacings: [{of: [shirt collar], cloth: lining, reduce: 0.2, cut: 1}, {of: [buttoned cuff], cloth: lining}]
    cut_from: {shell: [back bodice lining]}`)
	assert.Equal(t, "lining", got["front bodice lining"].Cloth)
	assert.Equal(t, "shell", got["back bodice lining"].Cloth, "cut_from has the last word")
	centre := func(name string) float64 {
		edge, ok := got[name].Edge(seams.CentreBack)
		require.True(t, ok)
		return edge.Path.Length()
	}
	assert.InDelta(t, centre("back bodice")-30, centre("back bodice lining"), 1e-6)
	stand := got["shirt collar stand interfacing"]
	assert.Equal(t, 1, stand.Cut)
	assert.InDelta(t, 8, stand.Edges[0].Allowance, 1e-9, "1 cm at the neck less 2 mm")
	assert.Equal(t, 4, got["buttoned cuff interfacing"].Cut)
	assert.Zero(t, got["buttoned cuff interfacing"].Edges[0].Allowance)
}

// Strips on the bias are as long as the narrowest width of their cloth allows:
// (l + 3 + 2)/√2 cm of 98 cm (geometry, joins of 1 cm), so l is 133.6 cm at most.
func TestBiasStripsOfTheNarrowestWidth(t *testing.T) {
	text := strings.Replace(shirtJob, "{kind: buttoned cuff}", "{kind: bias strip, length: 450, depth: 3}", 1)
	got := made(t, text+"linings: [{of: [sleeve], cloth: lining}]")
	assert.Equal(t, 4, got["bias strip"].Cut)
}

func TestPartsRefused(t *testing.T) {
	for text, want := range map[string]string{
		"linings: [{cloth: lining}]": "x.yaml:10: the lining does not say what it is of",
		"linings: [{of: [hood], cloth: lining}]": `garment "shirt": lining: there is no piece "hood"; the pieces ` +
			`are front bodice, back bodice, sleeve`,
		"interfacings: [{of: [sleeve], cloth: fuse}]":  `interfacing: there is no cloth "fuse" under cloths:`,
		"interfacings: [{of: [sleeve], cut: 0}]":       "interfacing: cut is",
		"linings: [{of: [front bodice], shorter: 90}]": "front bodice lining: 90 cm shorter is more than",
		"linings: [{off: [sleeve]}]":                   "",
		"interfacings: [{of: [sleeve], reduce: -0.1}]": "what the allowances of the interfacing are reduced by",
	} {
		file, err := Parse("x.yaml", []byte(shirtJob+text+shirtCloths))
		if want == "" {
			assert.ErrorContains(t, err, `unknown key "off"`)
			continue
		}
		require.NoError(t, err)
		_, err = file.Resolve()
		assert.ErrorContains(t, err, want, text)
	}
}
