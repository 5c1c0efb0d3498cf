package plan_test

import (
	"context"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/words"
	"ellwand/nest"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

func TestRequireBothLays(t *testing.T) {
	c := cloth.Cloth{Name: "shell", Width: 1020, Selvedge: 10, PurchaseStep: 100}
	got := fabrictest.Required(t, c, fabrictest.Blouse()...)
	require.Len(t, got.Lays, 2)
	open, folded := got.Lays[0], got.Lays[1]
	assert.Equal(t, lay.Open, open.Lay)
	assert.Equal(t, lay.FoldedAlong, folded.Lay)
	assert.True(t, open.Possible())
	assert.True(t, folded.Possible(), words.WhyNot(folded))

	assert.Len(t, open.Pieces, 1+2+2+2, "the front whole, each of the others on its own")
	assert.Len(t, folded.Pieces, 1+1+1+1, "one template for every two")
	assert.Equal(t, 1000.0, open.Width)
	assert.Equal(t, 500.0, folded.Width)
	assert.LessOrEqual(t, open.Length, folded.Length+1e-6, "an open lay is never longer")
	for _, plan := range got.Lays {
		assert.GreaterOrEqual(t, plan.Length, plan.Bound)
		assert.GreaterOrEqual(t, plan.Buy, plan.Length-1e-6, "less above a step is noise to measure.RoundUp")
		assert.Less(t, plan.Buy, plan.Length+100)
		// The area of the blouse by hand, from its corners, in mm2: the front
		// twice 73,600 and the panel 38,100 by the shoelace formula,
		// two cuffs and two collars.
		area := 2*73600.0 + 2*38100 + 2*90*240 + 2*80*300
		assert.InEpsilon(t, area/(plan.Length*1000), plan.Density, 1e-6, "efficiency of the lay %s", plan.Lay)
	}
}

func TestRequireFoldedPieces(t *testing.T) {
	got := fabrictest.Required(t, cloth.Cloth{Width: 1020, Selvedge: 10}, fabrictest.Blouse()...)
	for _, l := range got.Lays[1].Pieces {
		assert.Equal(t, l.Name == "front", l.OnFold)
		if l.OnFold {
			assert.Equal(t, 1, l.Yields)
			assert.InDelta(t, 0, l.Outline.Bound().Min[1], 1e-6)
			continue
		}
		assert.Equal(t, 2, l.Yields)
	}
	left := 0
	for _, l := range got.Lays[0].Pieces {
		assert.False(t, l.OnFold)
		if l.Mirrored {
			left++
			assert.Equal(t, "side panel", l.Name)
		}
	}
	assert.Equal(t, 1, left, "one of the pair is laid face down, nothing else")
}

// TestExactLengths are rectangles that fill the cloth without waste, so that
// the shortest length is known by hand.
func TestExactLengths(t *testing.T) {
	goods := cloth.Cloth{Width: 620, Selvedge: 10}
	for _, c := range []struct {
		name         string
		all          []pieces.Piece
		open, folded float64
	}{
		{"four squares", []pieces.Piece{fabrictest.Rectangle("square", 300, 300, 4)}, 600, 600},
		{"strips along", []pieces.Piece{fabrictest.Rectangle("strip", 150, 500, 4)}, 500, 500},
		{"strips across", []pieces.Piece{fabrictest.OnGrain(fabrictest.Rectangle("strip", 150, 300, 4), pieces.CrossGrain)},
			300, 300},
		{"a whole on the fold", []pieces.Piece{func() pieces.Piece {
			p := fabrictest.Polygon("back", orb.Point{0, 0}, orb.Point{300, 0}, orb.Point{300, 700}, orb.Point{0, 700})
			p.Fold = seams.Called("d")
			return p
		}()}, 700, 700},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := fabrictest.Required(t, goods, c.all...)
			assert.InDelta(t, c.open, got.Lays[0].Length, 0.01)
			assert.InDelta(t, c.folded, got.Lays[1].Length, 0.01)
			assert.Equal(t, 1, got.Chosen, "of equal lays the folded one, which is cut sooner")
		})
	}
}

