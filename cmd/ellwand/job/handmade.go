package job

import (
	"strconv"

	"ellwand/pieces"
)

// grains in the words of the job file.
var grains = []string{"straight", "cross", "bias"}

// handmade makes the rectangles of a garment.
func (r *resolver) handmade(path string, garment Garment, cloth string, widths allowances) []pieces.Piece {
	var out []pieces.Piece
	for i, rectangle := range garment.Pieces {
		inner := entry(path+".pieces", i)
		if rectangle.Name == "" {
			r.fault(inner, "piece %d of garment %s has no name; add one, such as: name: collar", i+1, quoted(garment.Name))
			continue
		}
		if piece, ok := r.rectangle(inner, rectangle, cloth, widths); ok {
			out = append(out, piece)
		}
	}
	return out
}

func (r *resolver) rectangle(path string, p Piece, cloth string, widths allowances) (pieces.Piece, bool) {
	name := "piece " + quoted(p.Name)
	width, widthKnown := r.positive(path+".width", name+": the width", p.Width)
	height, heightKnown := r.positive(path+".height", name+": the height", p.Height)
	cut := r.count(path+".cut", name+": cut", p.Cut)
	pair := r.yes(path+".pair", name+": pair", p.Pair)
	lie := pieces.GrainLie(r.choose(path+".grain", name+": the grain", string(p.Grain), grains))
	kind := pieces.Kind(r.choose(path+".kind", name+": the kind", string(p.Kind), pieces.KindNames()))
	allowance := widths.seams()
	if p.Allowance != "" {
		allowance, _ = r.length(path+".allowance", name+": the allowance", p.Allowance)
	}
	cloth = r.clothNamed(path+".cloth", name, p.Cloth, cloth)
	if !widthKnown || !heightKnown {
		return pieces.Piece{}, false
	}
	if pair && cut%2 != 0 {
		r.fault(path, "%s is a pair, but %d are cut; a pair needs an even number: cut: %d", name, cut, cut+1)
		return pieces.Piece{}, false
	}
	piece := pieces.Rectangle(string(p.Name), width, height)
	piece.Cloth, piece.Kind, piece.Cut, piece.Pair, piece.Grain.Lie = cloth, kind, cut, pair, lie
	for i := range piece.Edges {
		piece.Edges[i].Allowance = allowance
	}
	if !r.fold(path, name, p, &piece) {
		return pieces.Piece{}, false
	}
	if err := piece.Check(); err != nil {
		r.fault(path, "%s", err)
		return pieces.Piece{}, false
	}
	return piece, true
}

// fold puts an edge of a rectangle on the fold. Only an edge along the warp
// can lie there: left or right on the straight grain, top or bottom on the
// cross grain, none on the bias.
func (r *resolver) fold(path, name string, p Piece, piece *pieces.Piece) bool {
	if p.Fold == "" {
		return true
	}
	sides := []string{"left", "right", "top", "bottom"}
	side := sides[r.choose(path+".fold", name+": the fold edge", string(p.Fold), sides)]
	upright := side == "left" || side == "right"
	switch {
	case piece.Grain.Lie == pieces.Bias:
		r.fault(path+".fold", "%s is on the bias, so it cannot lie on the fold; give its whole width and remove fold", name)
		return false
	case upright != (piece.Grain.Lie == pieces.StraightGrain):
		r.fault(path+".fold", "%s: the fold edge runs along the warp, so with %s grain it is %s, not %s", name, grains[piece.Grain.Lie], foldSides(upright), side)
		return false
	case piece.Pair:
		r.fault(path+".fold", "%s cannot be a pair and lie on the fold: a folded piece is cut whole; remove pair", name)
		return false
	}
	piece.Fold = side
	for i := range piece.Edges {
		if piece.Edges[i].Name == side {
			piece.Edges[i].Allowance = 0
		}
	}
	return true
}

// foldSides names the sides that could lie on the fold when one of the other
// direction was asked.
func foldSides(upright bool) string {
	if upright {
		return "top or bottom"
	}
	return "left or right"
}

func quoted(name Text) string { return strconv.Quote(string(name)) }
