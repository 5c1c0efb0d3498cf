package plan_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/words"
	"ellwand/pieces"
)

// named leaves the pieces of a plan that go by a name.
func named(p lay.Plan, name string) lay.Plan {
	p = plan.Bare(p)
	p.Pieces = slices.DeleteFunc(p.Pieces, func(l lay.Laid) bool { return l.Name != name })
	return p
}

// Pieces that are fixed stay where they are, in every lay, while the rest is
// laid anew around them; a second garment goes into what the first one leaves.
func TestFixedPiecesStay(t *testing.T) {
	c := cloth.Cloth{Width: 1020, Selvedge: 10}
	all := fabrictest.PlainBlouse(2)
	options := plan.Options{Passes: 20, Seed: 1}
	first, err := plan.Require(t.Context(), c, all, options)
	require.NoError(t, err)
	both := append(slices.Clone(all), fabrictest.InGarment("bag", fabrictest.Rectangle("side", 120, 200, 4))...)
	for _, was := range first.Found {
		for name, wanted := range map[string][]pieces.Piece{"one": all, "both": both} {
			options.Fixed = named(was, "back")
			if name == "both" {
				options.Fixed = plan.Bare(was)
			}
			got, err := plan.Require(t.Context(), c, wanted, options)
			require.NoError(t, err, "%s, %s", was.Lay, name)
			assert.Equal(t, was.Lay, got.Lays[got.Chosen].Lay)
			laid := plan.Bare(got.Lays[got.Chosen]).Pieces
			for _, l := range options.Fixed.Pieces {
				assert.True(t, slices.ContainsFunc(laid, func(other lay.Laid) bool { return isAt(l, other) }), "%s, %s: %v",
					was.Lay, name, l)
			}
			assert.Greater(t, len(laid), len(options.Fixed.Pieces))
		}
		options.Fixed = plan.Bare(was)
		got, err := plan.Require(t.Context(), c, all, options)
		require.NoError(t, err)
		assert.InDelta(t, was.Taken, got.Length, 1e-6, "everything stays")
		assert.Zero(t, got.Work.Due)
	}
}

func isAt(a, b lay.Laid) bool {
	near := func(x, y float64) bool { return x-y < 1e-6 && y-x < 1e-6 }
	return a.Name == b.Name && a.Mirrored == b.Mirrored && near(a.Turn, b.Turn) && near(a.X, b.X) && near(a.Y, b.Y)
}

// What cannot stay is refused, and says which piece: on a flaw that was found, on another
// piece, turned as it may not be, or beside a fold that is nowhere.
func TestWhatCannotStay(t *testing.T) {
	all := fabrictest.InGarment("bag", fabrictest.Rectangle("side", 300, 400, 2),
		fabrictest.Rectangle("base", 200, 300, 1))
	plain := cloth.Cloth{Width: 1020, Selvedge: 10}
	flawed := plain
	flawed.Flaws = []cloth.Flaw{cloth.BarFlaw("hole", 150, 160)}
	side := lay.Laid{Name: "side", Garment: "bag", Turn: 270, Y: 300}
	for name, tt := range map[string]struct {
		c     cloth.Cloth
		lay   lay.Kind
		fixed []lay.Laid
		why   string
	}{
		"stays":     {plain, lay.Open, []lay.Laid{side}, ""},
		"on a flaw": {flawed, lay.Open, []lay.Laid{side}, "side cannot stay where it lies: a flaw or the edge"},
		"overlap":   {plain, lay.Open, []lay.Laid{side, side}, "pieces overlap"},
		"turned": {plain, lay.Open, []lay.Laid{{Name: "side", Garment: "bag", Turn: 33}},
			"side cannot stay where it lies"},
		"unknown":  {plain, lay.Open, []lay.Laid{{Name: "hood"}}, "hood cannot stay where it lies"},
		"too many": {plain, lay.Open, []lay.Laid{side, side, side}, "side cannot stay where it lies"},
		"beside it": {plain, lay.Open, []lay.Laid{{Name: "side", Garment: "bag", Turn: 270, Y: -900}},
			"side cannot stay where it lies: a flaw or the edge"},
		"two parts":  {plain, lay.SelvedgeIn, []lay.Laid{side}, "how far the selvedge is folded in"},
		"far, sound": {plain, lay.Open, []lay.Laid{{Name: "side", Garment: "bag", Turn: 270, X: 1000, Y: 300}}, ""},
	} {
		got, err := plan.Require(t.Context(), tt.c, all,
			plan.Options{Passes: 5, Fixed: lay.Plan{Lay: tt.lay, Pieces: tt.fixed}})
		if tt.why == "" {
			require.NoError(t, err, name)
			assert.GreaterOrEqual(t, got.Length, tt.fixed[0].X, name)
			continue
		}
		require.ErrorContains(t, words.Refused(tt.c, err), tt.why, name)
		assert.NotErrorIs(t, err, plan.ErrInternal, name)
	}
}

