package check_test

import (
	"slices"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/pieces"
)

// laid is a good plan of one lay.
func laid(t *testing.T, c cloth.Cloth, kind lay.Kind, all ...pieces.Piece) lay.Plan {
	t.Helper()
	options := fabrictest.Brief
	options.Lays = []lay.Kind{kind}
	need, err := plan.Require(t.Context(), c, all, options)
	require.NoError(t, err)
	require.NoError(t, check.Plan(need.Lays[0], all))
	out := need.Lays[0]
	out.Pieces = slices.Clone(out.Pieces)
	return out
}

// moved takes a piece to another place, all of it.
func moved(l *lay.Laid, dx, dy float64) {
	l.X, l.Y = l.X+dx, l.Y+dy
	shift(l, dx, dy)
	for i := range l.Grain {
		l.Grain[i] = orb.Point{l.Grain[i][0] + dx, l.Grain[i][1] + dy}
	}
	seam := slices.Clone(l.Seam)
	for i := range seam {
		seam[i] = orb.Point{seam[i][0] + dx, seam[i][1] + dy}
	}
	l.Seam = seam
}

// longer makes room behind all pieces.
func longer(p *lay.Plan, by float64) {
	p.Length, p.Taken = p.Length+by, p.Taken+by
	p.Beds = slices.Clone(p.Beds)
	for i := range p.Beds {
		p.Beds[i].Length += by
	}
}

