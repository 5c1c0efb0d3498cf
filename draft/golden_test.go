package draft_test

import (
	"flag"
	"fmt"
	"maps"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/planar"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft"
	"ellwand/draft/internal/variants"
	"ellwand/pieces"
)

var update = flag.Bool("update", false, "write the golden files anew")

// Every piece of every block in each of its variants, for one size: whoever changes a
// construction sees what else changed with it.
func TestDraftsOfEveryVariantAreThoseOfTheGoldenFile(t *testing.T) {
	const golden = "testdata/variants.txt"
	body, err := draft.Size("women", "12")
	require.NoError(t, err)
	var got strings.Builder
	all := variants.All()
	for _, name := range slices.Sorted(maps.Keys(all)) {
		request := all[name]
		request.Body, request.Table = body, "women"
		result, err := draft.Draft(request)
		require.NoError(t, err, name)
		fmt.Fprintf(&got, "%s\n", name)
		for _, p := range result.Pieces {
			describe(&got, p)
		}
	}
	if *update {
		require.NoError(t, os.MkdirAll("testdata", 0o755))
		require.NoError(t, os.WriteFile(golden, []byte(got.String()), 0o644))
	}
	want, err := os.ReadFile(golden)
	require.NoError(t, err)
	assert.Equal(t, strings.Split(string(want), "\n"), strings.Split(got.String(), "\n"))
}

// describe writes a piece in mm: how it is cut, its seam line edge by edge, which of the
// edges are hems, where its middle and its grainline lie, and what is marked on it.
func describe(w *strings.Builder, p pieces.Piece) {
	fmt.Fprintf(w, "  %s: cut %d, pair %t, fold %q\n   seams", p.Name, p.Cut, p.Pair, p.Fold)
	var ring orb.Ring
	for _, e := range p.Edges {
		ring = append(ring, e.Path.Flatten(0.05)...)
		fmt.Fprintf(w, " %s %.1f + %.1f", e.Name, e.Path.Length(), e.Allowance)
		if e.Hem {
			w.WriteString(" hem")
		}
		w.WriteByte(',')
	}
	middle, area := planar.CentroidArea(append(ring, ring[0]))
	fmt.Fprintf(w, "\n    area %.0f, middle %s\n", area, place(middle))
	fmt.Fprintf(w, "    grain %s to %s\n", place(p.Grain.From), place(p.Grain.To))
	for _, n := range p.Notches {
		fmt.Fprintf(w, "    notch %d on %s at %.1f: %s\n", n.Count, n.Edge, n.At, n.Match)
	}
	for _, d := range p.Darts {
		fmt.Fprintf(w, "    dart %s: %.1f %.1f %.1f %.1f\n", d.Name, d.Start, d.Apex, d.End, d.OtherApex)
	}
	for _, m := range p.Marks {
		at := m.At
		if m.Path != nil {
			at = m.Path.At(m.Path.Length() / 2)
		}
		fmt.Fprintf(w, "    mark %s: %.1f long at %.1f\n", m.Name, m.Path.Length(), at)
	}
}

// place in mm, of which none is -0.0.
func place(p orb.Point) string {
	for k, v := range p {
		if math.Abs(v) < 0.05 {
			p[k] = 0
		}
	}
	return fmt.Sprintf("%.1f %.1f", p[0], p[1])
}
