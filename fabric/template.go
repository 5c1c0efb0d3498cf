package fabric

import (
	"errors"
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/geometry"
	"ellwand/nest/layout"
	"ellwand/pieces"
)

// template is a piece as it is chalked in one lay: what is laid, how often,
// and in which turns. Each template becomes one layout.Item.
type template struct {
	source  int          // index of the piece it came from
	asked   pieces.Piece // as it came: a half, when cut on the fold
	piece   pieces.Piece
	outline orb.Ring
	copies  int
	yields  int
	first   int // number of its first copy, from 1
	onFold  bool
	turns   []layout.Turn
	// image maps the outline onto itself, for a cut-on-fold piece laid whole
	// and for single pieces that two plies give alike.
	image   pieces.Motion
	isAlike bool
}

// demand is how many of a piece are to come out of one bed.
type demand struct {
	source  int // index of the piece
	piece   pieces.Piece
	outline orb.Ring // its cutting outline as it is laid
	cut     int
	// first is the number of its first template in this bed, from 1.
	first int
}

// demandsOf asks a single bed for everything. It fails when a piece has no
// sound cutting outline.
func demandsOf(all []pieces.Piece) ([]demand, error) {
	out := make([]demand, len(all))
	var faults []error
	for i, piece := range all {
		outline, err := cuttingOutline(piece)
		faults = append(faults, err)
		out[i] = demand{source: i, piece: piece, outline: outline, cut: piece.Cut, first: 1}
	}
	return out, errors.Join(faults...)
}

// of asks the same for another number of the piece.
func (d demand) of(cut, first int) demand {
	d.cut, d.first = cut, first
	return d
}

// templatesOf says how every piece is chalked in a bed. This is the one place
// where grain, nap, fold and right side become plain geometry. It fails with
// all reasons why the lay is not possible.
func templatesOf(c cloth.Cloth, b bed, demands []demand) ([]template, error) {
	if b.lay == FoldedAcross && c.Nap != cloth.EitherWay {
		return nil, fmt.Errorf("the cloth goes %s, and %s", c.Nap, againstTheWarp)
	}
	var out []template
	var faults []error
	for _, d := range demands {
		made, err := chalked(c, b, d)
		if err != nil {
			faults = append(faults, err)
			continue
		}
		for _, t := range made {
			t.source = d.source
			if t.turns, err = thatFit(c, b, t); err != nil {
				faults = append(faults, err)
				break
			}
			out = append(out, t)
		}
	}
	return out, errors.Join(faults...)
}

// againstTheWarp is why nothing that goes one way is cut from a cloth folded
// across.
const againstTheWarp = "in the upper ply the warp runs the other way; cut the cloth across and turn the upper length round, or lay it open"

// chalked gives the templates of one piece: two when right and left are
// chalked apart.
func chalked(c cloth.Cloth, b bed, d demand) ([]template, error) {
	base := template{asked: d.piece, piece: d.piece, outline: d.outline, copies: d.cut, yields: 1, first: d.first}
	c.Nap = c.NapOf(d.piece.Name)
	switch {
	case b.lay == FoldedAcross && c.Nap != cloth.EitherWay:
		return nil, fmt.Errorf("%s: it must go one way, and %s", d.piece.Name, againstTheWarp)
	case b.plies() == 1 && d.piece.Fold != "":
		return wholeOf(base, c), nil
	case b.plies() == 1:
		return singly(base, c), nil
	case d.piece.Fold != "" && len(b.foldPins()) > 0:
		return onFold(base, c, b)
	case d.piece.Fold != "":
		return doubly(wholeOf(base, c)[0], c)
	default:
		return doubly(base, c)
	}
}

// cuttingOutline of a piece as it is laid: fewer points, nowhere inside the
// true line.
func cuttingOutline(piece pieces.Piece) (orb.Ring, error) {
	outline, err := piece.CuttingOutline(fineTolerance)
	if err != nil {
		return nil, err
	}
	return outward(outline, outwardTolerance-fineTolerance), nil
}

// wholeOf lays a cut-on-fold piece whole. Its outline is the half's and its
// exact mirror image, so that it takes the same room as on a fold.
func wholeOf(base template, c cloth.Cloth) []template {
	edge, _ := base.piece.Edge(base.piece.Fold)
	start, end := endsOf(edge)
	base.image, base.isAlike = reflection(start, angleOf(start, end)), true
	base.outline = doubled(pieces.OpenedAt(geometry.Distinct(base.outline), start, end), base.image)
	base.piece = base.piece.Unfolded()
	base.turns = turnsOf(base.piece, c.Nap, false)
	return []template{base}
}

// singly lays each piece on its own on a single ply: the left of a pair is
// laid face down. Where both sides of the cloth look alike, any piece may be.
func singly(base template, c cloth.Cloth) []template {
	base.turns = turnsOf(base.piece, c.Nap, false)
	if c.Alike && (c.Repeat.IsPlain() || !base.piece.Pair) {
		base.turns = append(base.turns, turnsOf(base.piece, c.Nap, true)...)
		return []template{base}
	}
	if !base.piece.Pair {
		base.image, base.isAlike = mirrorAlike(base.piece, base.outline, c.Nap)
		if base.isAlike {
			base.outline = evened(base.outline, base.image)
		}
		return []template{base}
	}
	base.copies /= 2
	left := base
	left.first += base.copies
	left.turns = turnsOf(base.piece, c.Nap, true)
	return []template{base, left}
}

