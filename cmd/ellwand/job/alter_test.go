package job

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
)

const alterable = `job: Two
units: cm
size: 14
table: women
garments:
  - {name: skirt, skirt: {shape: straight, length: 70}}
  - {name: tunic, bodice: {below_waist: 30}}
  - name: dress
    bodice: {}
    sleeve: {}
    parts: [{kind: gathered skirt, depth: 55}]
  - name: shift
    trousers: {}
cloths: [{name: shell, width: 140, length: 160}]
`

func heightOf(t *testing.T, work *Work, name string) float64 {
	t.Helper()
	for _, p := range work.PiecesOf("shell") {
		if p.Name == name {
			box := p.SeamOutline(0.1).Bound()
			return box.Max[1] - box.Min[1]
		}
	}
	var names []string
	for _, p := range work.PiecesOf("shell") {
		names = append(names, p.Name)
	}
	t.Fatalf("there is no piece %s among %v", name, names)
	return 0
}

func TestShortened(t *testing.T) {
	file, err := Parse("two.yaml", []byte(alterable))
	require.NoError(t, err)
	work, err := file.Resolve()
	require.NoError(t, err)
	assert.Equal(t, 1600.0, work.Cloths[0].Length)
	var parts []string
	for _, s := range work.Shortenings {
		parts = append(parts, s.Garment+" "+s.Part)
		shorter, err := file.Shortened(s, 50)
		require.NoError(t, err)
		for _, name := range map[string][]string{
			"skirt skirt": {"front skirt"}, "dress sleeve": {"sleeve"}, "dress gathered skirt": {"gathered skirt front"},
			"shift trousers": {"front trousers"}, "tunic whole": {"front bodice"},
		}[s.Garment+" "+s.Part] {
			assert.InDelta(t, heightOf(t, work, name)-50, heightOf(t, shorter, name), 1, "%s of %s", name, s.Garment)
		}
	}
	assert.ElementsMatch(t, []string{"skirt skirt", "tunic whole", "dress sleeve", "dress gathered skirt",
		"shift trousers"}, parts)
	_, err = file.Shortened(work.Shortenings[0], 650)
	assert.Error(t, err, "a skirt of 5 cm cannot be drafted")
}

func TestSmallerSizes(t *testing.T) {
	file, err := Parse("two.yaml", []byte(alterable))
	require.NoError(t, err)
	assert.Equal(t, []string{"12", "10", "8", "6"}, file.SmallerSizes())
	work, err := file.Resolve()
	require.NoError(t, err)
	smaller, err := file.InSize("12")
	require.NoError(t, err)
	area := func(all []pieces.Piece) (sum float64) {
		for _, p := range all {
			box := p.SeamOutline(1).Bound()
			sum += (box.Max[0] - box.Min[0]) * (box.Max[1] - box.Min[1])
		}
		return sum
	}
	assert.Less(t, area(smaller.PiecesOf("shell")), area(work.PiecesOf("shell")))
	file.Size, file.Table = "", ""
	assert.Empty(t, file.SmallerSizes())
}
