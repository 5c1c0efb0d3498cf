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

// Sewn are two lengths that are sewn together.
type Sewn struct {
	Name, Of, Against string
	// Length of the one side and of the other, mm, by their seam lines.
	Length, Other float64
	// Ease is how much longer the one is than the other, mm.
	Ease float64
	// Accuracy is how far the difference may be out, mm, by how the pieces were
	// measured; AtCut says that allowances are unknown, so that lengths are those
	// of the cutting lines.
	Accuracy float64
	AtCut    bool
}

// sewn measures the seams between pieces. Those whose pieces are of another size
// are left out.
func (m Maker) sewn(path Path, all []Seam, made []pieces.Piece, isSound bool) []Sewn {
	var out []Sewn
	for i, seam := range all {
		inner := path.Entry(i)
		what := language.Say("seam %s", "Naht %s", string(seam.Name))
		s := Sewn{Name: string(seam.Name)}
		if seam.Name == "" {
			m.Fault(inner, strict.Missing, "seam %d has no name; add one, such as: name: side",
				"Naht %d hat keinen Namen; geben Sie ihr einen, etwa: Seite", i+1)
		}
		if seam.Ease != "" {
			s.Ease, _ = m.Signed(inner.Key("ease"), what.Its("the ease", "Bequemlichkeit"), seam.Ease)
		}
		if !isSound {
			continue
		}
		of, okOf := m.sideOf(inner.Key("of"), what, seam.Of, made, &s)
		against, okAgainst := m.sideOf(inner.Key("to"), what, seam.To, made, &s)
		s.Of, s.Length, s.Against, s.Other = of.words, of.length, against.words, against.length
		if okOf && okAgainst {
			out = append(out, s)
		}
	}
	return out
}

// sewnSide is one side of a seam.
type sewnSide struct {
	words  string
	length float64
}

func (m Maker) sideOf(path Path, what language.Sentence, edges map[string]Text, made []pieces.Piece,
	s *Sewn) (sewnSide, bool) {
	var out sewnSide
	var words []string
	if len(edges) == 0 {
		m.Fault(path, strict.Missing, "%s: name the edges by their pieces, such as {front: side}",
			"%s: nennen Sie die Kanten bei ihren Teilen, etwa {front: side}", what)
		return out, false
	}
	for _, name := range slices.Sorted(maps.Keys(edges)) {
		at := slices.IndexFunc(made, func(p pieces.Piece) bool { return strict.Plain(p.Name) == strict.Plain(name) })
		if at < 0 {
			m.Fault(path.Key(name), strict.Unknown, "%s: there is no piece %q; %s",
				"%s: ein Teil %q gibt es nicht; %s", what, name,
				strict.Hint(name, pieceNames(made)))
			return out, false
		}
		piece := made[at].Seam()
		length, ok := m.seamLength(path.Key(name), what.Its("piece %s", "Teil %s", name), edges[name], piece, s)
		if !ok {
			return out, false
		}
		out.length += length
		s.Accuracy += 2 * piece.Accuracy
		words = append(words, piece.Name+" "+string(edges[name]))
	}
	out.words = strings.Join(words, " and ")
	return out, true
}

// seamLength of an edge, or of all the stretches that darts leave of a seam.
func (m Maker) seamLength(path Path, what language.Sentence, name Text, piece pieces.Piece, s *Sewn) (float64, bool) {
	length, found := 0.0, false
	for _, e := range piece.Edges {
		is := func(n seams.Name) bool { return strict.Plain(n.String()) == strict.Plain(string(name)) }
		if is(e.Name) || is(e.Name.Seam()) && !e.Name.IsMouth() {
			length, found = length+e.Path.Length(), true
			s.AtCut = s.AtCut || e.Unknown
		}
	}
	if !found {
		m.Fault(path, strict.Unknown, "%s has no edge %q; %s", "%s hat keine Kante %q; %s", what, string(name),
			strict.Hint(string(name), edgeNames(piece)))
	}
	return length, found
}

func pieceNames(all []pieces.Piece) []string {
	var out []string
	for _, p := range all {
		if !slices.Contains(out, p.Name) {
			out = append(out, p.Name)
		}
	}
	return out
}
