package fabric

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/geometry"
	"ellwand/nest/layout"
	"ellwand/pieces"
)

// bed is a rectangle of a lay in which the cloth lies alike throughout: one
// problem of plain geometry. Most lays are a single bed; one with a selvedge
// folded in has two side by side, one in stretches two after each other. This
// file is the one place where the way of folding becomes geometry.
type bed struct {
	lay   Lay     // Open, FoldedAlong, FoldedAcross, CutAcross or BothSelvedgesIn
	width float64 // usable: y runs from 0 to width
	// at is where the bed begins in the frame of the whole lay.
	at orb.Point
	// v is where its y = 0 lies on the open cloth, across, from the inner
	// edge of the selvedge nearest to the cutter.
	v float64
	// before is the length of cloth that the stretches before it take.
	before float64
	// lost is what flaws take of the width, below y = 0 and above the width,
	// for the whole length.
	lostLow, lostHigh float64
}

// bedOf a lay that is a single bed.
func bedOf(c cloth.Cloth, lay Lay) bed {
	b := bed{lay: lay, width: lay.UsableWidth(c)}
	switch lay {
	case FoldedAlong:
		b.v = Open.UsableWidth(c) / 2
	case BothSelvedgesIn:
		b.v = c.WidthLaid()/4 - c.Selvedge
	}
	return b.trimmed(c)
}

// trimmed leaves out of the bed what flaws along its edges take for its whole
// length, such as a faded edge. A fold stays where it is.
func (b bed) trimmed(c cloth.Cloth) bed {
	if b.lay != Open && b.lay != FoldedAlong {
		return b
	}
	for _, p := range b.pliesOn(c, 0) {
		back := inverse(p.motion)
		for _, flaw := range c.Flaws {
			box := flaw.Outline.Bound()
			if box.Min[0] > -cloth.Endless || box.Max[0] < cloth.Endless {
				continue
			}
			from := apply(back, orb.Point{0, box.Min[1] - c.Selvedge})[1]
			to := apply(back, orb.Point{0, box.Max[1] - c.Selvedge})[1]
			from, to = math.Min(from, to), math.Max(from, to)
			switch {
			case from < b.width && to >= b.width:
				b.width, b.lostHigh = from, b.lostHigh+b.width-from
			case from <= 0 && to > 0 && b.lay == Open:
				b.width, b.v, b.at[1], b.lostLow = b.width-to, b.v+to, b.at[1]+to, b.lostLow+to
				return b.trimmed(c) // other bands lie elsewhere in its frame now
			}
		}
	}
	return b
}

// foldedIn gives the two beds of a cloth with one selvedge folded in, the
// fold being that far from the edge of the cloth: two plies from the fold to
// the folded-in selvedge, then one ply to the other selvedge. The lower ply
// goes on beyond that edge, so that pieces on either side of it keep their gap.
func foldedIn(c cloth.Cloth, depth float64) (double, single bed) {
	width := c.WidthLaid()
	double = bed{lay: FoldedAlong, width: depth - c.Selvedge, v: depth - c.Selvedge}
	begin := depth + math.Max(0, c.Gap-c.Selvedge)
	single = bed{lay: Open, width: width - depth - begin - c.Selvedge, at: orb.Point{0, begin}, v: depth + begin - c.Selvedge}
	return double.trimmed(c), single.trimmed(c)
}

// openAfter is the open stretch behind a folded one.
func openAfter(c cloth.Cloth, length float64) bed {
	b := bedOf(c, Open)
	b.at[0], b.before = length, length
	return b
}

func (b bed) plies() int { return b.lay.Plies() }

// room is the width across that one piece may take.
func (b bed) room(c cloth.Cloth) float64 {
	if b.lay == BothSelvedgesIn {
		return b.width/2 - middleStrip(c)
	}
	return b.width
}

// middleStrip is what is kept off, on either side, where two edges of the
// cloth meet: the selvedge, or of a cloth that may be used to its very edge
// the width of a chalk line.
func middleStrip(c cloth.Cloth) float64 { return math.Max(c.Selvedge, 0.5) }

// foldPins are the edges of the bed that are folds.
func (b bed) foldPins() []layout.Pin {
	switch b.lay {
	case FoldedAlong:
		return []layout.Pin{layout.PinLow}
	case BothSelvedgesIn:
		return []layout.Pin{layout.PinLow, layout.PinHigh}
	}
	return nil
}

// ply of the cloth where y of the bed lies between low and high: motion brings
// the bed to the open cloth, in the frame of the open lay.
type ply struct {
	motion    pieces.Motion
	low, high float64
}

