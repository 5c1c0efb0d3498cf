package page

import (
	"slices"
	"strconv"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/remnant"
	"ellwand/pieces"
	"ellwand/pieces/measure"
	"ellwand/pieces/seams"
)

// ways to write a change of a piece of a garment, the first of which that makes of it what
// was asked is taken: a block may be drafted otherwise by a key that means another piece.
type ways func(garment int, piece pieces.Piece) [][]desk.Action

// becomes says whether pieces of one name became what was asked; none where the cloth has
// them no more.
type becomes func(before, after []pieces.Piece) bool

// each of the pieces that are given up of, in every garment, is changed by the first of the
// ways that does it. It reports false where one has none.
func (r *remedy) each(given remnant.Given, written ways, is becomes) bool {
	for _, name := range given.Pieces {
		for garment := range r.file.Garments {
			before := r.named(r.work, garment, name)
			if len(before) > 0 && !r.first(garment, before, written(garment, before[0]), is) {
				return false
			}
		}
	}
	return true
}

func (r *remedy) first(garment int, before []pieces.Piece, written [][]desk.Action, is becomes) bool {
	for _, actions := range written {
		do := append(slices.Clone(r.do), actions...)
		work := r.tried(do)
		if work != nil && is(before, r.named(work, garment, before[0].Name)) {
			r.do, r.file = do, r.changed(do)
			return true
		}
	}
	return false
}

// named are the pieces of a name that a garment of the file has on the cloth, one for each
// wearer.
func (r *remedy) named(work *job.Work, garment int, name string) []pieces.Piece {
	var out []pieces.Piece
	for _, made := range work.Garments {
		if made.Kind != string(r.file.Garments[garment].Name) {
			continue
		}
		for _, p := range made.Pieces {
			if p.Name == name && p.Cloth == r.work.Cloths[r.cloth].Cloth.Name {
				out = append(out, p)
			}
		}
	}
	return out
}

// own is the piece that the file gives by its measures, with its path; false where it is
// drafted, or in a pattern.
func (r *remedy) own(garment int, name string) (job.Piece, strict.Path, bool) {
	all := r.file.Garments[garment].Pieces
	at := slices.IndexFunc(all, func(p job.Piece) bool { return string(p.Name) == name })
	if at < 0 {
		return job.Piece{}, nil, false
	}
	return all[at], garmentAt(garment).Key("pieces").Entry(at), true
}

// part of a garment that is drafted as a piece of a name, with its path.
func (r *remedy) part(garment int, name string) (job.Part, strict.Path, bool) {
	all := r.file.Garments[garment].Parts
	at := slices.IndexFunc(all, func(p job.Part) bool {
		return string(p.Name) == name || p.Name == "" && string(p.Kind) == name
	})
	if at < 0 {
		return job.Part{}, nil, false
	}
	return all[at], garmentAt(garment).Key("parts").Entry(at), true
}

// onCross lays a piece on the cross grain.
func (r *remedy) onCross(garment int, piece pieces.Piece) [][]desk.Action {
	if p, at, is := r.own(garment, piece.Name); is {
		across := []desk.Action{setText(at.Key("grain"), pieces.CrossGrain.String())}
		if p.Fold != "" {
			across = append(r.unfolded(at, piece), across...)
		}
		return [][]desk.Action{across}
	}
	var out [][]desk.Action
	if p, at, is := r.part(garment, piece.Name); is {
		for _, grain := range p.Grain.Words() {
			out = append(out, []desk.Action{setText(at.Key("grain"), grain)})
		}
	}
	return out
}

// unfolded writes the whole of a rectangle that was given by its half; any other shape
// would have to be drawn anew, and stays on the fold.
func (r *remedy) unfolded(at strict.Path, half pieces.Piece) []desk.Action {
	fold, known := half.Edge(half.Fold)
	half.Fold = seams.None
	if _, is := pieces.StripOf(half); !is || !known {
		return nil
	}
	across, key := 0, "width"
	if fold.Path.Start()[0] != fold.Path.End()[0] {
		across, key = 1, "height"
	}
	box := half.Boundary(flattened).Bound()
	whole := 2 * (box.Max[across] - box.Min[across])
	return []desk.Action{desk.UnsetAt(at.Key("fold")), setText(at.Key(key), inUnits(whole, r.work.Unit))}
}

