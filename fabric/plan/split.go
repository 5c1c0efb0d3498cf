package plan

import (
	"cmp"
	"math"
	"slices"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest/layout"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// split is how the pieces are shared between a double bed and a single one.
type split struct{ double, single []rules.Demand }

// choice of a piece between the two beds: least to most of it can come out of
// the double one, by so many at a time as one template gives.
type choice struct {
	rules.Demand
	least, most, step int
	// onDouble and onSingle are what one step takes of either bed.
	onDouble, onSingle load
}

// load is what a step of a piece takes of a bed.
type load struct {
	area  float64
	along float64 // the least extent in x
	queue float64 // along the fold
}

// choicesFor asks of every piece how many of it the beds can give: from two
// plies all, or none, or, of single pieces that are their own mirror image,
// all but the odd one. On a repeat all copies of a piece lie on one bed, since
// the beds may not be able to keep the same matches. It reports false when a
// piece fits neither bed.
func choicesFor(goods cloth.Cloth, double, single bed.Bed, wanted []rules.Demand) ([]choice, bool) {
	out := make([]choice, len(wanted))
	isMatched := !goods.Repeat.IsPlain()
	for i, d := range wanted {
		c := choice{Demand: d, step: 2}
		if d.Piece.Fold != seams.None {
			c.step = 1
		}
		for _, n := range []int{d.Cut, d.Cut - 1} {
			if n <= 0 || n < d.Cut && (d.Piece.Pair || isMatched) {
				continue
			}
			if made, ok := templatesIn(goods, double, d.Of(n, 1)); ok {
				c.most = n
				if isMatched {
					c.step = n
				}
				c.onDouble = loadOf(made, float64(n)/float64(c.step))
				break
			}
		}
		if made, ok := templatesIn(goods, single, d); ok {
			c.onSingle = loadOf(made, float64(d.Cut)/float64(c.step))
		} else if c.least = c.most; c.least < d.Cut {
			return nil, false
		}
		out[i] = c
	}
	return out, true
}

// templatesIn a bed; false when the piece does not fit there.
func templatesIn(c cloth.Cloth, b bed.Bed, d rules.Demand) ([]rules.Template, bool) {
	if b.Width <= 0 {
		return nil, false
	}
	made, err := rules.TemplatesOf(c, b, []rules.Demand{d})
	return made, err == nil
}

// loadOf is what one step of a piece takes, when so many steps take these
// templates.
func loadOf(made []rules.Template, steps float64) load {
	var out load
	for _, t := range made {
		along := math.Inf(1)
		for _, turn := range t.Turns {
			along = math.Min(along, LengthAlong(t, turn))
		}
		out.along = math.Max(out.along, along)
		out.area += float64(t.Copies) * math.Abs(geometry.Area(t.Outline)) / steps
		if t.OnFold {
			out.queue += float64(t.Copies) * along / steps
		}
	}
	return out
}

// LengthAlong is the extent of a turned template in x.
func LengthAlong(t rules.Template, turn layout.Turn) float64 {
	turn.Degrees += 90
	return rules.Across(t.Outline, turn)
}

// sharing says of each piece how many come out of the double bed; the rest
// come out of the single one.
type sharing []int

// split makes the demands of both beds.
func (s sharing) split(choices []choice) split {
	var out split
	for i, c := range choices {
		first := 1
		if s[i] > 0 {
			out.double = append(out.double, c.Of(s[i], 1))
			first += templatesFor(c.Piece, s[i])
		}
		if rest := c.Cut - s[i]; rest > 0 {
			out.single = append(out.single, c.Of(rest, first))
		}
	}
	return out
}

// templatesFor so many of a piece on the double bed.
func templatesFor(piece pieces.Piece, cut int) int {
	if piece.Fold != seams.None {
		return cut
	}
	return cut / 2
}

// usualEfficiency is that of a very good lay of garments, to guess by: 80 to 85 %
// [source.VilumsoneNemes].
const usualEfficiency = 0.82

// lengths guesses how long both beds will be, before they are solved: by area
// at the usual efficiency, by the longest piece, and by the pieces that queue
// along the fold. It reports false when one of them is empty.
func (s sharing) lengths(choices []choice, double, single bed.Bed) (first, second float64, ok bool) {
	var d, o load
	for i, c := range choices {
		if s[i] > 0 {
			d = d.with(c.onDouble, float64(s[i])/float64(c.step))
		}
		if rest := c.Cut - s[i]; rest > 0 {
			o = o.with(c.onSingle, float64(rest)/float64(c.step))
		}
	}
	return d.guess(double), o.guess(single), d.area > 0 && o.area > 0
}

func (l load) with(more load, steps float64) load {
	return load{l.area + float64(steps*more.area), math.Max(l.along, more.along), l.queue + float64(steps*more.queue)}
}

func (l load) guess(b bed.Bed) float64 {
	return math.Max(l.area/(usualEfficiency*b.Width), math.Max(l.along, l.queue))
}

// sharings are those worth trying, by a guess of the length of the lay: all
// that can be cut double; only what lies on the fold; and whatever comes out
// shorter when the pieces are moved, a template at a time, from one bed to the
// other.
func sharings(choices []choice, guess func(sharing) (float64, bool)) []sharing {
	all, onlyFold := make(sharing, len(choices)), make(sharing, len(choices))
	for i, c := range choices {
		all[i], onlyFold[i] = c.most, c.least
		if c.Piece.Fold != seams.None {
			onlyFold[i] = c.most
		}
	}
	out := []sharing{all, onlyFold, descent(all, choices, guess), descent(onlyFold, choices, guess)}
	// The largest pieces one after the other, beginning with everything double.
	order := make([]int, len(choices))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int {
		return cmp.Compare(choices[b].onDouble.area, choices[a].onDouble.area)
	})
	next := all
	for _, i := range order {
		for next[i]-choices[i].step >= choices[i].least && len(out) < mostSharings {
			next = slices.Clone(next)
			next[i] -= choices[i].step
			out = append(out, next)
		}
	}
	var distinct []sharing
	for _, s := range out {
		if _, ok := guess(s); ok && !slices.ContainsFunc(distinct, func(o sharing) bool { return slices.Equal(o, s) }) {
			distinct = append(distinct, s)
		}
	}
	return distinct
}

