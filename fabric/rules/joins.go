package rules

import (
	"math"
	"slices"

	"ellwand/fabric/cloth"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// This file says what is to be matched on a repeat: what the pieces of a garment are
// joined by, in the order of importance.

// Join is something that is to lie on one place of the repeat on all pieces that it
// joins.
type Join struct {
	Name marks.Name
	// Pieces of one garment, by their index among those asked, ascending.
	Pieces []int
	// Pairs says that it is the right and the left of each of them that are joined.
	Pairs bool
	// Along says that it is matched along the cloth only, Across that only across it.
	Along, Across bool
}

// of is what tells joins of one name apart.
func (j Join) of() int { return j.Pieces[0] }

// seamTolerance, mm, is how much longer one of two seams may be that are sewn together:
// what is eased or stretched in [source.CommonPractice].
const seamTolerance = 15.0

// Rank of what is matched: centre front, front edges and pockets, side seams, the sleeve
// at the front notch, the collar, then the rest [source.CommonPractice].
func rank(j Join) int {
	switch {
	case j.Name.Seam() == seams.CentreFront:
		return 0
	case j.Name == marks.PatchPocket:
		return 1
	case j.Name.Seam() == seams.SideSeam || j.Name.Seam() == seams.OutsideLeg:
		return 2
	case j.Name == marks.FrontArmhole:
		return 3
	case j.Name == marks.CollarShoulder:
		return 4
	}
	return 5
}

// JoinsOf the pieces asked: what the maker names, or all that there are, the most
// important first.
func JoinsOf(repeat cloth.Repeat, all []pieces.Piece) []Join {
	var found []Join
	var garments []string
	for _, p := range all {
		if !slices.Contains(garments, p.Garment) {
			garments = append(garments, p.Garment)
			found = append(found, joinsIn(repeat, all, p.Garment)...)
		}
	}
	if len(repeat.Matches) == 0 {
		slices.SortStableFunc(found, func(a, b Join) int { return rank(a) - rank(b) })
		return found
	}
	var named []Join
	for _, name := range repeat.Matches {
		for _, j := range append(found[:len(found):len(found)], notchesIn(all, indices(all), nil, 1)...) {
			if j.Name == name && !slices.ContainsFunc(named,
				func(other Join) bool { return other.Name == name && other.of() == j.of() }) {
				named = append(named, j)
			}
		}
	}
	return named
}

// Matchable are the names of all that can be matched on the pieces, the most important
// first.
func Matchable(repeat cloth.Repeat, all []pieces.Piece) []marks.Name {
	repeat.Matches = nil
	var out []marks.Name
	for _, j := range append(JoinsOf(repeat, all), notchesIn(all, indices(all), nil, 1)...) {
		if !slices.Contains(out, j.Name) {
			out = append(out, j.Name)
		}
	}
	return out
}

// JoinsOfTemplates are those of the pieces that some templates are of.
func JoinsOfTemplates(repeat cloth.Repeat, templates []Template) []Join {
	var all []pieces.Piece
	for _, t := range templates {
		for len(all) <= t.Source {
			all = append(all, pieces.Piece{})
		}
		all[t.Source] = t.Asked
	}
	return JoinsOf(repeat, all)
}

// joinsIn a garment.
func joinsIn(repeat cloth.Repeat, all []pieces.Piece, garment string) []Join {
	var mine []int
	for i, p := range all {
		if p.Garment == garment {
			mine = append(mine, i)
		}
	}
	var out []Join
	for _, seam := range marks.MatchingSeams() {
		out = append(out, joinsOfSeam(all, mine, seam)...)
	}
	if pocket := having(all, mine, marks.PatchPocket); len(pocket) > 1 {
		out = append(out, Join{Name: marks.PatchPocket, Pieces: pocket})
	}
	isNamed := func(p pieces.Piece) bool { return slices.Contains(repeat.SideBySide, p.Name) }
	if hanging := selected(all, mine, isNamed); len(hanging) > 0 {
		out = append(out, Join{Name: marks.SideBySide, Pieces: hanging, Along: true})
	}
	out = append(out, alike(all, out)...)
	return append(out, notchesIn(all, mine, out, 2)...)
}

// alike are the pieces whose copies are joined to each other, or hang side by side: across
// the cloth all of them lie alike on the stripes.
func alike(all []pieces.Piece, joined []Join) []Join {
	var out []Join
	seen := map[int]bool{}
	for _, j := range joined {
		for _, i := range j.Pieces {
			if j.Along && all[i].Cut > 1 && !all[i].Pair && !seen[i] {
				seen[i] = true
				out = append(out, Join{Name: marks.Alike, Pieces: []int{i}, Across: true})
			}
		}
	}
	return out
}

// selected are those of some pieces that a question is answered by.
func selected(all []pieces.Piece, of []int, is func(pieces.Piece) bool) []int {
	var out []int
	for _, i := range of {
		if is(all[i]) {
			out = append(out, i)
		}
	}
	return out
}

// having are those with a point of that name.
func having(all []pieces.Piece, of []int, name marks.Name) []int {
	return selected(all, of, func(p pieces.Piece) bool { _, ok := PointNamed(p, name); return ok })
}

// isPair reports whether a right and a left are cut of a piece.
func isPair(p pieces.Piece) bool { return p.Pair && p.Fold == seams.None }

// joinsOfSeam are the pieces of the shell that one seam joins. Those of a centre are
// the right and the left of one piece; of the others those that are about as long, so
// that the side of a bodice is not that of the skirt below it.
func joinsOfSeam(all []pieces.Piece, mine []int, seam seams.Name) []Join {
	name := marks.OfSeam(seam)
	rest := selected(all, having(all, mine, name), func(p pieces.Piece) bool { return p.Kind.Shows() })
	if seam.IsCentre() {
		if pairs := selected(all, rest, isPair); len(pairs) > 0 {
			return []Join{{Name: name, Pieces: pairs, Pairs: true}}
		}
		return nil
	}
	var out []Join
	for len(rest) > 0 {
		j := Join{Name: name}
		length, ends := seamOf(all[rest[0]], seam)
		var others []int
		for _, i := range rest {
			own, n := seamOf(all[i], seam)
			if math.Abs(own-length) > seamTolerance {
				others = append(others, i)
				continue
			}
			j.Pieces = append(j.Pieces, i)
			j.Along, ends = j.Along || n > 1, max(ends, n)
		}
		rest = others
		joinsItself := ends > 1 && all[j.of()].Cut > 1
		if len(j.Pieces) > 1 || joinsItself {
			out = append(out, j)
		}
	}
	return out
}

// seamOf a piece: how long it is, and how often the piece has it; a gore has two sides.
func seamOf(p pieces.Piece, seam seams.Name) (length float64, times int) {
	var sides []seams.Name
	for _, e := range p.Edges {
		if isOfSeam(e, seam) {
			length += e.Path.Length()
			if !slices.Contains(sides, e.Name.Seam()) {
				sides = append(sides, e.Name.Seam())
			}
		}
	}
	return length / float64(max(1, len(sides))), len(sides)
}

// notchesIn some of the pieces are the names of notches that as many pieces of a garment
// share, but for those on a seam that is matched already by its lower end.
func notchesIn(all []pieces.Piece, of []int, joined []Join, least int) []Join {
	type shared struct {
		name    marks.Name
		garment string
	}
	var out []Join
	at := map[shared]int{}
	for _, i := range of {
		for _, notch := range all[i].Notches {
			if notch.Match == marks.None || isJoined(joined, i, notch.Edge) {
				continue
			}
			key := shared{notch.Match, all[i].Garment}
			k, known := at[key]
			switch {
			case !known:
				at[key] = len(out)
				out = append(out, Join{Name: notch.Match, Pieces: []int{i}})
			case !slices.Contains(out[k].Pieces, i):
				out[k].Pieces = append(out[k].Pieces, i)
			}
		}
	}
	return slices.DeleteFunc(out, func(j Join) bool { return len(j.Pieces) < least })
}

// indices of all pieces.
func indices(all []pieces.Piece) []int {
	out := make([]int, len(all))
	for i := range all {
		out[i] = i
	}
	return out
}

// isJoined reports whether the seam of a notch is matched by its lower end.
func isJoined(joined []Join, piece int, edge seams.Name) bool {
	return slices.ContainsFunc(joined, func(j Join) bool {
		return slices.Contains(j.Pieces, piece) && isOfSeam(pieces.Edge{Name: edge},
			j.Name.Seam()) && j.Name.Seam() != seams.None
	})
}