// pliesOn gives the lower ply of a bed of that length, and then the upper
// ones.
func (b bed) pliesOn(c cloth.Cloth, length float64) []ply {
	w, u := b.width, b.before
	lower := ply{pieces.Motion{A: 1, D: 1, E: u, F: b.v}, 0, w}
	mirrored := func(v, low, high float64) ply {
		return ply{pieces.Motion{A: 1, D: -1, E: u, F: v}, low, high}
	}
	switch b.lay {
	case FoldedAlong:
		return []ply{lower, mirrored(b.v, 0, w)}
	case BothSelvedgesIn:
		return []ply{lower, mirrored(b.v, 0, w/2), mirrored(b.v+2*w, w/2, w)}
	case FoldedAcross:
		lower.motion.E = length
		return []ply{lower, {pieces.Motion{A: -1, D: 1, E: length}, 0, w}}
	case CutAcross:
		upper := mirrored(w, 0, w)
		upper.motion.E = secondLength(c, length)
		return []ply{lower, upper}
	}
	return []ply{lower}
}

// onCloth gives the plies of a bed of that length in the frame of the lay.
func (b bed) onCloth(c cloth.Cloth, length float64) []Ply {
	var out []Ply
	toBed := pieces.Move(-b.at[0], -b.at[1])
	for i, p := range b.pliesOn(c, length) {
		toCloth := toBed.Then(p.motion).Then(pieces.Move(0, c.Selvedge))
		out = append(out, Ply{Upper: i > 0, Low: b.at[1] + p.low, High: b.at[1] + p.high, ToCloth: toCloth})
	}
	return out
}

// secondLength is where, along the cloth, the upper length of a cloth cut
// across begins: at a whole number of repeats, so that both plies match.
func secondLength(c cloth.Cloth, length float64) float64 {
	if c.Repeat.Along == 0 {
		return length
	}
	return math.Ceil(length/c.Repeat.Along-1e-9) * c.Repeat.Along
}

// taken is the length of cloth that a bed of that length takes.
func (b bed) taken(c cloth.Cloth, length float64) float64 {
	switch b.lay {
	case FoldedAcross:
		return 2 * length
	case CutAcross:
		return length + secondLength(c, length)
	}
	return length
}

// zones are the parts of the bed that may not be used: the flaws of all plies,
// and the line where two selvedges meet. They reach as far as any layout can.
func (b bed) zones(c cloth.Cloth, far float64) ([]orb.Ring, error) {
	var out []orb.Ring
	if len(c.Flaws) > 0 && b.lay.isAcross() {
		return nil, fmt.Errorf("the cloth has flaws, and where the fold or cut across it falls depends on the length, so that they would lie elsewhere each time; lay it open or folded along the warp")
	}
	for _, p := range b.pliesOn(c, 0) {
		back := inverse(p.motion)
		for _, flaw := range c.Flaws {
			ring := make(orb.Ring, len(flaw.Outline))
			for i, q := range flaw.Outline {
				ring[i] = apply(back, orb.Point{q[0], q[1] - c.Selvedge})
			}
			parts, err := geometry.Clipped(geometry.Closed(ring), 0, p.low, far, p.high)
			if err != nil {
				return nil, err
			}
			out = append(out, parts...)
		}
	}
	if b.lay == BothSelvedgesIn {
		middle, half := b.width/2, middleStrip(c)
		out = append(out, geometry.Rectangle(0, middle-half, far, middle+half))
	}
	return out, nil
}

// farEnd is a length that no layout of the search exceeds: three times all the
// templates one behind the other, behind the last flaw.
func farEnd(c cloth.Cloth, templates []template) float64 {
	far := 1000.0
	for _, flaw := range c.Flaws {
		if end := flaw.Outline.Bound().Max[0]; end < cloth.Endless/2 {
			far = math.Max(far, end)
		}
	}
	for _, t := range templates {
		size := t.outline.Bound()
		far += 3 * float64(t.copies) * (math.Hypot(size.Max[0]-size.Min[0], size.Max[1]-size.Min[1]) + c.Gap + c.Repeat.Along)
	}
	return far
}

// inverse of a motion that keeps lengths.
func inverse(m pieces.Motion) pieces.Motion {
	det := m.A*m.D - m.B*m.C
	out := pieces.Motion{A: m.D / det, B: -m.B / det, C: -m.C / det, D: m.A / det}
	origin := apply(out, orb.Point{m.E, m.F})
	out.E, out.F = -origin[0], -origin[1]
	return out
}
