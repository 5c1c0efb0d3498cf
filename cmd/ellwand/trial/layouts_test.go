package trial

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/layoutfile"
	"ellwand/fabric/plan"
)

// exampleLayouts lays the cloths of example jobs for a few passes, as they are,
// with stripes and checks, and with flaws, a gap and a nap.
func exampleLayouts(t *testing.T) map[string]layoutfile.File {
	t.Helper()
	out := map[string]layoutfile.File{}
	rare := []lay.Kind{lay.FoldedAcross, lay.CutAcross, lay.SelvedgeIn, lay.BothSelvedgesIn, lay.InStretches}
	for i, name := range []string{"kaftan", "shirt", "shirtblouse", "skirt", "velvet", "trousers"} {
		path := "../../../testdata/" + name + ".yaml"
		options := plan.Options{Passes: 1, Seed: 1, Lays: []lay.Kind{rare[i%len(rare)], lay.FoldedAlong, lay.Open}}
		read, err := job.Read(path)
		require.NoError(t, err)
		work, err := read.Resolve()
		require.NoError(t, err)
		for _, offer := range work.Cloths {
			plain := offer.Cloth
			if plain.Width = 1400; len(offer.Widths) > 0 {
				plain.Width = offer.Widths[0]
			}
			striped, handled := plain, plain
			striped.Repeat = cloth.Repeat{Along: 60, Across: 48, CentreLine: 30,
				Centred: []string{work.PiecesOf(plain.Name)[0].Name}}
			handled.Gap, handled.Nap = 4, cloth.Nap(i%3)
			handled.Flaws = []cloth.Flaw{cloth.RoundFlaw("stain", orb.Point{300, 450}, 25), cloth.BandFlaw("faded edge", 0, 14)}
			for kind, one := range map[string]cloth.Cloth{"plain": plain, "striped": striped, "handled": handled} {
				need, err := plan.Require(t.Context(), one, work.PiecesOf(one.Name), options)
				require.NoError(t, err, "%s, %s", path, kind)
				for _, p := range need.Lays {
					if p.Possible() {
						file, err := layoutfile.Of(p)
						require.NoError(t, err)
						out[fmt.Sprintf("%s %s %s %s", name, one.Name, kind, p.Lay)] = file
					}
				}
			}
		}
	}
	return out
}

// writeLayout writes a layout into a folder and returns its path.
func writeLayout(t *testing.T, folder, name string, file layoutfile.File) string {
	t.Helper()
	path := filepath.Join(folder, strings.ReplaceAll(name, " ", "-")+".json")
	require.NoError(t, os.WriteFile(path, encoded(t, file), 0o600))
	return path
}
