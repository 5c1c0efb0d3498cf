package rules

import (
	"errors"
	"math"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/nest/layout"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// TemplatesOf says how every piece is chalked in a bed. This is the one place
// where grain, nap, fold and right side become plain geometry. It fails with
// all reasons why the lay is not possible.
func TemplatesOf(c cloth.Cloth, b bed.Bed, demands []Demand) ([]Template, error) {
	if b.Kind == lay.FoldedAcross && c.Nap != cloth.EitherWay {
		return nil, lay.Reason{Of: lay.WarpTurned, Nap: c.Nap}
	}
	var out []Template
	var faults []error
	small := smallest(demands)
	for _, d := range demands {
		d.isSmall = areaOf(d) <= small
		made, err := chalked(c, b, d)
		if err != nil {
			faults = append(faults, err)
			continue
		}
		for _, t := range made {
			t.Source = d.Source
			if t.Turns, err = turnsKept(c, b, t); err == nil {
				t.Turns, err = thatFit(c, b, t)
			}
			if err != nil {
				faults = append(faults, err)
				break
			}
			out = append(out, t)
		}
	}
	return out, errors.Join(faults...)
}

// smallShare of the area of all pieces is what one, all its copies, may have at most,
// so that it is cut from the lower of two plies alone: a patch pocket, not a yoke. The
// cloth over it is wasted [source.OwnChoice].
const smallShare = 0.05

// smallest area that is not small among all pieces.
func smallest(demands []Demand) float64 {
	sum := 0.0
	for _, d := range demands {
		sum += areaOf(d)
	}
	return smallShare * sum
}

// areaOf all copies of a piece.
func areaOf(d Demand) float64 {
	return float64(float64(d.Cut) * math.Abs(geometry.Area(d.outline)))
}

// chalked gives the templates of one piece: two when right and left are
// chalked apart.
func chalked(c cloth.Cloth, b bed.Bed, d Demand) ([]Template, error) {
	base := Template{Asked: d.Piece, Piece: d.Piece, Outline: d.outline, Copies: d.Cut, Yields: 1, First: d.first}
	mayPointBack := eitherEnd(c, b, d.Piece.Name)
	c.Nap = c.NapOf(d.Piece.Name)
	pointsBack := b.PointBack && c.Nap == cloth.OneWay
	if mayPointBack || pointsBack {
		c.Nap = cloth.OneWayPerGarment // bound to one way as a whole by its group
	}
	made, err := laidIn(b, c, d, base)
	if pointsBack {
		for i := range made {
			made[i].Turns = pointingBack(made[i].Turns)
		}
	}
	return made, err
}

// laidIn a bed, on a cloth as it binds the piece, it gives those templates.
func laidIn(b bed.Bed, c cloth.Cloth, d Demand, base Template) ([]Template, error) {
	switch {
	case b.Kind == lay.FoldedAcross && c.Nap != cloth.EitherWay:
		return nil, lay.Reason{Of: lay.PieceTurned, Piece: d.Piece.Name}
	case b.Plies() == 1 && d.Piece.Fold != seams.None:
		return wholeOf(base, c), nil
	case b.Plies() == 1:
		return singly(base, c), nil
	case d.Piece.Fold != seams.None && len(b.FoldPins()) > 0:
		return onFold(base, c, b)
	case d.Piece.Fold != seams.None:
		return doubly(wholeOf(base, c)[0], c)
	case d.isSmall && !d.Piece.Pair && b.Kind == lay.FoldedAlong && !b.Shared:
		return withOdd(base, c), nil
	default:
		return doubly(base, c)
	}
}

// withOdd lays single pieces on two plies, two at a time where they are their own
// mirror image; the odd one, or each of the others, from the lower ply alone.
func withOdd(base Template, c cloth.Cloth) []Template {
	odd := base
	var out []Template
	if n := base.Copies - base.Copies%2; n > 0 {
		even := base
		even.Copies = n
		if made, err := doubly(even, c); err == nil {
			out = made
			odd.First, odd.Copies = odd.First+made[0].Copies, odd.Copies-n
		}
	}
	if odd.Copies > 0 {
		odd = singly(odd, c)[0]
		odd.FromLower = true
		out = append(out, odd)
	}
	return out
}

// wholeOf lays a cut-on-fold piece whole. Its outline is the half's and its
// exact mirror image, so that it takes the same room as on a fold.
func wholeOf(base Template, c cloth.Cloth) []Template {
	edge, _ := base.Piece.Edge(base.Piece.Fold)
	start, end := motion.EndsOf(edge)
	base.Image, base.IsAlike = motion.Reflection(start, motion.AngleOf(start, end)), true
	base.Outline = doubled(pieces.OpenedAt(geometry.Distinct(base.Outline), start, end), base.Image)
	base.Piece = base.Piece.Unfolded()
	base.Turns = turnsOf(base.Piece, c.Nap, false)
	return []Template{base}
}

// singly lays each piece on its own on a single ply: the left of a pair is
// laid face down. Where both sides of the cloth look alike, any piece may be.
func singly(base Template, c cloth.Cloth) []Template {
	base.Turns = turnsOf(base.Piece, c.Nap, false)
	if c.Alike && (c.Repeat.IsPlain() || !base.Piece.Pair) {
		base.Turns = append(base.Turns, turnsOf(base.Piece, c.Nap, true)...)
		return []Template{base}
	}
	if !base.Piece.Pair {
		base.Image, base.IsAlike = mirrorAlike(base.Piece, base.Outline, c.Nap)
		if base.IsAlike {
			base.Outline = evened(base.Outline, base.Image)
		}
		return []Template{base}
	}
	base.Copies /= 2
	left := base
	left.First += base.Copies
	left.Turns = turnsOf(base.Piece, c.Nap, true)
	return []Template{base, left}
}

// onFold lays a half with its fold edge on the fold of the cloth.
func onFold(base Template, c cloth.Cloth, b bed.Bed) ([]Template, error) {
	base.OnFold = true
	for _, pin := range b.FoldPins() {
		base.Turns = append(base.Turns, foldTurns(base.Piece, c.Nap, pin)...)
	}
	if len(base.Turns) == 0 {
		return nil, lay.Reason{Of: lay.OffFold, Piece: base.Piece.Name, Edge: base.Piece.Fold, Grain: base.Piece.Grain.Lie}
	}
	return []Template{base}, nil
}

// doubly lays a template on two plies, right sides together, which gives a
// right and a left at once, whichever face of the template is up.
func doubly(base Template, c cloth.Cloth) ([]Template, error) {
	if base.Copies%2 != 0 {
		return nil, lay.Reason{Of: lay.OddCount, Piece: base.Piece.Name, Count: base.Copies}
	}
	base.Yields = 2
	base.Copies /= 2
	base.Turns = turnsOf(base.Piece, c.Nap, false)
	if base.Piece.Pair || c.Alike {
		base.Turns = append(base.Turns, turnsOf(base.Piece, c.Nap, true)...)
		return []Template{base}, nil
	}
	if base.IsAlike { // a fold piece laid whole
		return []Template{base}, nil
	}
	base.Image, base.IsAlike = mirrorAlike(base.Piece, base.Outline, c.Nap)
	if !base.IsAlike {
		return nil, lay.Reason{Of: lay.Unpaired, Piece: base.Piece.Name}
	}
	base.Outline = evened(base.Outline, base.Image)
	return []Template{base}, nil
}

// thatFit keeps the turns in which the template is no wider than the bed, and
// than what flaws leave of it.
func thatFit(c cloth.Cloth, b bed.Bed, t Template) ([]layout.Turn, error) {
	usable, narrowest := b.Room(c), math.Inf(1)
	runs := clearRuns(c, b)
	clear := 0.0
	var out []layout.Turn
	for _, turn := range t.Turns {
		across := Across(t.Outline, turn)
		narrowest = math.Min(narrowest, across)
		room := math.Min(usable, roomFor(c, runs, b, turn.Pin))
		clear = math.Max(clear, room)
		if across <= room+fitTolerance {
			out = append(out, turn)
		}
	}
	if len(out) > 0 {
		return out, nil
	}
	return nil, tooWide(c, b, t, narrowest, clear)
}

// tooWide says why a template fits in no turn: across, it takes so much, and flaws leave
// so much clear.
func tooWide(c cloth.Cloth, b bed.Bed, t Template, narrowest, clear float64) lay.Reason {
	out := lay.Reason{Of: lay.WiderThanCloth, Piece: t.Piece.Name, Takes: narrowest, Room: b.Room(c)}
	switch {
	case t.OnFold && clear == 0:
		return lay.Reason{Of: lay.FlawOnFold, Piece: t.Piece.Name}
	case clear < out.Room && narrowest <= out.Room:
		out.Of, out.Room = lay.FlawsLeave, clear
	case b.Kind == lay.FoldedAlong:
		out.Of = lay.WiderThanFolded
	case b.Kind == lay.BothSelvedgesIn:
		out.Of = lay.WiderThanHalf
	}
	return out
}
