package job

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func resolve(t *testing.T, text string) (*Work, error) {
	t.Helper()
	file, err := Parse("x.yaml", []byte(text))
	require.NoError(t, err)
	return file.Resolve()
}

const lowerJob = `job: a
units: cm
body: {waist_girth: 76, hip_girth: 100}
garments:
  - name: g
    `

func TestLowerBody(t *testing.T) {
	for garment, want := range map[string][]string{
		"skirt: {shape: a-line, length: 65, back: fold}":             {"front skirt", "back skirt"},
		"skirt: {shape: a-line, darts: hem, flare: 2}":               {"front skirt", "back skirt"},
		"skirt: {shape: knife pleated, pleats: 24, panel_width: 90}": {"pleated skirt panel"},
		"skirt: {shape: tiered, tiers: 2, fullness: 1.8}":            {"tier 1", "tier 2"},
		"trousers: {length: 45, pocket: side}": {"front trousers", "back trousers",
			"pocket bag"},
		"trousers: {opening: elastic waist, elastic: 4}":                     {"front trousers", "back trousers"},
		"straight_cut: {shape: wrapper}":                                     {"wrapper", "tie"},
		"skirt: {shape: half circle}\n    parts: [{kind: shaped waistband}]": {"circle skirt", "shaped waistband"},
	} {
		work, err := resolve(t, lowerJob+garment+"\ncloths: [{name: shell, width: 140}]\n")
		require.NoError(t, err, garment)
		var names []string
		for _, piece := range work.Garments[0].Pieces {
			names = append(names, piece.Name)
		}
		assert.Equal(t, want, names)
	}
}

func TestLowerBodyRefuses(t *testing.T) {
	for garment, want := range map[string]string{
		"skirt: {shape: bell}":            `x.yaml:6: the skirt's shape is "bell", which is not known`,
		"skirt: {gores: none}":            `x.yaml:6: the number of gores is "none"; it must be a whole number`,
		"skirt: {shape: gored, gores: 5}": `skirt: 5 gores; ask for 4, 6 or 8`,
		"skirt: {darts: hem}":             "only in an a-line skirt are the darts closed into the hem",
		"skirt: {length: 20}":             "ends above or at the hip",
		"trousers: {pocket: front}":       `the pocket is "front", which is not known`,
		"trousers: {length: 25}":          "leaves no leg below a body rise",
		"trousers: {opening: elastic waist, waist_ease: 20}": "which does not pass over a hip girth of 100 cm without " +
			"an opening; ask for 26 cm or more",
		"trousers: {opening: elastic waist}\n    parts: [{kind: waistband}]": "an elastic waist has its casing cut on",
		"straight_cut: {length: 100}": "straight_cut has no shape; add one of: " +
			"kaftan, kimono",
		"straight_cut: {shape: kaftan}": "the bust girth is missing",
		"skirt: {}\n    trousers: {}":   "a skirt or trousers, not both",
	} {
		_, err := resolve(t, lowerJob+garment+"\ncloths: [{name: shell, width: 140}]\n")
		assert.ErrorContains(t, err, want)
	}
}
