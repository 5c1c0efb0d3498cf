package plan_test

import (
	"bytes"
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/paulmach/orb"
	"github.com/peterstace/simplefeatures/geom"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/layoutfile"
	"ellwand/fabric/plan"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
	"ellwand/testdata/check"
	"ellwand/testdata/sample"
)

var randomJobs = flag.Int("jobs", sample.Of(150, 4000), "random jobs to lay")

// randomJob makes a job of a few pieces and a cloth with anything that a cloth
// may have. The same number makes the same job.
func randomJob(number uint64) (cloth.Cloth, []pieces.Piece, plan.Options) {
	r := rand.New(rand.NewPCG(number, 4))
	var all []pieces.Piece
	for i := range 1 + r.IntN(4) {
		all = append(all, randomPiece(r, i))
	}
	if r.IntN(4) == 0 {
		all = append(all, pocket(r))
	}
	least := 500.0
	if r.IntN(draftedEvery) == 0 {
		all, least = draftedPieces(r), 800
	}
	c := cloth.Cloth{
		Width: least + 1000*r.Float64(), Selvedge: float64(r.IntN(3)) * 5, Step: float64(r.IntN(2)) * 100,
		Nap: cloth.Nap(r.IntN(3)), Alike: r.IntN(6) == 0,
	}
	if r.IntN(4) == 0 {
		c.Gap = 5 * r.Float64()
	}
	if r.IntN(5) == 0 {
		c.Tilt = 0.03 * r.Float64()
	}
	if r.IntN(4) == 0 {
		c.OneWayPieces = []string{all[0].Name}
	}
	if r.IntN(4) == 0 {
		c.Shrinkage = cloth.Shrinkage{Warp: 0.08 * r.Float64(), Weft: 0.04 * r.Float64(), CutFirst: r.IntN(2) == 0}
	}
	if r.IntN(3) == 0 {
		c.Repeat = randomRepeat(r, all)
	}
	for range max(0, r.IntN(5)-2) {
		c.Flaws = append(c.Flaws, randomFlaw(r, c.Width))
	}
	if r.IntN(3) == 0 { // for the lays that cannot be with a single piece, a flaw or a nap
		all, c.Flaws, c.OneWayPieces = evenly(all), nil, nil
		c.Nap = cloth.Nap(r.IntN(2))
	}
	// One pass of each search, of two or three of the lays.
	lays := lay.Kinds()
	r.Shuffle(len(lays), func(i, j int) { lays[i], lays[j] = lays[j], lays[i] })
	return c, all, plan.Options{Passes: 1, Seed: number, Workers: 1, Lays: append(lays[:1+r.IntN(2)], lay.Open)}
}

// evenly makes every piece one that two plies can give.
func evenly(all []pieces.Piece) []pieces.Piece {
	out := make([]pieces.Piece, len(all))
	for i, p := range all {
		if p.Fold == seams.None {
			p.Pair = true
		}
		p.Cut += p.Cut % 2
		out[i] = p
	}
	return out
}

// draftedEvery so many jobs, one is of drafted pieces.
const draftedEvery = 25

// drafts of two garments, by size: bodice, sleeve, facing and cuff from real
// bodies, with curved seams, notches and darts.
var drafts = map[string][]pieces.Piece{}

// draftedPieces takes some of the pieces of a drafted blouse.
func draftedPieces(r *rand.Rand) []pieces.Piece {
	size := []string{"8", "14", "20"}[r.IntN(3)]
	if drafts[size] == nil {
		drafts[size] = fabrictest.DraftedBlouse(size)
	}
	var out []pieces.Piece
	for _, p := range drafts[size] {
		if len(out) < 5 && r.IntN(3) > 0 {
			out = append(out, p)
		}
	}
	if len(out) == 0 {
		return drafts[size][:1]
	}
	return out
}

// pocket is small and single, alike or not.
func pocket(r *rand.Rand) pieces.Piece {
	p := fabrictest.Rectangle("pocket", 20+20*r.Float64(), 30, 1+2*r.IntN(2))
	if r.IntN(2) == 0 {
		p = fabrictest.Polygon("pocket", orb.Point{0, 0}, orb.Point{30, 0}, orb.Point{18, 30 + 10*r.Float64()})
	}
	p.Garment = "blouse"
	return p
}

