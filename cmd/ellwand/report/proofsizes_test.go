package report

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/job"
)

// The sizes of pieces are right in both systems, and refused when one is that of another
// size, or another side.
func TestWrongSizesOfPiecesAreRefused(t *testing.T) {
	for _, units := range []string{"cm", "in"} {
		file, err := job.Parse("a.yaml", []byte("job: a\nunits: "+units+"\ntable: women\nsize: 12\ngarments: [{name: skirt, "+
			"skirt: {}}]\ncloths: [{name: shell, width: 140 cm}]\n"))
		require.NoError(t, err)
		var works []*job.Work
		for _, size := range []string{"10", "16"} {
			work, err := file.InSize(size)
			require.NoError(t, err)
			works = append(works, work)
		}
		good, err := SizesOf(works)
		require.NoError(t, err)
		require.NoError(t, good.Proven(works))
		piece := &good.Sizes[1].Garments[0].Pieces[0]
		width, height := piece.WidthMM, piece.HeightMM
		piece.WidthMM = good.Sizes[0].Garments[0].Pieces[0].WidthMM
		assert.Error(t, good.Proven(works), "another size")
		piece.WidthMM, piece.HeightMM = height, width
		assert.Error(t, good.Proven(works), "another side")
	}
}
