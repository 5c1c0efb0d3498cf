package part

import (
	"strings"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// Figures of pockets, in mm [source.CommonPractice].
const (
	usualPatch   = 130
	patchHigher  = 15
	patchPoint   = 0.15 // how far a point reaches down, for each mm of width
	patchRound   = 0.25
	usualOpening = 160
	leastOpening = 100 // for a hand
	pocketBelow  = 30  // the opening below the waist
)

// patchPocket has a hem at its upper edge, and its lower edge square, pointed
// or round.
func patchPocket(_ Measures, o Options, name string) (Block, error) {
	width, height := o.Length, o.Depth
	if width == 0 {
		width = usualPatch
	}
	if height == 0 {
		height = width + patchHigher
	}
	if height < width/2 {
		return Block{}, construct.About(subject.Depth, subject.Length).Refuse(
			"%s: a height of %s is too little for a width of %s; ask for half as much or more",
			"%s: eine Höhe von %s ist zu wenig für eine Breite von %s; verlangen Sie mindestens die "+
				"Hälfte davon", called(name),
			construct.Length(height), construct.Length(width))
	}
	lower, from, err := lowerEdge(o, name, width)
	if err != nil {
		return Block{}, err
	}
	piece := pieces.Piece{Name: name, Cut: 1}
	piece.Edges = append(lower,
		construct.Edge(seams.Right, construct.Line(orb.Point{width, from}, orb.Point{width, height})),
		pieces.Edge{Name: seams.PocketHem, Hem: true,
			Path: construct.Line(orb.Point{width, height}, orb.Point{0, height})},
		construct.Edge(seams.Left, construct.Line(orb.Point{0, height}, orb.Point{0, from})))
	piece.Grain = pieces.Grain{From: orb.Point{width / 4, float64(0.3 * height)},
		To: orb.Point{width / 4, float64(0.85 * height)}}
	return Block{Pieces: []pieces.Piece{piece}}, nil
}

// lowerEdge gives the lower edge of a patch pocket and the height from which
// its sides are straight.
func lowerEdge(o Options, name string, width float64) ([]pieces.Edge, float64, error) {
	switch o.Shape {
	case "", Square:
		return []pieces.Edge{construct.Edge(seams.Bottom, construct.Line(orb.Point{0, 0}, orb.Point{width, 0}))}, 0, nil
	case Pointed:
		from := patchPoint * width
		return []pieces.Edge{
			construct.Edge(seams.BottomLeft, construct.Line(orb.Point{0, from}, orb.Point{width / 2, 0})),
			construct.Edge(seams.BottomRight, construct.Line(orb.Point{width / 2, 0}, orb.Point{width, from})),
		}, from, nil
	case Round:
		return []pieces.Edge{construct.Edge(seams.Bottom,
			roundedBottom(width, patchRound*width))}, patchRound * width, nil
	}
	known := make([]string, len(Shapes()))
	for i, shape := range Shapes() {
		known[i] = string(shape)
	}
	return nil, 0, construct.About(subject.Shape).Refuse("%s: there is no shape %q for its lower edge; use one of: %s",
		"%s: eine Form %q der Unterkante gibt es nicht; es gibt: %s",
		called(name), o.Shape, strings.Join(known, ", "))
}

// roundedBottom is the lower edge of a rectangle from its left side to its
// right, both corners rounded off.
func roundedBottom(width, round float64) pieces.Path {
	return construct.Join(
		construct.Curve(orb.Point{0, round}, orb.Point{0, -1}, 0.4, orb.Point{round, 0}, orb.Point{1, 0}, 0.4),
		construct.Line(orb.Point{round, 0}, orb.Point{width - round, 0}),
		construct.Curve(orb.Point{width - round, 0}, orb.Point{1, 0}, 0.4, orb.Point{width, round}, orb.Point{0, 1},
			0.4))
}

// pocketBag is drawn from the side seam of the front skirt, so that it
// matches.
func pocketBag(m Measures, o Options, name string) (Block, error) {
	front := pieces.Piece{}
	for _, piece := range m.Pieces {
		if _, ok := piece.Edge(seams.SideSeam); ok && piece.Role == role.FrontSkirt {
			front = piece
		}
	}
	side, ok := front.Edge(seams.SideSeam)
	if !ok {
		return Block{}, construct.About(subject.Kind).Refuse("%s: there is no front skirt with a side seam to hang it "+
			"in: draft a straight or a-line skirt",
			"%s: es gibt keinen Rock vorn mit Seitennaht dazu: verlangen Sie einen geraden Rock oder "+
				"eine A-Linie", called(name))
	}
	open := o.opening()
	most := side.Path.Length() - pocketBelow - 2*bagBeyond
	if open < leastOpening || open > most {
		return Block{}, construct.About(subject.Length).Refuse("%s: an opening of %s cannot be; ask for %s to %s",
			"%s: ein Eingriff von %s geht nicht; verlangen Sie %s bis %s", called(name),
			construct.Length(open), construct.AtLeast(leastOpening), construct.AtMost(most))
	}
	return Block{Pieces: []pieces.Piece{BagOn(side.Path, name, pocketBelow, open)},
		Sheets: []construct.Sheet{BagSheet(name, "side seam", pocketBelow, open)}}, nil
}

// opening of a pocket bag: that asked for, or the usual one.
func (o Options) opening() float64 {
	if o.Length > 0 {
		return o.Length
	}
	return usualOpening
}

// MarkOpening notches the opening of a pocket bag on the side of a skirt.
func (o Options) MarkOpening(skirt pieces.Piece) pieces.Piece {
	return OpenPocket(skirt, seams.SideSeam, pocketBelow, o.opening())
}
