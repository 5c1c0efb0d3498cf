// Package rules turns the rules of the cloth into plain geometry: the turns of each
// piece (grain, nap), edges pinned to a fold, positions on a lattice (the repeat),
// zones (flaws), and outlines as they are cut.
package rules

import (
	"errors"
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/geometry"
	"ellwand/fabric/lay"
	"ellwand/nest/layout"
	"ellwand/pieces"
)

// Template is a piece as it is chalked in one lay: what is laid, how often,
// and in which turns. Each template becomes one layout.Item.
type Template struct {
	Source  int          // index of the piece it came from
	Asked   pieces.Piece // as it came: a half, when cut on the fold
	Piece   pieces.Piece
	Outline orb.Ring
	Copies  int
	Yields  int
	First   int // number of its first copy, from 1
	OnFold  bool
	Turns   []layout.Turn
	// image maps the outline onto itself, for a cut-on-fold piece laid whole
	// and for single pieces that two plies give alike.
	Image   pieces.Motion
	IsAlike bool
}

// Demand is how many of a piece are to come out of one bed.
type Demand struct {
	Source  int // index of the piece
	Piece   pieces.Piece
	outline orb.Ring // its cutting outline as it is laid
	Cut     int
	// first is the number of its first template in this bed, from 1.
	first int
}

// DemandsOf asks a single bed for everything. It fails when a piece has no
// sound cutting outline.
func DemandsOf(all []pieces.Piece) ([]Demand, error) {
	out := make([]Demand, len(all))
	var faults []error
	for i, piece := range all {
		outline, err := cuttingOutline(piece)
		faults = append(faults, err)
		out[i] = Demand{Source: i, Piece: piece, outline: outline, Cut: piece.Cut, first: 1}
	}
	return out, errors.Join(faults...)
}

// Of asks the same for another number of the piece.
func (d Demand) Of(cut, first int) Demand {
	d.Cut, d.first = cut, first
	return d
}

