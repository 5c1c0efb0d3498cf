package steps

import (
	"testing"

	"github.com/stretchr/testify/require"

	"ellwand/draft"
	"ellwand/draft/internal/variants"
)

// everything is a garment of every block, in each of its variants and two
// sizes.
func everything(t testing.TB) map[string]Garment {
	out := map[string]Garment{}
	for name, request := range variants.All() {
		for _, size := range []string{"12", "20"} {
			body, err := draft.Size("women", size)
			require.NoError(t, err)
			request.Body = body
			result, err := draft.Draft(request)
			require.NoError(t, err, name)
			out[name+" "+size] = Garment{Name: name, Body: result.Body, Pieces: result.Pieces, Sheets: result.Sheets,
				Truing: result.Truing}
		}
	}
	return out
}