// onFold lays a half with its fold edge on the fold of the cloth.
func onFold(base template, c cloth.Cloth, b bed) ([]template, error) {
	base.onFold = true
	for _, pin := range b.foldPins() {
		base.turns = append(base.turns, foldTurns(base.piece, c.Nap, pin)...)
	}
	if len(base.turns) == 0 {
		return nil, fmt.Errorf("%s: its edge %q cannot lie on the fold, because then its grainline would not lie %s; "+
			"lay the cloth open, or draw the grainline to suit the fold", base.piece.Name, base.piece.Fold, lieInWords(base.piece.Grain.Lie))
	}
	return []template{base}, nil
}

// doubly lays a template on two plies, right sides together, which gives a
// right and a left at once, whichever face of the template is up.
func doubly(base template, c cloth.Cloth) ([]template, error) {
	if base.copies%2 != 0 {
		return nil, fmt.Errorf("%s: %s cannot be cut from two plies, which give two at a time; "+
			"lay the cloth open, or cut one more", base.piece.Name, countInWords(base.copies))
	}
	base.yields = 2
	base.copies /= 2
	base.turns = turnsOf(base.piece, c.Nap, false)
	if base.piece.Pair || c.Alike {
		base.turns = append(base.turns, turnsOf(base.piece, c.Nap, true)...)
		return []template{base}, nil
	}
	if base.isAlike { // a fold piece laid whole
		return []template{base}, nil
	}
	base.image, base.isAlike = mirrorAlike(base.piece, base.outline, c.Nap)
	if !base.isAlike {
		return nil, fmt.Errorf("%s: two plies give a right and a left, but this piece is not its own mirror image and is no pair; "+
			"lay the cloth open, or say that it is a pair", base.piece.Name)
	}
	base.outline = evened(base.outline, base.image)
	return []template{base}, nil
}

func countInWords(n int) string {
	if n == 1 {
		return "a single piece"
	}
	return fmt.Sprintf("%d single pieces", n)
}

func lieInWords(lie pieces.GrainLie) string {
	return [...]string{"along the warp", "along the weft", "at 45 degrees to the warp"}[lie]
}

// fitTolerance absorbs rounding, in mm, when a piece just fits the width
// [source.OwnChoice].
const fitTolerance = 1e-6

// thatFit keeps the turns in which the template is no wider than the bed.
func thatFit(c cloth.Cloth, b bed, t template) ([]layout.Turn, error) {
	usable, narrowest := b.room(c), math.Inf(1)
	var out []layout.Turn
	for _, turn := range t.turns {
		across := across(t.outline, turn)
		narrowest = math.Min(narrowest, across)
		if across <= usable+fitTolerance {
			out = append(out, turn)
		}
	}
	if len(out) > 0 {
		return out, nil
	}
	switch b.lay {
	case FoldedAlong:
		return nil, fmt.Errorf("%s: it is %s wide and the folded cloth only %s; lay the cloth open, or take a wider cloth",
			t.piece.Name, c.Say(narrowest), c.Say(usable))
	case BothSelvedgesIn:
		return nil, fmt.Errorf("%s: it is %s wide, and from a fold to where the selvedges meet there are only %s; lay the cloth open, or take a wider cloth",
			t.piece.Name, c.Say(narrowest), c.Say(usable))
	}
	return nil, fmt.Errorf("%s: it is %s wide in the narrowest way its grain allows, and the cloth only %s between the selvedges; "+
		"take a wider cloth, turn the piece to the cross grain, or divide it by a seam", t.piece.Name, c.Say(narrowest), c.Say(usable))
}

// across is the extent of a turned outline in y.
func across(outline orb.Ring, turn layout.Turn) float64 {
	m := motionOf(turn.Degrees, turn.Mirrored, 0, 0)
	low, high := math.Inf(1), math.Inf(-1)
	for _, p := range outline {
		y := apply(m, p)[1]
		low, high = math.Min(low, y), math.Max(high, y)
	}
	return high - low
}

// problemOf states the templates of a bed that is the whole lay as plain
// geometry. It fails, with the reason, when the lay is not possible.
func problemOf(c cloth.Cloth, b bed, templates []template) (layout.Problem, error) {
	problem, _, err := problemAt(c, b, templates, matchNames(c.Repeat, templates), places{})
	return problem, err
}

// problemAt does the same for a bed whose match points are to keep to known
// places on the open cloth.
func problemAt(c cloth.Cloth, b bed, templates []template, names []string, known places) (layout.Problem, *matching, error) {
	problem, err := plainProblem(c, b, templates)
	if err != nil {
		return problem, nil, err
	}
	m := match(c, b, templates, names, known)
	return problem, m, m.apply(&problem)
}

// plainProblem leaves the repeat aside.
func plainProblem(c cloth.Cloth, b bed, templates []template) (layout.Problem, error) {
	problem := layout.Problem{Width: b.width, Gap: c.Gap}
	groups := map[string]int{}
	for _, t := range templates {
		item := layout.Item{Name: t.piece.Name, Outline: t.outline, Copies: t.copies, Turns: t.turns}
		if !t.onFold && c.Tilt > 0 {
			item.Tilt = math.Atan(c.Tilt) * 180 / math.Pi
		}
		if c.Nap == cloth.OneWayPerGarment {
			if groups[t.piece.Garment] == 0 {
				groups[t.piece.Garment] = len(groups) + 1
			}
			item.Group = groups[t.piece.Garment]
		}
		problem.Items = append(problem.Items, item)
	}
	zones, err := b.zones(c, farEnd(c, templates))
	problem.Zones = zones
	return problem, err
}
