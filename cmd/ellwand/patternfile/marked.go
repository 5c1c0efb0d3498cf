package patternfile

import (
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/marks"
	"ellwand/pieces/outline"
	"ellwand/pieces/seams"
)

// marked puts notches, darts and marks on a piece. Where its edges are written the
// other way round, notches are measured from their ends.
func (m Maker) marked(path Path, what language.Sentence, p Piece, reversed bool, piece *pieces.Piece) bool {
	good := true
	for i, n := range p.Notches {
		good = m.notch(path.Key("notches").Entry(i), what.Its("notch %d", "Knips %d", i+1), n, reversed,
			piece) && good
	}
	for i, d := range p.Darts {
		good = m.dart(path.Key("darts").Entry(i), what.Its("dart %d", "Abnäher %d", i+1), d, piece) && good
	}
	for i, k := range p.Marks {
		good = m.mark(path.Key("marks").Entry(i), what.Its("mark %d", "Zeichen %d", i+1), k, piece) && good
	}
	return good
}

func (m Maker) notch(path Path, what language.Sentence, n Notch, reversed bool, piece *pieces.Piece) bool {
	edge, found := m.edgeOf(path.Key("edge"), what, n.Edge, *piece)
	at, ok := m.Length(path.Key("at"), what.Its("its place", "Stelle"), n.At)
	strokes := m.Count(path.Key("strokes"), what.Its("strokes", "Striche"), n.Strokes)
	if !found || !ok {
		return false
	}
	length := edge.Path.Length()
	if at > length+0.001 {
		m.Fault(path.Key("at"), strict.OutOfRange, "%s lies %s along the edge %q, which is only %s long",
			"%s liegt bei %s auf der Kante %q, die nur %s lang ist", what, m.Say(at),
			edge.Name,
			m.Say(length))
		return false
	}
	if reversed {
		at = max(0, length-at)
	}
	piece.Notches = append(piece.Notches,
		pieces.Notch{Edge: edge.Name, At: at, Count: strokes, Match: marks.Called(string(n.Match))})
	return true
}

func (m Maker) dart(path Path, what language.Sentence, d Dart, piece *pieces.Piece) bool {
	out := pieces.Dart{Name: seams.Called(string(d.Name))}
	apex, good := m.point(path.Key("apex"), what.Its("its apex", "Spitze"), d.Apex)
	out.Apex = apex
	if d.Mouth != "" {
		edge, found := m.edgeOf(path.Key("mouth"), what, d.Mouth, *piece)
		if !found {
			return false
		}
		out.Mouth, out.Start, out.End = edge.Name, edge.Path.Start(), edge.Path.End()
		piece.Darts = append(piece.Darts, out)
		return good
	}
	for _, p := range []struct {
		key string
		of  Point
		to  *[2]float64
	}{{"start", d.Start, (*[2]float64)(&out.Start)}, {"end", d.End, (*[2]float64)(&out.End)},
		{"other_apex", d.OtherApex, (*[2]float64)(&out.OtherApex)}} {
		at, ok := m.point(path.Key(p.key), what.Its("its %s", "%s", p.key), p.of)
		*p.to, good = at, good && ok
	}
	piece.Darts = append(piece.Darts, out)
	return good
}

func (m Maker) mark(path Path, what language.Sentence, k Mark, piece *pieces.Piece) bool {
	out := pieces.Mark{Name: marks.Called(string(k.Name))}
	switch {
	case len(k.At) > 0 == (len(k.Line) > 0):
		m.Fault(path, strict.Missing, "%s has a place, at: [x, y], or a line, line: [[x, y], [x, y]], one of both",
			"%s hat einen Punkt, at: [x, y], oder eine Linie, line: [[x, y], [x, y]], eines von beidem",
			what)
		return false
	case len(k.At) > 0:
		at, ok := m.point(path.Key("at"), what, k.At)
		out.At = at
		piece.Marks = append(piece.Marks, out)
		return ok
	}
	nodes, ok := m.nodes(path.Key("line"), what, k.Line)
	if !ok {
		return false
	}
	line, err := outline.Line(nodes)
	if err != nil {
		m.atNode(path.Key("line"), what, err)
		return false
	}
	out.Path = line
	piece.Marks = append(piece.Marks, out)
	return true
}
