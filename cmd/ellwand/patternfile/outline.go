package patternfile

import (
	"errors"
	"strconv"

	"github.com/paulmach/orb"

	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/outline"
	"ellwand/pieces/seams"
	piecewords "ellwand/pieces/words"
)

// outlined makes a piece of the points of its outline; reversed where they run
// clockwise.
func (m Maker) outlined(path Path, what language.Sentence, p Piece) (piece pieces.Piece, reversed, ok bool) {
	nodes, ok := m.nodes(path, what, p.Outline)
	if !ok {
		return piece, false, false
	}
	numberEdges(nodes)
	edges, reversed, err := outline.Edges(nodes)
	if err != nil {
		m.atNode(path, what, err)
		return piece, false, false
	}
	piece.Edges = edges
	piece.Grain.From, piece.Grain.To = upright(piece)
	return piece, reversed, true
}

func (m Maker) atNode(path Path, what language.Sentence, err error) {
	var fault *outline.Fault
	if errors.As(err, &fault) {
		m.Fault(path.Entry(fault.Node), strict.Malformed, "%s: point %d: %s", "%s: Punkt %d: %s", what, fault.Node+1,
			piecewords.AtNode(fault))
		return
	}
	m.Fault(path, strict.Malformed, "%s: %s", "%s: %s", what, err)
}

// numberEdges names the edges that have no name after their place.
func numberEdges(nodes []outline.Node) {
	order := 0
	for i, n := range nodes {
		if n.Smooth {
			continue
		}
		order++
		if n.Edge == seams.None {
			nodes[i].Edge = seams.Called("edge " + strconv.Itoa(order))
		}
	}
}

// upright is a grainline up the middle of a piece, over three fifths of it.
func upright(piece pieces.Piece) (from, to orb.Point) {
	box := piece.Boundary(1).Bound()
	x, height := (box.Min[0]+box.Max[0])/2, box.Max[1]-box.Min[1]
	return orb.Point{x, box.Min[1] + height*0.2}, orb.Point{x, box.Min[1] + height*0.8}
}

// nodes of an outline or of a line.
func (m Maker) nodes(path Path, what language.Sentence, written []Node) ([]outline.Node, bool) {
	var out []outline.Node
	good := true
	for i, n := range written {
		inner := path.Entry(i)
		node, ok := m.node(inner, what.Its("point %d", "Punkt %d", i+1), n)
		out, good = append(out, node), good && ok
	}
	return out, good
}

func (m Maker) node(path Path, what language.Sentence, n Node) (out outline.Node, ok bool) {
	at := n.Corner
	switch {
	case len(n.Corner) > 0 == (len(n.Curve) > 0):
		m.Fault(path, strict.Missing, "%s is a corner: [x, y] or a curve: [x, y], one of both",
			"%s ist entweder eine Ecke, corner: [x, y], oder ein Bogenpunkt, curve: [x, y]", what)
		return out, false
	case len(n.Curve) > 0 && n.Edge != "":
		m.Fault(path.Key("edge"), strict.Contradiction, "%s: an edge begins at a corner; write corner: in place of "+
			"curve:", "%s: eine Kante beginnt an einer Ecke; schreiben Sie corner: statt curve:", what)
		return out, false
	case len(n.Curve) > 0:
		at, out.Smooth = n.Curve, true
	}
	out.At, ok = m.point(path, what, at)
	if n.Edge != "" {
		out.Edge = seams.Called(string(n.Edge))
	}
	if n.Arc != "" {
		rise, known := m.Signed(path.Key("arc"), what.Its("the arc", "Bogen"), n.Arc)
		out.Rise, ok = rise, ok && known
	}
	for i, control := range n.Bezier {
		at, known := m.point(path.Key("bezier").Entry(i), what.Its("the Bezier curve", "Bezierkurve"), control)
		out.Controls, ok = append(out.Controls, at), ok && known
	}
	return out, ok
}
