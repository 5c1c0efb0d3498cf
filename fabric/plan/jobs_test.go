package plan_test

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/paulmach/orb"
	"github.com/peterstace/simplefeatures/geom"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/bed"
	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/fabric/layoutfile"
	"ellwand/fabric/plan"
	"ellwand/pieces"
	"ellwand/testdata/check"
	"ellwand/testdata/sample"
)

var randomJobs = flag.Int("jobs", sample.Of(150, 4000), "random jobs to lay")

// TestRandomJobs lays random jobs in random lays, each layout verified by
// verify.Layout and by the plan's own check on the way, and then by the outside
// checker, which judges with shapely (GEOS).
func TestRandomJobs(t *testing.T) {
	count := *randomJobs
	dir := t.TempDir()
	var plans, impossible, refused int
	laid, had := map[lay.Kind]int{}, map[string]int{}
	for number := range uint64(count) {
		cloth, all, options := randomJob(number)
		got, err := plan.Require(t.Context(), cloth, all, options)
		if err != nil {
			require.NotErrorIs(t, err, plan.ErrInternal, "job %d", number)
			require.ErrorContains(t, err, "is possible", "job %d", number)
			refused++
			continue
		}
		for i, p := range got.Lays {
			if !p.Possible() {
				impossible++
				continue
			}
			plans++
			laid[p.Lay]++
			for _, what := range thingsOf(p) {
				had[what]++
			}
			gapKept(t, number, p)
			require.GreaterOrEqual(t, p.Length, p.Bound-1e-6, "job %d", number)
			require.LessOrEqual(t, p.Density, 1+1e-9, "job %d", number)
			if open := got.Lays[0]; open.Possible() {
				require.LessOrEqual(t, open.Taken, p.Taken+1e-3, "job %d: the lay %s is shorter than the open one",
					number, p.Lay)
			}
			var file bytes.Buffer
			require.NoError(t, layoutfile.Write(&file, p))
			require.NoError(t, os.WriteFile(filepath.Join(dir, fmt.Sprintf("%d-%d.json", number, i)), file.Bytes(), 0o600))
		}
	}
	t.Logf("%d jobs: %d plans, %d lays not possible, %d jobs without any", count, plans, impossible, refused)
	require.Greater(t, plans, count, "most jobs have a plan")
	t.Log(laid, had)
	for _, kind := range lay.Kinds() {
		require.Greater(t, laid[kind], count/100, kind)
	}
	for _, what := range allThings {
		require.Greater(t, had[what], count/100, what)
	}
	files, err := filepath.Glob(filepath.Join(dir, "*.json"))
	require.NoError(t, err)
	require.Len(t, files, plans)
	check.Lays(t, files...)
}

// allThings that a job may have; each must come often enough.
var allThings = []string{"either way", "one way", "one way per garment", "one-way pieces", "alike", "gap", "tilt",
	"wetted", "washed later",
	"stripes across", "stripes along", "checks", "match", "flaw", "drafted", "fold", "mirrored", "bias", "either grain",
	"lower ply"}

// thingsOf a plan are those that it has.
func thingsOf(plan lay.Plan) []string {
	c, out := plan.Cloth, []string{plan.Cloth.Nap.String()}
	add := func(has bool, what string) {
		if has {
			out = append(out, what)
		}
	}
	shrinks := c.Shrinkage.Warp > 0
	add(len(c.OneWayPieces) > 0, "one-way pieces")
	add(c.Alike, "alike")
	add(c.Gap > 0, "gap")
	add(c.Tilt > 0, "tilt")
	add(shrinks && !c.Shrinkage.CutFirst, "wetted")
	add(shrinks && c.Shrinkage.CutFirst, "washed later")
	add(c.Repeat.Along > 0 && c.Repeat.Across == 0, "stripes across")
	add(c.Repeat.Along == 0 && c.Repeat.Across > 0, "stripes along")
	add(c.Repeat.Along > 0 && c.Repeat.Across > 0, "checks")
	add(len(plan.Matches) > 0, "match")
	add(len(c.Flaws) > 0, "flaw")
	add(slices.ContainsFunc(plan.Pieces, func(l lay.Laid) bool { return len(l.Darts) > 0 }), "drafted")
	add(slices.ContainsFunc(plan.Pieces, func(l lay.Laid) bool { return l.OnFold }), "fold")
	add(slices.ContainsFunc(plan.Pieces, func(l lay.Laid) bool { return l.Mirrored }), "mirrored")
	add(slices.ContainsFunc(plan.Pieces, func(l lay.Laid) bool { return l.FromLower }), "lower ply")
	add(slices.ContainsFunc(plan.Pieces, func(l lay.Laid) bool { return l.Piece.Grain.Lie == pieces.Bias }), "bias")
	add(slices.ContainsFunc(plan.Pieces, func(l lay.Laid) bool { return l.Piece.Grain.Lie == pieces.EitherGrain }),
		"either grain")
	return out
}

// gapKept asks simplefeatures how far pieces lie apart that are near each other on the
// open cloth, in whichever plies: the outside checker knows of no gap.
func gapKept(t *testing.T, number uint64, plan lay.Plan) {
	t.Helper()
	gap := plan.Cloth.Gap
	if gap == 0 {
		return
	}
	var cut []lay.Laid // as they lie on the open cloth
	for _, l := range plan.Pieces {
		for _, ply := range bed.PliesAt(plan.Beds[l.Bed], l.Outline.Bound().Center()[1]) {
			if ply.Upper && l.FromLower {
				continue
			}
			opened := l
			opened.Outline = orb.Ring(motion.Mapped(ply.ToCloth, l.Outline))
			cut = append(cut, opened)
		}
	}
	for i, a := range cut {
		for _, b := range cut[:i] {
			isOne := a.OnFold && a.Name == b.Name && a.Garment == b.Garment && a.Size == b.Size && a.Copy == b.Copy
			if isOne || !a.Outline.Bound().Pad(gap).Intersects(b.Outline.Bound()) {
				continue
			}
			away, ok := geom.Distance(geometryOf(a), geometryOf(b))
			require.True(t, ok)
			require.GreaterOrEqual(t, away, gap-1e-3, "job %d, lay %s: %s and %s", number, plan.Lay, a.Name, b.Name)
		}
	}
}
