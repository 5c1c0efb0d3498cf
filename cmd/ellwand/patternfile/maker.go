package patternfile

import (
	"maps"
	"slices"

	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/seams"
	piecewords "ellwand/pieces/words"
)

// tapeAccuracy, mm, is how far an outline may lie from the true one that was read
// with a tape [source.OwnChoice].
const tapeAccuracy = 2

// Piece makes a piece, once for each cloth that it is cut from.
func (m Maker) Piece(path Path, p Piece) []pieces.Piece {
	what := language.Say("piece %q", "Teil %q", string(p.Name))
	if p.Name == "" {
		m.Fault(path, strict.Missing, "the piece has no name; add one, such as: name: collar",
			"das Teil hat keinen Namen; geben Sie ihm einen, etwa: Kragen")
		return nil
	}
	piece, reversed, ok := m.shaped(path, what, p)
	piece.Name, piece.Size, piece.Cut = string(p.Name), string(p.Size), 1
	piece.Kind = strict.Choose(m.Values, path.Key("kind"), what.Its("the kind", "Art"), p.Kind)
	piece.Approximate = m.Yes(path.Key("approximate"), what.Its("approximate", "Ungefähr"), p.Approximate)
	if !ok || !m.allow(path, what, p, &piece) || !m.onFold(path, what, p, &piece) || !m.joins(path, what, p, &piece) ||
		!m.marked(path, what, p, reversed, &piece) {
		return nil
	}
	return m.cut(path, what, p, piece)
}

// shaped makes the outline of a piece, its grainline and its accuracy. Reversed says
// that its edges are written the other way round.
func (m Maker) shaped(path Path, what language.Sentence, p Piece) (piece pieces.Piece, reversed, ok bool) {
	given := 0
	for _, is := range []bool{p.Width != "" || p.Height != "", len(p.Outline) > 0, p.Offsets != nil} {
		if is {
			given++
		}
	}
	switch {
	case given > 1:
		m.Fault(path, strict.Contradiction, "%s has a shape twice; keep width and height, or outline, or offsets",
			"%s hat zweierlei Form; behalten Sie Breite und Höhe, oder den Umriss, oder die "+
				"abgelesenen Maße", what)
		return piece, false, false
	case len(p.Outline) > 0:
		piece, reversed, ok = m.outlined(path.Key("outline"), what, p)
		ok = ok && m.sized(path.Key("outline"), what, piece)
	case p.Offsets != nil:
		piece, ok = m.measured(path.Key("offsets"), what, p)
		ok = ok && m.sized(path.Key("offsets"), what, piece)
	default:
		piece, ok = m.rectangle(path, what, p)
	}
	piece.Grain.Lie = strict.Choose(m.Values, path.Key("grain"), what.Its("the grain", "Fadenlauf"), p.Grain)
	if len(p.GrainLine) > 0 {
		ok = m.grainLine(path.Key("grain_line"), what, p.GrainLine, &piece) && ok
	}
	switch {
	case p.Accuracy != "":
		piece.Accuracy, _ = m.Length(path.Key("accuracy"), what.Its("the accuracy", "Genauigkeit"), p.Accuracy)
	case m.all.accuracy > 0:
		piece.Accuracy = m.all.accuracy
	case p.Offsets != nil:
		piece.Accuracy = tapeAccuracy
	}
	return piece, reversed, ok
}

func (m Maker) rectangle(path Path, what language.Sentence, p Piece) (pieces.Piece, bool) {
	if p.Width == "" && p.Height == "" {
		m.Fault(path, strict.Missing,
			"%s has no shape; give it width and height, an outline or offsets: see ellwand "+
				"help pattern",
			"%s hat keine Form; geben Sie Breite und Höhe an, einen Umriss, oder abgelesene Maße", what)
		return pieces.Piece{}, false
	}
	width, widthKnown := m.Positive(path.Key("width"), what.Its("the width", "Breite"), p.Width)
	height, heightKnown := m.Positive(path.Key("height"), what.Its("the height", "Höhe"), p.Height)
	return pieces.Rectangle(string(p.Name), width, height), widthKnown && heightKnown
}

func (m Maker) grainLine(path Path, what language.Sentence, line []Point, piece *pieces.Piece) bool {
	if len(line) != 2 {
		m.Fault(path, strict.WrongShape,
			"%s: the grainline has two ends, the lower and the upper: [[10, 5], [10, 40]]",
			"%s: der Fadenlauf hat zwei Enden, das untere und das obere: [[10, 5], [10, 40]]", what)
		return false
	}
	from, okFrom := m.point(path.Entry(0), what.Its("the grainline", "Fadenlauf"), line[0])
	to, okTo := m.point(path.Entry(1), what.Its("the grainline", "Fadenlauf"), line[1])
	piece.Grain.From, piece.Grain.To = from, to
	return okFrom && okTo
}

// cut gives the piece its count, once for each cloth that it is cut from; of one that is
// pieced together, so many are cut of each of its lengths.
func (m Maker) cut(path Path, what language.Sentence, p Piece, piece pieces.Piece) []pieces.Piece {
	pair := m.Yes(path.Key("pair"), what.Its("pair", "Gegengleich"), p.Pair)
	if pair && piece.Fold != seams.None {
		m.Fault(path.Key("fold"), strict.Contradiction,
			"%s cannot be a pair and lie on the fold: a folded piece is cut whole; remove pair",
			"%s kann nicht gegengleich sein und im Stoffbruch liegen: im Bruch entsteht ein ganzes Teil",
			what)
		return nil
	}
	counts := map[string]int{}
	switch {
	case len(p.Cut.By) > 0 && p.Cloth != "":
		m.Fault(path.Key("cloth"), strict.Contradiction, "%s has its cloths under cut; remove cloth",
			"%s sagt je Stoff, wie oft es zugeschnitten wird; nehmen Sie den einzelnen Stoff weg", what)
		return nil
	case len(p.Cut.By) > 0:
		for name, text := range p.Cut.By {
			counts[name] = m.Count(path.Key("cut").Key(name), what.Its("cut", "Wie oft zugeschnitten"), text)
		}
	default:
		counts[string(p.Cloth)] = m.Count(path.Key("cut"), what.Its("cut", "Wie oft zugeschnitten"), p.Cut.One)
	}
	var out []pieces.Piece
	even := false
	for _, name := range slices.Sorted(maps.Keys(counts)) {
		one := piece
		at := path.Key("cloth")
		if len(p.Cut.By) > 0 {
			at = path.Key("cut").Key(name)
		}
		one.Cloth, one.Cut = m.Cloth(at, what, Text(name)), counts[name]*piece.Cut
		one.Pair = pair && counts[name]%2 == 0
		even = even || one.Pair
		out = append(out, one)
	}
	if pair && !even {
		m.Fault(path.Key("pair"), strict.Contradiction, "%s is a pair, but %d are cut; a pair needs an even number: "+
			"cut: %d", "%s ist gegengleich, wird aber %d-mal zugeschnitten; es braucht eine gerade Zahl: %d", what,
			out[0].Cut/piece.Cut, out[0].Cut/piece.Cut+1)
		return nil
	}
	for _, one := range out {
		if err := one.Check(); err != nil {
			m.Note(path, strict.Malformed, language.OfError(piecewords.Refused(err)))
			return nil
		}
	}
	return out
}
