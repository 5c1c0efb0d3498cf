package patternfile

import (
	"errors"

	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/outline"
	"ellwand/pieces/seams"
	piecewords "ellwand/pieces/words"
)

// measured makes a piece of readings of a tape.
func (m Maker) measured(path Path, what language.Sentence, p Piece) (pieces.Piece, bool) {
	o, ok := m.readings(path, what, *p.Offsets)
	if !ok {
		return pieces.Piece{}, false
	}
	o.OnFold = p.Fold != ""
	nodes, err := o.Nodes()
	if err != nil {
		m.atReading(path, what, err)
		return pieces.Piece{}, false
	}
	names := map[seams.Name]Text{seams.Bottom: p.Offsets.Edges.Bottom, seams.Right: p.Offsets.Edges.Right,
		seams.Top: p.Offsets.Edges.Top, seams.Left: p.Offsets.Edges.Left}
	for i, n := range nodes {
		if name := names[n.Edge]; name != "" && !n.Smooth {
			nodes[i].Edge = seams.Called(string(name))
		}
	}
	edges, _, err := outline.Edges(nodes)
	var fault *outline.Fault
	if errors.As(err, &fault) {
		m.Fault(path, strict.Malformed, "%s: the readings make no outline: %s",
			"%s: die abgelesenen Maße geben keinen Umriss: %s", what, piecewords.AtNode(fault))
		return pieces.Piece{}, false
	}
	piece := pieces.Piece{Edges: edges}
	piece.Grain.From, piece.Grain.To = upright(piece)
	return piece, true
}

// lists of readings by their keys.
var lists = map[outline.Readings]string{
	outline.OfRight: "across", outline.OfLeft: "across_left", outline.OfTop: "top", outline.OfTopLeft: "top_left",
	outline.OfBottom: "bottom", outline.OfBottomLeft: "bottom_left",
}

func (m Maker) atReading(path Path, what language.Sentence, err error) {
	var fault *outline.ReadingFault
	if !errors.As(err, &fault) {
		m.Fault(path, strict.Malformed, "%s: %s", "%s: %s", what, err)
		return
	}
	key := lists[fault.List]
	if key == "" {
		m.Fault(path, strict.Missing, "%s: offsets: %s", "%s: abgelesen: %s", what, piecewords.InReadings(fault,
			m.Say))
		return
	}
	m.Fault(path.Key(key), strict.Malformed, "%s: offsets: %s: %s", "%s: abgelesen: %s: %s", what, key,
		piecewords.InReadings(fault, m.Say))
}

// readings parses every list.
func (m Maker) readings(path Path, what language.Sentence, o Offsets) (out outline.Offsets, ok bool) {
	ok = true
	lengths := func(key string, written []Measure) []float64 {
		var all []float64
		for i, text := range written {
			value, known := m.Signed(path.Key(key).Entry(i), what.Its("a reading", "Ablesung"), text)
			all, ok = append(all, value), ok && known
		}
		return all
	}
	one := func(key string, written Measure) float64 {
		if written == "" {
			return 0
		}
		value, known := m.Positive(path.Key(key), what.Its("offsets: %s", "abgelesen: %s", key), written)
		ok = ok && known
		return value
	}
	out = outline.Offsets{
		Length: one("length", o.Length), Every: one("every", o.Every), At: lengths("at", o.At),
		Right: lengths("across", o.Across), Left: lengths("across_left", o.AcrossLeft),
		Top: lengths("top", o.Top), TopLeft: lengths("top_left", o.TopLeft),
		Bottom: lengths("bottom", o.Bottom), BottomLeft: lengths("bottom_left", o.BottomLeft),
	}
	return out, ok
}
