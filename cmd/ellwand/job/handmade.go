package job

import (
	"strings"

	"ellwand/cmd/ellwand/strict"
	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// handmade makes the rectangles of a garment.
func (r *resolver) handmade(path Path, garment Garment, cloth string, widths allowances) []pieces.Piece {
	var out []pieces.Piece
	for i, rectangle := range garment.Pieces {
		inner := path.Key("pieces").Entry(i)
		if rectangle.Name == "" {
			r.fault(inner, strict.Missing, "piece %d of garment %s has no name; add one, such as: name: collar", i+1,
				quoted(garment.Name))
			continue
		}
		if piece, ok := r.rectangle(inner, rectangle, cloth, widths); ok {
			out = append(out, piece)
		}
	}
	return out
}

func (r *resolver) rectangle(path Path, p Piece, cloth string, widths allowances) (pieces.Piece, bool) {
	name := "piece " + quoted(p.Name)
	width, widthKnown := r.positive(path.Key("width"), name+": the width", p.Width)
	height, heightKnown := r.positive(path.Key("height"), name+": the height", p.Height)
	cut := r.count(path.Key("cut"), name+": cut", p.Cut)
	pair := r.yes(path.Key("pair"), name+": pair", p.Pair)
	lie := choose(r.values, path.Key("grain"), name+": the grain", p.Grain)
	kind := choose(r.values, path.Key("kind"), name+": the kind", p.Kind)
	allowance := widths.seams()
	if p.Allowance != "" {
		allowance, _ = r.length(path.Key("allowance"), name+": the allowance", p.Allowance)
	}
	cloth = r.clothNamed(path.Key("cloth"), name, p.Cloth, cloth)
	if !widthKnown || !heightKnown {
		return pieces.Piece{}, false
	}
	if pair && cut%2 != 0 {
		r.fault(path.Key("pair"), strict.Contradiction, "%s is a pair, but %d are cut; a pair needs an even number: cut: %d", name,
			cut, cut+1)
		return pieces.Piece{}, false
	}
	piece := pieces.Rectangle(string(p.Name), width, height)
	piece.Approximate = r.yes(path.Key("approximate"), name+": approximate", p.Approximate)
	piece.Cloth, piece.Kind, piece.Cut, piece.Pair, piece.Grain.Lie = cloth, kind, cut, pair, lie
	for i := range piece.Edges {
		piece.Edges[i].Allowance = allowance
	}
	if !r.fold(path, name, p, &piece) || !r.joins(path, name, p, &piece) {
		return pieces.Piece{}, false
	}
	if err := piece.Check(); err != nil {
		r.fault(path, strict.Malformed, "%s", err)
		return pieces.Piece{}, false
	}
	return piece, true
}

// fold puts an edge of a rectangle on the fold. Only an edge along the warp
// can lie there: left or right on the straight grain, top or bottom on the
// cross grain, none on the bias.
func (r *resolver) fold(path Path, name string, p Piece, piece *pieces.Piece) bool {
	if p.Fold == "" {
		return true
	}
	chosen := choose(r.values, path.Key("fold"), name+": the fold edge", p.Fold)
	side, upright := foldSides[chosen], chosen.upright()
	switch {
	case piece.Grain.Lie == pieces.Bias:
		r.fault(path.Key("fold"), strict.Contradiction,
			"%s is on the bias, so it cannot lie on the fold; give its whole width and remove fold", name)
		return false
	case upright != (piece.Grain.Lie == pieces.StraightGrain):
		r.fault(path.Key("fold"), strict.Contradiction, "%s: the fold edge runs along the warp, so with %s grain it is %s, not %s",
			name, piece.Grain.Lie, sidesOf(!upright), side)
		return false
	case piece.Pair:
		r.fault(path.Key("fold"), strict.Contradiction,
			"%s cannot be a pair and lie on the fold: a folded piece is cut whole; remove pair", name)
		return false
	}
	piece.Fold = seams.Called(side)
	for i := range piece.Edges {
		if piece.Edges[i].Name == piece.Fold {
			piece.Edges[i].Allowance = 0
		}
	}
	return true
}

// joins pieces a rectangle together from equal lengths.
func (r *resolver) joins(path Path, name string, p Piece, piece *pieces.Piece) bool {
	if p.Joins == "" {
		return true
	}
	joins := r.count(path.Key("joins"), name+": joins", p.Joins)
	strip, ok := pieces.StripOf(*piece)
	switch {
	case !ok:
		r.fault(path.Key("joins"), strict.Contradiction, "%s lies on the fold, so it is cut in one piece; remove joins or fold", name)
		return false
	case strip.Length/float64(joins+1) < construct.LeastStrip:
		r.fault(path.Key("joins"), strict.OutOfRange, "%s: %d joins leave lengths of only %s; ask for fewer", name, joins,
			r.work.Format(strip.Length/float64(joins+1)))
		return false
	}
	*piece = strip.Joined(joins)
	return true
}

// sidesOf names the sides that run upright, or level.
func sidesOf(upright bool) string {
	var out []string
	for side, word := range foldSides {
		if foldSide(side).upright() == upright {
			out = append(out, word)
		}
	}
	return strings.Join(out, " or ")
}