// mostSharings of the pieces between two beds are tried [source.OwnChoice].
const mostSharings = 24

// descent moves one template at a time, the one that gains the most, until
// none gains anything. A sharing that leaves a bed empty counts as endless.
func descent(from sharing, choices []choice, guess func(sharing) (float64, bool)) sharing {
	length := func(s sharing) float64 {
		if l, ok := guess(s); ok {
			return l
		}
		return math.Inf(1)
	}
	now, have := from, length(from)
	for range 100 {
		var best sharing
		for i, c := range choices {
			for _, n := range []int{now[i] - c.step, now[i] + c.step} {
				if n < c.least || n > c.most {
					continue
				}
				moved := slices.Clone(now)
				moved[i] = n
				if l := length(moved); l < have {
					best, have = moved, l
				}
			}
		}
		if best == nil {
			break
		}
		now = best
	}
	return now
}

// partOfPlan are the pieces of one part.
func partOfPlan(plan lay.Plan, part int) lay.Plan {
	var only []lay.Laid
	for _, l := range plan.Pieces {
		if l.Bed == part {
			only = append(only, l)
		}
	}
	plan.Pieces = only
	return plan
}

// sharedIn a plan of two beds are what lies on its double bed, and on its single one, of
// the pieces to be shared out.
func (t *Planner) sharedIn(plan lay.Plan, choices []choice) (double, single sharing) {
	double, single = make(sharing, len(choices)), make(sharing, len(choices))
	sources := lay.SourcesIn(t.Asked)
	for _, l := range plan.Pieces {
		source := sources.Of(l)
		for i, c := range choices {
			switch {
			case c.Source != source:
			case l.Bed == 0:
				double[i] += c.step
			default:
				single[i]++
			}
		}
	}
	for i, c := range choices {
		if c.step == c.Cut { // all copies lie on one bed
			double[i] = min(double[i], c.Cut)
		}
	}
	return double, single
}
