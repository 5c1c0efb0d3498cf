package remnant

import (
	"cmp"
	"math"
	"slices"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// Limits of what may be given up, mm.
type Limits struct {
	// SeamAllowance is the least; 10 is usual for a seam that is neatened
	// [source.CommonPractice].
	SeamAllowance float64
	// Hem is the least; 20 is usual for a hem that is turned twice
	// [source.CommonPractice].
	Hem float64
	// Step is how finely a measured change is tried: 5, or 1/4 in. Positive.
	Step float64
}

// Changes lists what could be given up, in the order of least harm. Redraft
// are those that only the maker of the pieces can make, such as a shorter
// garment; smaller are smaller sizes, which come last.
func Changes(q Question, limits Limits, redraft, smaller []Change) []Change {
	out := []Change{layOpen(), seamAllowance(limits.SeamAllowance), hem(q, limits.Hem, limits.Step)}
	out = append(out, redraft...)
	out = append(out, crossGrains(q)...)
	out = append(out, joins(q)...)
	out = append(out, facings(q)...)
	out = append(out, naps(q)...)
	return append(out, smaller...)
}

func layOpen() Change {
	return plain(Given{Of: LaidOpen}, func(q Question) (Question, bool) {
		if len(q.Lays) == 0 || slices.Contains(q.Lays, lay.Open) {
			return q, false
		}
		q.Lays = []lay.Kind{lay.Open}
		return q, true
	})
}

func seamAllowance(least float64) Change {
	return plain(Given{Of: LowerAllowances, Least: least}, func(q Question) (Question, bool) {
		return eachPiece(q, func(p pieces.Piece) (pieces.Piece, bool) {
			return lowered(p, false, func(allowance float64) float64 { return math.Min(allowance, least) })
		})
	})
}

// hem narrows the hems step by step down to the least.
func hem(q Question, least, step float64) Change {
	widest := 0.0
	for _, p := range q.Pieces {
		for _, e := range p.Edges {
			if e.Hem {
				widest = math.Max(widest, e.Allowance+e.Included)
			}
		}
	}
	most := WholeSteps(math.Max(0, widest-least), step)
	return Measured(Given{Of: NarrowerHems, Least: least}, most, step, func(q Question, by float64) (Question, bool) {
		return eachPiece(q, func(p pieces.Piece) (pieces.Piece, bool) {
			return lowered(p, true,
				func(allowance float64) float64 { return math.Min(allowance, math.Max(least, allowance-by)) })
		})
	})
}

// WholeSteps rounds down, so that what is told can be measured.
func WholeSteps(most, step float64) float64 { return float64(math.Floor(most/step+1e-9) * step) }

// lowered changes the allowance of the hems, or of all that are not hems. What a
// cutting line includes is cut off it; one of unknown allowance stays as it is.
func lowered(p pieces.Piece, hems bool, to func(float64) float64) (pieces.Piece, bool) {
	less := func(e pieces.Edge) float64 {
		if e.Hem != hems || e.Unknown {
			return 0
		}
		return math.Max(0, e.Included-to(e.Included))
	}
	out, any := withEdges(p), false
	if slices.ContainsFunc(p.Edges, func(e pieces.Edge) bool { return less(e) > 0 }) {
		if trimmed, err := p.Trimmed(less); err == nil {
			out, any = trimmed, true
		}
	}
	for i, e := range out.Edges {
		if e.Hem != hems {
			continue
		}
		if lower := to(e.Allowance); lower < e.Allowance {
			out.Edges[i].Allowance, any = lower, true
		}
	}
	return out, any
}

// Pieces that are tried one by one on the cross grain or with a join
// [source.OwnChoice].
const mostOfAKind = 4

// crossGrains puts single pieces on the cross grain: the largest of the small
// ones, which is where it shows least and helps most.
func crossGrains(q Question) []Change {
	const small = 0.2 // of all [source.OwnChoice]
	total := 0.0
	for _, p := range q.Pieces {
		total += area(p)
	}
	var out []Change
	for _, p := range largestFirst(q.Pieces) {
		if p.Grain.Lie != pieces.StraightGrain || area(p) > small*total || len(out) == mostOfAKind {
			continue
		}
		out = append(out, plain(about(OnCrossGrain, p), only(p, onCrossGrain)))
	}
	return out
}

func onCrossGrain(p pieces.Piece) (pieces.Piece, bool) {
	if p.Fold != seams.None {
		p = p.Unfolded()
	}
	p.Grain.Lie = pieces.CrossGrain
	return p, true
}

// joins sew a piece together from two.
func joins(q Question) []Change {
	var onFold, split []Change
	for _, p := range largestFirst(q.Pieces) {
		if p.Fold != seams.None && len(onFold) < mostOfAKind {
			onFold = append(onFold, plain(about(SeamForFold, p), only(p, seamInsteadOfFold)))
			continue
		}
		if _, ok := halved(p); ok && len(split) < mostOfAKind {
			split = append(split, plain(about(CutInTwo, p), only(p, halved)))
		}
	}
	return append(split, onFold...)
}

// facings are cut from another cloth, and so are linings and interfacings that
// are cut from this one: none of them shows.
func facings(q Question) []Change {
	var names []string
	for _, p := range q.Pieces {
		if hidden(p) && !slices.Contains(names, p.Name) {
			names = append(names, p.Name)
		}
	}
	if len(names) == 0 {
		return nil
	}
	return []Change{plain(Given{Of: OtherCloth, Pieces: names}, func(q Question) (Question, bool) {
		out := q
		out.Pieces = slices.DeleteFunc(slices.Clone(q.Pieces), hidden)
		return out, len(out.Pieces) > 0 && len(out.Pieces) < len(q.Pieces)
	})}
}

func hidden(p pieces.Piece) bool { return !p.Kind.Shows() }

// naps lets pieces lie the other way.
func naps(q Question) []Change {
	garments := map[string]bool{}
	for _, p := range q.Pieces {
		garments[p.Garment] = true
	}
	perGarment := plain(Given{Of: NapPerGarment}, func(q Question) (Question, bool) {
		changes := q.Cloth.Nap == cloth.OneWay && len(garments) > 1
		q.Cloth.Nap = cloth.OneWayPerGarment
		return q, changes
	})
	either := plain(Given{Of: NapIgnored}, func(q Question) (Question, bool) {
		changes := q.Cloth.Nap != cloth.EitherWay || len(q.Cloth.OneWayPieces) > 0
		q.Cloth.Nap, q.Cloth.OneWayPieces = cloth.EitherWay, nil
		return q, changes
	})
	return []Change{perGarment, either}
}

// about says that a single piece is what something is given up of.
func about(of Sacrifice, p pieces.Piece) Given { return Given{Of: of, Pieces: []string{p.Name}} }

// only changes the pieces of one name, in every garment and size.
func only(one pieces.Piece, change func(pieces.Piece) (pieces.Piece, bool)) func(Question) (Question, bool) {
	return func(q Question) (Question, bool) {
		return eachPiece(q, func(p pieces.Piece) (pieces.Piece, bool) {
			if p.Name != one.Name {
				return p, false
			}
			return change(p)
		})
	}
}

// largestFirst gives one piece of each name.
func largestFirst(all []pieces.Piece) []pieces.Piece {
	var out []pieces.Piece
	for _, p := range all {
		if !slices.ContainsFunc(out, func(o pieces.Piece) bool { return o.Name == p.Name }) {
			out = append(out, p)
		}
	}
	slices.SortStableFunc(out, func(a, b pieces.Piece) int { return cmp.Compare(area(b), area(a)) })
	return out
}

// area of all copies of a piece, by its seam line.
func area(p pieces.Piece) float64 {
	ring := p.SeamOutline(1)
	sum := 0.0
	for i := 1; i < len(ring); i++ {
		sum += float64(ring[i-1][0]*ring[i][1]) - float64(ring[i][0]*ring[i-1][1])
	}
	half := 1.0
	if p.Fold != seams.None {
		half = 2
	}
	return float64(math.Abs(sum) / 2 * half * float64(p.Cut))
}
