package starter

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/page/illustration"
)

// Every garment of the gallery is drafted from a size, and from girths in inches.
func TestEveryGarmentIsDrafted(t *testing.T) {
	assert.Len(t, garments, len(illustration.Garments()))
	for _, garment := range illustration.Garments() {
		for _, b := range []Begin{
			{Garment: garment, Title: "A: first # one", Table: "women", Size: "12", Width: "115", Nap: "one way"},
			{Garment: garment, Units: "in", Body: map[string]string{"bust_girth": "37", "waist_girth": "30",
				"hip_girth": "39 1/2"}, Width: "54"},
			{Garment: garment, Units: "mm", Table: "men", Size: "100", Length: "2 m"},
		} {
			text, err := b.Text()
			require.NoError(t, err, garment)
			file, err := job.Parse("x.yaml", []byte(text))
			require.NoError(t, err, text)
			work, err := file.Resolve()
			require.NoError(t, err, text)
			assert.NotEmpty(t, work.Garments[0].Pieces)
			for _, row := range work.Garments[0].Truing.Rows {
				assert.True(t, row.InRange, "%s: %s", garment, row.Seam)
			}
		}
	}
	_, err := Begin{Garment: "tent"}.Text()
	assert.ErrorContains(t, err, "trousers")
}
