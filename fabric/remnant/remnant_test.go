package remnant_test

import (
	"context"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/remnant"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

func rectangle(name string, width, height float64, cut int) pieces.Piece {
	p := pieces.Rectangle(name, width, height)
	p.Cut = cut
	return p
}

func ofKind(kind pieces.Kind, p pieces.Piece) pieces.Piece {
	p.Kind = kind
	return p
}

func withAllowance(p pieces.Piece, allowance float64) pieces.Piece {
	for i := range p.Edges {
		p.Edges[i].Allowance = allowance
	}
	return p
}

func onFold(p pieces.Piece) pieces.Piece {
	p.Fold = seams.Left
	p.Edges[3].Allowance = 0
	return p
}

func hemmed(p pieces.Piece, allowance float64) pieces.Piece {
	p.Edges[0].Hem, p.Edges[0].Allowance = true, allowance
	return p
}

// The answers are known by hand: all pieces are rectangles on cloth of 1 m.
func TestRemedies(t *testing.T) {
	goods := cloth.Cloth{Width: 1000}
	napped := goods
	napped.Nap = cloth.OneWay
	for _, c := range []struct {
		name string
		q    remnant.Question
		by   float64
		want remnant.Given
	}{
		{"open", remnant.Question{Cloth: goods, Length: 500, Lays: []lay.Kind{lay.FoldedAlong},
			Pieces: []pieces.Piece{rectangle("a", 1000, 500, 1)}}, 0,
			remnant.Given{Of: remnant.LaidOpen}},
		// 2 x (470 + 2 x 15) = 1000 fits with 10 mm: 2 x 490 on 490.
		{"seam allowance", remnant.Question{Cloth: goods, Length: 490,
			Pieces: []pieces.Piece{withAllowance(rectangle("a", 470, 470, 2), 15)}}, 0,
			remnant.Given{Of: remnant.LowerAllowances, Least: 10}},
		// 450 + 50 of hem on 485: 15 less.
		{"hem", remnant.Question{Cloth: goods, Length: 485,
			Pieces: []pieces.Piece{hemmed(rectangle("a", 500, 450, 2), 50)}}, 15,
			remnant.Given{Of: remnant.NarrowerHems, Least: 20, By: 15, Most: 30}},
		{"cross grain", remnant.Question{Cloth: goods, Length: 600,
			Pieces: []pieces.Piece{rectangle("body", 1000, 500, 1), rectangle("band", 100, 900, 1)}}, 0,
			remnant.Given{Of: remnant.OnCrossGrain, Pieces: []string{"band"}}},
		// The band is 1200 along the warp; two halves of 610 x 300 lie beside the
		// body of 400.
		{"pieced band", remnant.Question{Cloth: goods, Length: 620,
			Pieces: []pieces.Piece{rectangle("body", 400, 600, 1), crosswise(rectangle("band", 1200, 300, 1))}}, 0,
			remnant.Given{Of: remnant.CutInTwo, Pieces: []string{"band"}}},
		// Three of 610 x 300 take 900; their halves of 315 x 300, with a seam of
		// 10 mm, lie three beside each other in two rows.
		{"seam instead of the fold", remnant.Question{Cloth: goods, Length: 600,
			Pieces: []pieces.Piece{onFold(rectangle("back", 305, 300, 3))}}, 0,
			remnant.Given{Of: remnant.SeamForFold, Pieces: []string{"back"}}},
		{"facing", remnant.Question{Cloth: goods, Length: 500,
			Pieces: []pieces.Piece{rectangle("body", 1000, 500, 1),
				ofKind(pieces.Facing, rectangle("hem band", 200, 200, 1))}}, 0,
			remnant.Given{Of: remnant.OtherCloth, Pieces: []string{"hem band"}}},
		// Two right-angled triangles make the whole cloth, one of them turned.
		{"nap", remnant.Question{Cloth: napped, Length: 500,
			Pieces: []pieces.Piece{triangle("sail", 1000, 500, 2)}}, 0,
			remnant.Given{Of: remnant.NapIgnored}},
	} {
		t.Run(c.name, func(t *testing.T) {
			changes := remnant.Changes(c.q, remnant.Limits{SeamAllowance: 10, Hem: 20, Step: 5}, nil, nil)
			before, err := remnant.Fit(context.Background(), remnant.Remnant{Cloth: c.q.Cloth, Length: c.q.Length}, c.q.Pieces,
				plan.Options{Passes: 30, Lays: c.q.Lays})
			require.NoError(t, err)
			require.NotEqual(t, remnant.Enough, before.Answer)
			got, err := remnant.Search(context.Background(), c.q, changes, remnant.Options{Passes: 400, Seed: 1})
			require.NoError(t, err)
			require.NotEmpty(t, got)
			assert.InDelta(t, c.by, got[0].By, 1e-9)
			assert.Equal(t, []remnant.Given{c.want}, got[0].Change.With(got[0].By))
			assert.Equal(t, remnant.Enough, got[0].Fit.Answer)
			assert.LessOrEqual(t, got[0].Fit.Plan.Taken, c.q.Length+0.01)
			for _, p := range c.q.Pieces {
				assert.NoError(t, p.Check(), "the question's own pieces are left alone")
			}
		})
	}
}

func crosswise(p pieces.Piece) pieces.Piece {
	p.Grain.Lie = pieces.CrossGrain
	return p
}

func triangle(name string, width, height float64, cut int) pieces.Piece {
	p := pieces.Piece{Name: name, Cut: cut}
	corners := []orb.Point{{0, 0}, {width, 0}, {0, height}}
	for i, edge := range []seams.Name{seams.Bottom, seams.Called("slope"), seams.Left} {
		p.Edges = append(p.Edges, pieces.Edge{Name: edge,
			Path: pieces.Path{pieces.Line{From: corners[i], To: corners[(i+1)%3]}}})
	}
	p.Grain = pieces.Grain{From: orb.Point{50, 50}, To: orb.Point{50, 250}}
	return p
}

// TestNothingHelps: a cloth of half the area is not made enough by a seam.
func TestNothingHelps(t *testing.T) {
	q := remnant.Question{Cloth: cloth.Cloth{Width: 1000}, Length: 400,
		Pieces: []pieces.Piece{rectangle("a", 900, 800, 1)}}
	got, err := remnant.Search(context.Background(), q,
		remnant.Changes(q, remnant.Limits{SeamAllowance: 10, Hem: 20, Step: 5}, nil, nil), remnant.Options{Passes: 400})
	require.NoError(t, err)
	assert.Empty(t, got)
}

// TestBisection finds the least that is enough: a panel of 800 on 730, by
// steps of 5 mm.
func TestBisection(t *testing.T) {
	shorten := remnant.Measured(remnant.Given{Of: remnant.Shorter, Garment: "panel"}, 100, 5,
		func(q remnant.Question, by float64) (remnant.Question, bool) {
			q.Pieces = []pieces.Piece{rectangle("panel", 500, 800-by, 2)}
			return q, true
		})
	q := remnant.Question{Cloth: cloth.Cloth{Width: 1000}, Length: 728,
		Pieces: []pieces.Piece{rectangle("panel", 500, 800, 2)}}
	got, err := remnant.Search(context.Background(), q, []remnant.Change{shorten}, remnant.Options{Passes: 400})
	require.NoError(t, err)
	require.Len(t, got, 1)
	assert.Equal(t, 75.0, got[0].By)
	cancelled, cancel := context.WithCancel(context.Background())
	cancel()
	got, err = remnant.Search(cancelled, q, []remnant.Change{shorten}, remnant.Options{Passes: 400})
	require.NoError(t, err)
	assert.Empty(t, got)
}

// TestTwoChanges: the panels need 20 mm less of length, by the hem, and 20 mm
// less of width, by the seams: 2 x (470 + 2 x 15) = 1000 on a cloth of 980, and
// 450 + 50 on 485. By hand: 15 mm of hem and the seams at 10 mm.
func TestTwoChanges(t *testing.T) {
	panel := withAllowance(rectangle("panel", 470, 435, 2), 15)
	panel = hemmed(panel, 50) // 435 + 15 + 50 = 500 long
	q := remnant.Question{Cloth: cloth.Cloth{Width: 980}, Length: 480, Pieces: []pieces.Piece{panel},
		Lays: []lay.Kind{lay.Open}}
	changes := remnant.Changes(q, remnant.Limits{SeamAllowance: 10, Hem: 20, Step: 5}, nil, nil)
	got, err := remnant.Search(context.Background(), q, changes, remnant.Options{Passes: 400, Seed: 1})
	require.NoError(t, err)
	require.NotEmpty(t, got)
	assert.Equal(t, "seam allowance and hem", got[0].Change.Kind())
	assert.InDelta(t, 15, got[0].By, 1e-9)
	assert.Equal(t, []remnant.Given{{Of: remnant.LowerAllowances, Least: 10},
		{Of: remnant.NarrowerHems, Least: 20, By: 15, Most: 30}}, got[0].Change.With(got[0].By))
	assert.LessOrEqual(t, got[0].Fit.Plan.Taken, 480.01)
}

// TestRemediesOnOffcuts: on two remnants of 500 x 500 mm with 15 mm of seam two
// panels stick out by 5 mm on each; the way out shows both remnants.
func TestRemediesOnOffcuts(t *testing.T) {
	row, err := remnant.Together(cloth.Cloth{},
		[]remnant.Offcut{{Length: 500, Width: 500}, {Name: "the end", Length: 500, Width: 500}})
	require.NoError(t, err)
	q := remnant.Question{Cloth: row.Cloth, Length: row.Length, Offcuts: row.Offcuts,
		Pieces: []pieces.Piece{withAllowance(rectangle("panel", 475, 475, 2), 15)}, Lays: []lay.Kind{lay.Open}}
	got, err := remnant.Search(t.Context(), q, remnant.Changes(q, remnant.Limits{SeamAllowance: 10, Hem: 20, Step: 5},
		nil, nil), remnant.Options{Passes: 400, Seed: 1, Show: 1})
	require.NoError(t, err)
	require.Len(t, got, 1)
	assert.Equal(t, "seam allowance", got[0].Change.Kind())
	assert.Equal(t, row.Offcuts, got[0].Fit.Plan.Offcuts)
}
