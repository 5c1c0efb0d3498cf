package job

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
)

// A rectangle of one's own says what it is to the garment.
func TestKindOfAPiece(t *testing.T) {
	const text = `job: a
units: cm
garments:
  - name: g
    pieces:
      - {name: body, width: 40, height: 60}
      - {name: hem band, width: 40, height: 5, kind: facing}
      - {name: back, width: 40, height: 60, kind: lining}
cloths: [{name: shell, width: 140}]
`
	work, err := resolve(t, text)
	require.NoError(t, err)
	var kinds []pieces.Kind
	for _, p := range work.Garments[0].Pieces {
		kinds = append(kinds, p.Kind)
	}
	assert.Equal(t, []pieces.Kind{pieces.Shell, pieces.Facing, pieces.Lining}, kinds)
	_, err = resolve(t, "job: a\nunits: cm\ngarments:\n  - name: g\n    pieces: [{name: a, width: 4, height: 5, "+
		"kind: faced}]\ncloths: [{name: shell, width: 140}]\n")
	assert.ErrorContains(t, err, `the kind is "faced", which is not known`)
}