func TestRequireImpossible(t *testing.T) {
	goods := cloth.Cloth{Name: "remnant", Width: 520, Selvedge: 10}
	for _, c := range []struct {
		name, want string
		piece      pieces.Piece
	}{
		{"single", "yoke: a single piece cannot be cut from two plies", fabrictest.Rectangle("yoke", 100, 100, 1)},
		{"odd", "yoke: 3 single pieces cannot be cut from two plies", fabrictest.Rectangle("yoke", 100, 100, 3)},
		{"no mirror image", "side panel: two plies give a right and a left",
			func() pieces.Piece { p := fabrictest.SidePanel(); p.Cut = 2; return p }()},
		{"too wide for half", "band: it is 30 cm wide and the folded cloth only 25 cm",
			fabrictest.Rectangle("band", 300, 100, 2)},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := fabrictest.Required(t, goods, c.piece)
			require.Len(t, got.Lays, 2)
			assert.True(t, got.Lays[0].Possible())
			assert.Contains(t, words.WhyNot(got.Lays[1]), c.want)
			assert.Contains(t, words.WhyNot(got.Lays[1]), "lay the cloth open")
			assert.Equal(t, 0, got.Chosen)
		})
	}
}

func TestRequireRefuses(t *testing.T) {
	goods := cloth.Cloth{Name: "shell", Width: 520, Selvedge: 10}
	twice := fabrictest.Rectangle("cuff", 50, 50, 1)
	for _, c := range []struct {
		name  string
		cloth cloth.Cloth
		all   []pieces.Piece
		want  []string
	}{
		{"nothing to cut", goods, nil, []string{"cloth shell: there is nothing to cut from it"}},
		{"zero width", cloth.Cloth{Name: "shell"}, []pieces.Piece{twice}, []string{"cloth shell: the width is 0 cm"}},
		{"too wide", goods, []pieces.Piece{fabrictest.Rectangle("cape", 600, 700, 1)},
			[]string{"no lay of cloth shell is possible", "cape: it is 60 cm wide in the narrowest way its grain allows",
				"only 50 cm between the selvedges", "take a wider cloth"}},
		{"one name twice", goods, []pieces.Piece{twice, twice}, []string{"cuff: two pieces have this name"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := plan.Require(context.Background(), c.cloth, c.all, fabrictest.Brief)
			for _, want := range c.want {
				assert.ErrorContains(t, words.Refused(c.cloth, err), want)
			}
		})
	}
}

func TestBuyRoundsUp(t *testing.T) {
	piece := fabrictest.Rectangle("panel", 300, 1010, 1)
	for _, c := range []struct {
		step, straighten, want float64
		note                   bool
	}{
		{0, 0, 1010, true},
		{100, 0, 1100, false},
		{100, 50, 1100, false},
		{100, 100, 1200, false},
		{5, 0, 1010, true},
		{228.6, 0, 1143, false}, // 1/4 yd: 5 quarters
	} {
		goods := cloth.Cloth{Width: 320, Selvedge: 10, PurchaseStep: c.step, Straighten: c.straighten}
		got := fabrictest.Required(t, goods, piece)
		assert.InDelta(t, c.want, got.Buy, 1e-6, "%+v", c)
		assert.Equal(t, c.note, len(got.Lays[got.Chosen].Notes) > 0, "%+v", c)
	}
}

func TestOneLayOnly(t *testing.T) {
	options := fabrictest.Brief
	options.Lays = []lay.Kind{lay.Open}
	got, err := plan.Require(context.Background(), cloth.Cloth{Width: 1020, Selvedge: 10}, fabrictest.Blouse(), options)
	require.NoError(t, err)
	require.Len(t, got.Lays, 1)
	assert.Equal(t, lay.Open, got.Lays[0].Lay)
}

func TestProgressAndCancel(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	seen := map[lay.Kind]bool{}
	options := plan.Options{Passes: 1e6, Workers: 1, Progress: func(kind lay.Kind, p nest.Progress) {
		seen[kind] = true
		if kind == lay.FoldedAlong {
			cancel()
		}
	}}
	got, err := plan.Require(ctx, cloth.Cloth{Width: 1020, Selvedge: 10}, fabrictest.Blouse(), options)
	require.NoError(t, err, "stopping early gives the best so far")
	assert.True(t, seen[lay.FoldedAlong])
	assert.Positive(t, got.Length)
	cancel()
}
