package patternfile

import (
	"maps"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/seams"
)

// allow gives every edge of a piece its allowance: that of the edge, of the piece, or
// of the file. Of a rectangle that says none it is added as of every seam; other
// outlines must say whether they include it.
func (m Maker) allow(path Path, what language.Sentence, p Piece, piece *pieces.Piece) bool {
	good := m.knownEdges(path.Key("allowance"), what, p.Allowance, *piece)
	isRectangle := len(p.Outline) == 0 && p.Offsets == nil
	for i := range piece.Edges {
		e := &piece.Edges[i]
		text, at := said(p.Allowance, path.Key("allowance"), e.Name)
		if text == "" {
			text, at = said(m.all.allowance, m.all.path, e.Name)
		}
		switch {
		case text == "" && isRectangle:
			e.Allowance = m.Every
		case text == "" && !m.isFold(p, e.Name):
			m.Fault(path, strict.Missing,
				"%s does not say of its edge %q whether the outline includes its allowance; add: "+
					"allowance: included 1.5 cm (or unknown, or 1.5 cm to be added)",
				"%s: es fehlt, ob der Umriss an der Kante %q die Nahtzugabe enthält: included 1.5 cm "+
					"(oder unknown, oder 1.5 cm, die dazukommen)", what, e.Name)
			return false
		case text != "" && !m.AllowEdge(at, what, text, e):
			return false
		}
	}
	for i, name := range p.Hems {
		edge, ok := m.edgeOf(path.Key("hems").Entry(i), what, name, *piece)
		for k := range piece.Edges {
			if ok && piece.Edges[k].Name == edge.Name {
				piece.Edges[k].Hem = true
			}
		}
		good = good && ok
	}
	return good
}

// said finds what is written of the allowance of an edge.
func said(a *Allowance, path Path, edge seams.Name) (Text, Path) {
	if a == nil {
		return "", path
	}
	if a.One != "" {
		return a.One, path
	}
	for _, name := range []seams.Name{edge, edge.Seam(), edge.Role(), seams.Every} {
		for key, text := range a.ByEdge {
			if strict.Plain(key) == strict.Plain(name.String()) {
				return text, path.Key(key)
			}
		}
	}
	return "", path
}

// knownEdges refuses an allowance of an edge that is not there.
func (m Maker) knownEdges(path Path, what language.Sentence, a *Allowance, piece pieces.Piece) bool {
	if a == nil {
		return true
	}
	good := true
	for _, key := range slices.Sorted(maps.Keys(a.ByEdge)) {
		if strict.Plain(key) == strict.Plain(seams.Every.String()) {
			continue
		}
		matches := slices.ContainsFunc(piece.Edges, func(e pieces.Edge) bool {
			return slices.ContainsFunc([]seams.Name{e.Name, e.Name.Seam(), e.Name.Role()}, func(n seams.Name) bool {
				return strict.Plain(n.String()) == strict.Plain(key)
			})
		})
		if !matches {
			m.Fault(path.Key(key), strict.Unknown, "%s has no edge %q to give an allowance to; %s",
				"%s hat keine Kante %q, die eine Nahtzugabe haben könnte; %s", what, key,
				strict.Hint(key, append(edgeNames(piece), seams.Every.String())))
			good = false
		}
	}
	return good
}

// AllowEdge gives an edge the allowance that is written: a length that is added to it, add,
// included with a length, or unknown. It is false where that is noted as a fault.
func (m Maker) AllowEdge(path Path, what language.Sentence, text Text, e *pieces.Edge) bool {
	first, rest, _ := strings.Cut(string(text), " ")
	switch strict.Plain(first) {
	case "unknown":
		e.Unknown = true
		return true
	case "included":
		if rest == "" {
			e.Unknown = true
			return true
		}
		width, ok := m.Length(path, what.Its("the allowance that is included", "enthaltene Nahtzugabe"),
			Measure(rest))
		e.Included = width
		return ok
	case "add":
		if rest == "" {
			e.Allowance = m.Usual(e.Name)
			return true
		}
		text = Text(rest)
	}
	width, ok := m.Length(path, what.Its("the allowance", "Nahtzugabe"), Measure(text))
	e.Allowance = width
	return ok
}