// flattened is how closely curves are followed, mm; a rectangle has none [source.OwnChoice].
const flattened = 0.1

// inUnits is a length as a number of the job, to a thousandth.
func inUnits(mm float64, unit measure.Unit) string { return thousandths(mm / unit.Millimetres()) }

func liesAcross(_, after []pieces.Piece) bool {
	return all(after, func(p pieces.Piece) bool { return p.Grain.Lie == pieces.CrossGrain && p.Fold == seams.None })
}

// joined pieces a strip together from twice as many lengths.
func (r *remedy) joined(garment int, piece pieces.Piece) [][]desk.Action {
	if p, at, is := r.own(garment, piece.Name); is {
		return [][]desk.Action{{setText(at.Key("joins"), twiceAsMany(string(p.Joins)))}}
	}
	if p, at, is := r.part(garment, piece.Name); is {
		return [][]desk.Action{{setText(at.Key("joins"), twiceAsMany(string(p.Joins)))}}
	}
	return nil
}

// twiceAsMany lengths: of n joins 2n + 1.
func twiceAsMany(joins string) string {
	n, err := strconv.Atoi(joins)
	if err != nil {
		n = 0
	}
	return strconv.Itoa(2*n + 1)
}

func isHalved(before, after []pieces.Piece) bool {
	return len(after) == len(before) && all(after, func(p pieces.Piece) bool { return p.Cut == 2*before[0].Cut })
}

// seamed gives a piece a seam in place of its fold.
func (r *remedy) seamed(garment int, piece pieces.Piece) [][]desk.Action {
	p, at, is := r.own(garment, piece.Name)
	if !is {
		var out [][]desk.Action
		if g := r.file.Garments[garment]; g.Bodice != nil {
			out = append(out, []desk.Action{setText(garmentAt(garment).Key("bodice").Key("back"), "seam")})
		} else if g.Skirt != nil {
			out = append(out, []desk.Action{setText(garmentAt(garment).Key("skirt").Key("back"), "seam")})
		}
		return out
	}
	pair := []desk.Action{desk.UnsetAt(at.Key("fold"))}
	for cloth := range p.Cut.By {
		pair = append(pair, setText(at.Key("cut").Key(cloth), twice(string(p.Cut.By[cloth]))))
	}
	if len(p.Cut.By) == 0 {
		pair = append(pair, setText(at.Key("cut"), twice(string(p.Cut.One))))
	}
	pair = append(pair, setText(at.Key("pair"), "yes"))
	return [][]desk.Action{pair, append(slices.Clone(pair), withAllowance(p, at))}
}

// withAllowance gives the edge that was on the fold the allowance of the job, where all
// others say theirs.
func withAllowance(p job.Piece, at strict.Path) desk.Action {
	edge, to := string(p.Fold), at.Key("allowance")
	if p.Allowance == nil || p.Allowance.One == "" {
		return setText(to.Key(edge), "add")
	}
	return desk.SetTo(to, edit.Value{Keys: []edit.Pair{{Key: edge, Value: edit.Text("add")},
		{Key: seams.Every.String(), Value: edit.Text(string(p.Allowance.One))}}})
}

func twice(count string) string {
	n, err := strconv.Atoi(count)
	if err != nil {
		n = 1
	}
	return strconv.Itoa(2 * n)
}

// isSeamed says that pairs are cut where halves lay on the fold, with an allowance for the
// seam that they have now.
func isSeamed(before, after []pieces.Piece) bool {
	return len(after) == len(before) && all(after, func(p pieces.Piece) bool {
		edge, known := p.Edge(before[0].Fold)
		hasSeam := !known || edge.Allowance > 0 && edge.Included == 0 && !edge.Unknown
		return p.Fold == seams.None && p.Pair && p.Cut == 2*before[0].Cut && hasSeam
	})
}

func all(some []pieces.Piece, is func(pieces.Piece) bool) bool {
	return len(some) > 0 && !slices.ContainsFunc(some, func(p pieces.Piece) bool { return !is(p) })
}