// TemplatesOf says how every piece is chalked in a bed. This is the one place
// where grain, nap, fold and right side become plain geometry. It fails with
// all reasons why the lay is not possible.
func TemplatesOf(c cloth.Cloth, b bed.Bed, demands []Demand) ([]Template, error) {
	if b.Kind == lay.FoldedAcross && c.Nap != cloth.EitherWay {
		return nil, fmt.Errorf("the cloth goes %s, and %s", c.Nap, againstTheWarp)
	}
	var out []Template
	var faults []error
	for _, d := range demands {
		made, err := chalked(c, b, d)
		if err != nil {
			faults = append(faults, err)
			continue
		}
		for _, t := range made {
			t.Source = d.Source
			if t.Turns, err = onBorder(c, b, t); err == nil {
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

// againstTheWarp is why nothing that goes one way is cut from a cloth folded
// across.
const againstTheWarp = "in the upper ply the warp runs the other way; cut the cloth across and turn the upper length round, or lay it open"

// chalked gives the templates of one piece: two when right and left are
// chalked apart.
func chalked(c cloth.Cloth, b bed.Bed, d Demand) ([]Template, error) {
	base := Template{Asked: d.Piece, Piece: d.Piece, Outline: d.outline, Copies: d.Cut, Yields: 1, First: d.first}
	c.Nap = c.NapOf(d.Piece.Name)
	switch {
	case b.Kind == lay.FoldedAcross && c.Nap != cloth.EitherWay:
		return nil, lay.Because(d.Piece.Name, "it must go one way, and %s", againstTheWarp)
	case b.Plies() == 1 && d.Piece.Fold != "":
		return wholeOf(base, c), nil
	case b.Plies() == 1:
		return singly(base, c), nil
	case d.Piece.Fold != "" && len(b.FoldPins()) > 0:
		return onFold(base, c, b)
	case d.Piece.Fold != "":
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
func wholeOf(base Template, c cloth.Cloth) []Template {
	edge, _ := base.Piece.Edge(base.Piece.Fold)
	start, end := geometry.EndsOf(edge)
	base.Image, base.IsAlike = geometry.Reflection(start, geometry.AngleOf(start, end)), true
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
		return nil, lay.Because(base.Piece.Name, "its edge %q cannot lie on the fold, because then its grainline would not lie %s; "+
			"lay the cloth open, or draw the grainline to suit the fold", base.Piece.Fold, lieInWords(base.Piece.Grain.Lie))
	}
	return []Template{base}, nil
}

// doubly lays a template on two plies, right sides together, which gives a
// right and a left at once, whichever face of the template is up.
func doubly(base Template, c cloth.Cloth) ([]Template, error) {
	if base.Copies%2 != 0 {
		return nil, lay.Because(base.Piece.Name, "%s cannot be cut from two plies, which give two at a time; "+
			"lay the cloth open, or cut one more", countInWords(base.Copies))
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
		return nil, lay.Because(base.Piece.Name, "two plies give a right and a left, but this piece is not its own mirror image and is no pair; "+
			"lay the cloth open, or say that it is a pair")
	}
	base.Outline = evened(base.Outline, base.Image)
	return []Template{base}, nil
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
func thatFit(c cloth.Cloth, b bed.Bed, t Template) ([]layout.Turn, error) {
	usable, narrowest := b.Room(c), math.Inf(1)
	var out []layout.Turn
	for _, turn := range t.Turns {
		across := Across(t.Outline, turn)
		narrowest = math.Min(narrowest, across)
		if across <= usable+fitTolerance {
			out = append(out, turn)
		}
	}
	if len(out) > 0 {
		return out, nil
	}
	switch b.Kind {
	case lay.FoldedAlong:
		return nil, lay.Because(t.Piece.Name, "it is %s wide and the folded cloth only %s; lay the cloth open, or take a wider cloth", c.Say(narrowest), c.Say(usable))
	case lay.BothSelvedgesIn:
		return nil, lay.Because(t.Piece.Name, "it is %s wide, and from a fold to where the selvedges meet there are only %s; lay the cloth open, or take a wider cloth", c.Say(narrowest), c.Say(usable))
	}
	return nil, lay.Because(t.Piece.Name, "it is %s wide in the narrowest way its grain allows, and the cloth only %s between the selvedges; "+
		"take a wider cloth, turn the piece to the cross grain, or divide it by a seam", c.Say(narrowest), c.Say(usable))
}

// Across is the extent of a turned outline in y.
func Across(outline orb.Ring, turn layout.Turn) float64 {
	m := geometry.MotionOf(turn.Degrees, turn.Mirrored, 0, 0)
	low, high := math.Inf(1), math.Inf(-1)
	for _, p := range outline {
		y := geometry.Apply(m, p)[1]
		low, high = math.Min(low, y), math.Max(high, y)
	}
	return high - low
}

// ProblemOf states the templates of a bed that is the whole lay as plain
// geometry. It fails, with the reason, when the lay is not possible.
func ProblemOf(c cloth.Cloth, b bed.Bed, templates []Template) (layout.Problem, error) {
	problem, _, err := ProblemAt(c, b, templates, MatchNames(c.Repeat, templates), lay.Places{})
	return problem, err
}

// ProblemAt does the same for a bed whose match points are to keep to known
// places on the open cloth.
func ProblemAt(c cloth.Cloth, b bed.Bed, templates []Template, names []string, known lay.Places) (layout.Problem, *Matching, error) {
	problem, err := PlainProblem(c, b, templates)
	if err != nil {
		return problem, nil, err
	}
	m := Match(c, b, templates, names, known)
	return problem, m, errors.Join(m.Apply(&problem), placeBorder(c, b, templates, &problem))
}

// PlainProblem leaves the repeat aside.
func PlainProblem(c cloth.Cloth, b bed.Bed, templates []Template) (layout.Problem, error) {
	problem := layout.Problem{Width: b.Width, Gap: c.Gap}
	groups := map[string]int{}
	for _, t := range templates {
		item := layout.Item{Name: t.Piece.Name, Outline: t.Outline, Copies: t.Copies, Turns: t.Turns}
		if !t.OnFold && c.Tilt > 0 {
			item.Tilt = math.Atan(c.Tilt) * 180 / math.Pi
		}
		if c.Nap == cloth.OneWayPerGarment {
			if groups[t.Piece.Garment] == 0 {
				groups[t.Piece.Garment] = len(groups) + 1
			}
			item.Group = groups[t.Piece.Garment]
		}
		problem.Items = append(problem.Items, item)
	}
	zones, err := Zones(b, c, farEnd(c, templates))
	problem.Zones = zones
	return problem, err
}