func randomPiece(r *rand.Rand, i int) pieces.Piece {
	size := func() float64 { return 40 + 200*r.Float64() }
	w, h := size(), size()
	var p pieces.Piece
	switch r.IntN(6) {
	case 0:
		p = fabrictest.Rectangle("", w, h, 1+r.IntN(4))
	case 1:
		p = fabrictest.Pair(fabrictest.Polygon("", orb.Point{0, 0}, orb.Point{w, 0}, orb.Point{w * 0.7, h}, orb.Point{w * 0.1, h * 0.8}))
		p.Cut = 2 * (1 + r.IntN(2))
	case 2:
		p = fabrictest.Half("", w, h, 1+r.IntN(2))
	case 3: // a half with a curved side
		p = fabrictest.Half("", w, h, 1)
		p.Edges[1].Path = pieces.Path{pieces.Bezier{P0: orb.Point{w, 0}, P1: orb.Point{w * 1.2, h / 3}, P2: orb.Point{w * 0.6, h * 2 / 3}, P3: orb.Point{w, h}}}
		for k := range p.Edges[:3] {
			p.Edges[k].Allowance = 15
		}
	case 4: // a single piece without symmetry, with a hollow
		p = fabrictest.Polygon("", orb.Point{0, 0}, orb.Point{w, 0}, orb.Point{w * 0.4, h * 0.3}, orb.Point{w * 0.5, h}, orb.Point{0, h})
		p.Cut = 1 + r.IntN(2)
	default:
		p = fabrictest.Pair(fabrictest.Polygon("", orb.Point{0, 0}, orb.Point{w, 0}, orb.Point{w * 0.6, h}))
	}
	p.Name = fmt.Sprintf("piece %d", i)
	p.Garment = []string{"blouse", "skirt"}[r.IntN(2)]
	if p.Fold == seams.None {
		p.Grain.Lie = pieces.GrainLie(r.IntN(4))
	}
	for k := range 1 + r.IntN(2) {
		edge := p.Edges[1+k]
		p.Notches = append(p.Notches, pieces.Notch{Edge: edge.Name, At: r.Float64() * edge.Path.Length(), Count: 1, Match: marks.Called([]string{"side", "side", "hem", "waist", ""}[r.IntN(5)])})
	}
	return p.Map(pieces.Turn(float64(r.IntN(8)) * 45).Then(pieces.Move(37, -11)))
}

func randomRepeat(r *rand.Rand, all []pieces.Piece) cloth.Repeat {
	var out cloth.Repeat
	out.Even = r.IntN(2) == 0
	if r.IntN(3) > 0 {
		out.Along = 20 + 80*r.Float64()
	}
	if r.IntN(3) > 0 || out.Along == 0 {
		out.Across = 20 + 60*r.Float64()
		if r.IntN(3) == 0 {
			out.Centred, out.CentreLine = []string{all[0].Name}, 200*r.Float64()
		}
	}
	return out
}

func randomFlaw(r *rand.Rand, width float64) cloth.Flaw {
	x, y, size := 600*r.Float64(), width*r.Float64(), 5+40*r.Float64()
	switch r.IntN(4) {
	case 0:
		return cloth.BandFlaw("faded edge", 0, size)
	case 1:
		return cloth.BarFlaw("shaded", x, x+size)
	case 2:
		return cloth.Flaw{Name: "tear", Outline: orb.Ring{{x, y}, {x + 3*size, y}, {x, y + size}}}
	}
	return cloth.RoundFlaw("stain", orb.Point{x, y}, size)
}

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
			if open := got.Lays[0]; open.Possible() && mayNotBeShorter(cloth, p.Lay) {
				require.LessOrEqual(t, open.Taken, p.Taken+cloth.Gap+1e-3, "job %d: the lay %s is shorter than the open one", number, p.Lay)
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
var allThings = []string{"either way", "one way", "one way per garment", "one-way pieces", "alike", "gap", "tilt", "wetted", "washed later",
	"stripes across", "stripes along", "checks", "match", "flaw", "drafted", "fold", "mirrored", "bias", "either grain", "lower ply"}

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
	add(slices.ContainsFunc(plan.Pieces, func(l lay.Laid) bool { return l.Piece.Grain.Lie == pieces.EitherGrain }), "either grain")
	return out
}

// gapKept asks simplefeatures how far pieces lie apart that are near each
// other: the outside checker knows of no gap.
func gapKept(t *testing.T, number uint64, plan lay.Plan) {
	t.Helper()
	gap := plan.Cloth.Gap
	if gap == 0 {
		return
	}
	for i, a := range plan.Pieces {
		for _, b := range plan.Pieces[:i] {
			if !a.Outline.Bound().Pad(gap).Intersects(b.Outline.Bound()) {
				continue
			}
			away, ok := geom.Distance(geometryOf(a), geometryOf(b))
			require.True(t, ok)
			require.GreaterOrEqual(t, away, gap-1e-3, "job %d, lay %s: %s and %s", number, plan.Lay, a.Name, b.Name)
		}
	}
}

// mayNotBeShorter reports whether a lay, opened out, is an open one: always,
// without a gap. With one, pieces that touch a fold or a cut across lie without
// it there, and must be moved apart: about a line across that takes the gap
// once, if no stripe holds them; about a fold along there may be no room.
func mayNotBeShorter(c cloth.Cloth, kind lay.Kind) bool {
	across := kind == lay.FoldedAcross || kind == lay.CutAcross
	return c.Gap == 0 || across && c.Repeat.IsPlain()
}
