package found

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// NoFoldThere is the refusal of a fold on a side that has no straight edge.
type NoFoldThere struct{ Side Side }

// Error says so.
func (*NoFoldThere) Error() string {
	return "no straight edge lies on the side that is to be on the fold"
}

// completing is a piece on its way.
type completing struct {
	from  Piece
	said  Said
	piece pieces.Piece
	notes []Note
	open  bool // a half is to be laid whole
}

func (c *completing) count() {
	c.piece.Cut = c.from.Count()
	c.piece.Pair = c.from.IsPair()
	if c.said.Cut > 0 {
		c.piece.Cut = c.said.Cut
		c.piece.Pair = c.piece.Pair && c.piece.Cut%2 == 0
	}
	if c.said.Pair != NotSaid {
		c.piece.Pair = c.said.Pair == Yes
	}
}

// edges of the outline, one of them on the fold where the piece is a half.
func (c *completing) edges() error {
	steps, fold, isHalf := slices.Clone(c.from.Outline), 0, false
	switch side := c.said.Fold; {
	case side == FoldAsFound || side == NoFold:
		if c.from.Mirror != nil {
			steps, fold, isHalf = foldOnMirror(steps, *c.from.Mirror)
			c.open = side == NoFold
		}
		if c.from.Mirror != nil && !isHalf { // it is drawn whole
			c.from.Inner = append(c.from.Inner, Inner{Kind: InternalLine,
				Path: pieces.Path{pieces.Line{From: c.from.Mirror.From, To: c.from.Mirror.To}}})
		}
	default:
		if fold, isHalf = foldOnSide(steps, side); !isHalf {
			return &NoFoldThere{side}
		}
		steps[fold].Begins = Corner
		steps[(fold+1)%len(steps)].Begins = Corner
	}
	c.piece.Edges = edgesOf(steps)
	if !isHalf {
		return nil
	}
	start := steps[fold].Start()
	for i := range c.piece.Edges {
		if e := &c.piece.Edges[i]; e.Path.Start() == start {
			e.Name = seams.Centre
			c.piece.Fold = seams.Centre
		}
	}
	return nil
}

// grain of the file or of what was said; along the fold where there is neither.
func (c *completing) grain() {
	g := &c.piece.Grain
	g.Lie = c.from.Lie
	box := c.piece.Boundary(1).Bound()
	middle, size := box.Center(), orb.Point{box.Max[0] - box.Min[0], box.Max[1] - box.Min[1]}
	const share = 0.3 // of the size, to either side of the middle [source.OwnChoice]
	along := func(u orb.Point) {
		half := share * (math.Abs(float64(u[0]*size[0])) + math.Abs(float64(u[1]*size[1])))
		g.From, g.To = geometry.Sub(middle, geometry.Times(u, half)), geometry.Add(middle, geometry.Times(u, half))
	}
	switch c.said.Grain {
	case GrainUp, GrainBias, GrainEither:
		along(orb.Point{0, 1})
		g.Lie = map[Lie]pieces.GrainLie{GrainBias: pieces.Bias, GrainEither: pieces.EitherGrain}[c.said.Grain]
		return
	case GrainAcross:
		along(orb.Point{1, 0})
		g.Lie = pieces.StraightGrain
		return
	}
	if c.from.Grain != nil {
		g.From, g.To = c.from.Grain.From, c.from.Grain.To
		return
	}
	if fold, ok := c.piece.Edge(c.piece.Fold); ok {
		u := geometry.Unit(geometry.Sub(fold.Path.End(), fold.Path.Start()))
		if u[1] < 0 || u[1] == 0 && u[0] < 0 {
			u = geometry.Times(u, -1)
		}
		along(u)
		return
	}
	along(orb.Point{0, 1}) // the file said that it is cut on no grain of its own
}

const (
	// foldLean is how far, as a sine, a fold may lean from the warp as it is; grainLean
	// how far a grainline is turned to lie along it [source.OwnChoice].
	foldLean  = 0.0005
	grainLean = 0.02 // [source.OwnChoice]
)

// lean has the grainline run along the fold. A piece whose fold does not run along the
// warp is to be opened.
func (c *completing) lean() (open bool) {
	fold, ok := c.piece.Edge(c.piece.Fold)
	if !ok || c.piece.Fold == seams.None {
		return false
	}
	g := &c.piece.Grain
	u := geometry.Unit(geometry.Sub(fold.Path.End(), fold.Path.Start()))
	line := geometry.Sub(g.To, g.From)
	lean := math.Abs(geometry.Cross(u, geometry.Unit(line)))
	switch {
	case c.open, lean > grainLean, g.Lie != pieces.StraightGrain:
		return true
	case lean > foldLean:
		along := geometry.Times(u, math.Copysign(geometry.Norm(line)/2, geometry.Dot(u, line)))
		middle := geometry.Between(g.From, g.To, 0.5)
		g.From, g.To = geometry.Sub(middle, along), geometry.Add(middle, along)
	}
	return false
}

func (c *completing) allowances() {
	switch {
	case c.said.Allowance.How != AllowanceAsFound:
		allow(&c.piece, c.said.Allowance)
	case c.from.Sew != nil:
		if uneven := allowBySew(&c.piece, c.from.Sew); uneven > 0 {
			c.notes = append(c.notes, Note{Kind: SewLineKept, Count: uneven})
		}
	default:
		allow(&c.piece, Allowance{How: AllowanceUnknown})
	}
}
