package plan_test

import (
	"fmt"
	"math/rand/v2"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

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
		Width: least + 1000*r.Float64(), Selvedge: float64(r.IntN(3)) * 5, PurchaseStep: float64(r.IntN(2)) * 100,
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
		p = fabrictest.Pair(fabrictest.Polygon("", orb.Point{0, 0}, orb.Point{w, 0}, orb.Point{w * 0.7, h},
			orb.Point{w * 0.1, h * 0.8}))
		p.Cut = 2 * (1 + r.IntN(2))
	case 2:
		p = fabrictest.Half("", w, h, 1+r.IntN(2))
	case 3: // a half with a curved side
		p = fabrictest.Half("", w, h, 1)
		p.Edges[1].Path = pieces.Path{pieces.Bezier{P0: orb.Point{w, 0}, P1: orb.Point{w * 1.2, h / 3},
			P2: orb.Point{w * 0.6, h * 2 / 3}, P3: orb.Point{w, h}}}
		for k := range p.Edges[:3] {
			p.Edges[k].Allowance = 15
		}
	case 4: // a single piece without symmetry, with a hollow
		p = fabrictest.Polygon("", orb.Point{0, 0}, orb.Point{w, 0}, orb.Point{w * 0.4, h * 0.3}, orb.Point{w * 0.5, h},
			orb.Point{0, h})
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
		p.Notches = append(p.Notches, pieces.Notch{Edge: edge.Name, At: r.Float64() * edge.Path.Length(), Count: 1,
			Match: marks.Called([]string{"side", "side", "hem", "waist", ""}[r.IntN(5)])})
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