// On a repeat a layout that does not say where its match points lie, as one from a file,
// can be laid again, also where they lie at other places than a search would take.
func TestALayoutOnARepeatIsLaidAgain(t *testing.T) {
	c := cloth.Cloth{Name: "check", Width: 1400, Selvedge: 10, Repeat: cloth.Repeat{Along: 70, Across: 90, Even: true}}
	all := fabrictest.DraftedBlouse("14")
	got, err := plan.Require(t.Context(), c, all, plan.Options{Passes: 5, Seed: 1,
		Lays: []lay.Kind{lay.FoldedAlong, lay.Open}})
	require.NoError(t, err)
	for _, p := range got.Lays {
		require.True(t, p.Possible())
		unsaid := plan.Bare(p)
		unsaid.Places = lay.Places{}
		options := plan.Options{Passes: 1, Seed: 5, Lays: []lay.Kind{p.Lay}, Fixed: unsaid}
		again, err := plan.Require(t.Context(), c, all, options)
		require.NoError(t, err, "%s", p.Lay)
		assert.InDelta(t, p.Taken, again.Length, 1e-3, "%s", p.Lay)
	}
}

// In a lay of two parts each piece stays on its own, and so do the matches on a repeat; the
// rest may lie on either part.
func TestFixedPiecesStayInTwoParts(t *testing.T) {
	all := fabrictest.DraftedBlouse("14")
	check := cloth.Repeat{Along: 70, Across: 90, Even: true}
	for _, repeat := range []cloth.Repeat{{}, check} {
		c := cloth.Cloth{Name: "check", Width: 1400, Selvedge: 10, Repeat: repeat}
		for _, kind := range []lay.Kind{lay.InStretches, lay.SelvedgeIn} {
			options := plan.Options{Passes: 20, Seed: 1, Lays: []lay.Kind{kind}}
			first, err := plan.Require(t.Context(), c, all, options)
			require.NoError(t, err, "%s", kind)
			was := first.Lays[0]
			require.Len(t, was.Beds, 2, "%s", kind)
			for _, part := range []int{0, 1} {
				at := slices.IndexFunc(was.Pieces, func(l lay.Laid) bool { return l.Bed == part })
				options.Fixed = named(was, was.Pieces[at].Name)
				got, err := plan.Require(t.Context(), c, all, options)
				require.NoError(t, err, "%s, %s", kind, was.Pieces[at].Name)
				laid := plan.Bare(got.Lays[got.Chosen]).Pieces
				for _, l := range options.Fixed.Pieces {
					assert.True(t, slices.ContainsFunc(laid, func(other lay.Laid) bool {
						return isAt(l, other) &&
							l.Bed == other.Bed
					}),
						"%s: %s", kind, l.Name)
				}
				assert.Len(t, got.Lays, 1)
			}
			options.Fixed = plan.Bare(was)
			got, err := plan.Require(t.Context(), c, all, options)
			require.NoError(t, err, "%s", kind)
			assert.InDelta(t, was.Taken, got.Length, 1e-3, "%s: everything stays", kind)
		}
	}
}