// Each rule of the cloth refuses a good lay that breaks it alone.
func TestSpoiledLaysAreRefused(t *testing.T) {
	panel, single := fabrictest.Rectangle("panel", 200, 300, 2), fabrictest.Polygon("yoke", orb.Point{0, 0},
		orb.Point{200, 0}, orb.Point{120, 300})
	plain := cloth.Cloth{Width: 1000, Selvedge: 10}
	shrinking := plain
	shrinking.Shrinkage = cloth.Shrinkage{Warp: 0.05, Weft: 0.02, CutFirst: true}
	stained, gapped, striped, pile := plain, plain, plain, plain
	stained.Flaws = []cloth.Flaw{cloth.RoundFlaw("stain", orb.Point{100, 960}, 10)} // in the upper ply when folded
	gapped.Gap = 5
	striped.Repeat = cloth.Repeat{Along: 80, Across: 50, Centred: []string{"front"}, CentreLine: 20}
	pile.Nap = cloth.OneWayPerGarment
	garment := fabrictest.InGarment("coat", single, fabrictest.Rectangle("facing", 80, 200, 1))
	named := plain
	named.OneWayPieces = []string{"yoke"}
	pairOfYokes := fabrictest.Pair(single)
	pairOfYokes.Cut = 2
	for _, c := range []struct {
		name  string
		cloth cloth.Cloth
		kind  lay.Kind
		all   []pieces.Piece
		spoil func(*lay.Plan)
		want  string
	}{
		{"size", shrinking, lay.Open, []pieces.Piece{single}, func(p *lay.Plan) { p.Cloth.Shrinkage.Warp = 0.06 },
			"the size that the shrinkage asks"},
		{"size not enlarged", plain, lay.Open, []pieces.Piece{single}, func(p *lay.Plan) {
			p.Cloth.Shrinkage = cloth.Shrinkage{Weft: 0.02, CutFirst: true}
		}, "the size that the shrinkage asks"},
		{"count", plain, lay.FoldedAlong, []pieces.Piece{panel}, func(p *lay.Plan) { p.Pieces = nil },
			"0 come out of the lay and 2 are wanted"},
		{"right and left", plain, lay.Open, []pieces.Piece{pairOfYokes}, func(p *lay.Plan) {
			left := at(p, "yoke", true)
			twin := *at(p, "yoke", false)
			*left = twin
		}, "2 right and 0 left"},
		{"face", plain, lay.Open, []pieces.Piece{single}, func(p *lay.Plan) {
			l := &p.Pieces[0]
			p.Pieces[0] = mirrored(*l)
		}, "the piece is no pair"},
		{"flaw in the upper ply", stained, lay.FoldedAlong, []pieces.Piece{panel}, func(p *lay.Plan) {
			box := p.Pieces[0].Outline.Bound()
			moved(&p.Pieces[0], 50-box.Min[0], 400-box.Min[1])
			longer(p, 400)
			p.Width, p.Beds[0].Width = 600, 600
		}, "lies over the selvedge or the end of the cloth"},
		{"flaw by ply", stained, lay.FoldedAlong, []pieces.Piece{panel}, func(p *lay.Plan) {
			longer(p, 400)
			box := p.Pieces[0].Outline.Bound()
			moved(&p.Pieces[0], 50-box.Min[0], 490-box.Max[1])
		}, "lies on the flaw stain"},
		{"end of the bed", plain, lay.Open, []pieces.Piece{panel}, func(p *lay.Plan) {
			p.Beds = slices.Clone(p.Beds)
			p.Beds[0].Length -= 1
		}, "hangs over the cloth"},
		{"side of the bed", plain, lay.Open, []pieces.Piece{panel},
			func(p *lay.Plan) { moved(&p.Pieces[0], 0, -p.Pieces[0].Outline.Bound().Min[1]-1) }, "hangs over the cloth"},
		{"end of the cloth", plain, lay.Open, []pieces.Piece{panel}, func(p *lay.Plan) { p.Taken -= 1 },
			"the end of the cloth"},
		{"gap beside the fold", gapped, lay.FoldedAlong, []pieces.Piece{panel}, func(p *lay.Plan) {
			moved(&p.Pieces[0], 0, 2-p.Pieces[0].Outline.Bound().Min[1])
		}, "nearer to panel copy 1 than the gap"},
		{"gap", gapped, lay.Open, []pieces.Piece{panel}, func(p *lay.Plan) {
			longer(p, 600)
			first, second := p.Pieces[0].Outline.Bound(), p.Pieces[1].Outline.Bound()
			moved(&p.Pieces[1], first.Max[0]+4.5-second.Min[0], first.Min[1]-second.Min[1])
		}, "nearer to panel copy 1 than the gap"},
		{"gap behind a folded part", gapped, lay.InStretches, []pieces.Piece{
			fabrictest.Half("back", 490, 700, 1), fabrictest.Rectangle("yoke", 980, 300, 1),
		}, func(p *lay.Plan) {
			p.Beds = slices.Clone(p.Beds)
			p.Beds[1].X -= 1
			longer(p, 0)
			p.Beds[1].Length += 1
			moved(at(p, "yoke", false), -1, 0)
		}, "than the gap"},
		{"repeat", striped, lay.Open, fabrictest.Skirt(),
			func(p *lay.Plan) { longer(p, 50); moved(at(p, "back", true), 5, 0) }, "off the repeat"},
		{"centre", striped, lay.Open, fabrictest.Skirt(), func(p *lay.Plan) { p.Cloth.Repeat.CentreLine += 5 },
			"its centre lies 5.0 mm off its line"},
		{"nap of a garment", pile, lay.Open, garment, func(p *lay.Plan) { turnRound(at(p, "yoke", false)) },
			"lies against the nap"},
		{"pieces that go one way", named, lay.Open, []pieces.Piece{twice(single)},
			func(p *lay.Plan) { turnRound(&p.Pieces[0]) }, "lies against the nap"},
		{"grain", plain, lay.Open, []pieces.Piece{single}, func(p *lay.Plan) {
			p.Pieces[0].Piece.Grain.Lie = pieces.CrossGrain
		}, "its grainline lies wrongly"},
		{"outline too large", plain, lay.Open, []pieces.Piece{single}, func(p *lay.Plan) {
			l := &p.Pieces[0]
			box := l.Outline.Bound()
			l.Outline = orb.Ring{box.Min, {box.Max[0], box.Min[1]}, box.Max, {box.Min[0], box.Max[1]}, box.Min}
		}, "the outline laid is too large"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := laid(t, c.cloth, c.kind, c.all...)
			c.spoil(&p)
			assert.ErrorContains(t, check.Plan(p, c.all), c.want)
		})
	}
}

func twice(p pieces.Piece) pieces.Piece {
	p.Cut = 2
	return p
}

// mirrored lays a piece face down where it lies.
func mirrored(l lay.Laid) lay.Laid {
	centre := l.Outline.Bound().Center()
	outline := make(orb.Ring, len(l.Outline))
	for i, p := range l.Outline {
		outline[i] = orb.Point{p[0], 2*centre[1] - p[1]}
	}
	l.Outline = outline
	for i := range l.Grain {
		l.Grain[i][1] = 2*centre[1] - l.Grain[i][1]
	}
	// Mirrored about a line along the warp: in its own x first, then turned.
	l.Mirrored, l.Turn, l.Y = !l.Mirrored, 180-l.Turn, 2*centre[1]-l.Y
	return l
}
