package patternfile

import (
	"math"
	"strings"

	"ellwand/cmd/ellwand/strict"
	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/language"
	"ellwand/pieces/seams"
)

// isFold says that an edge is the one that is written as the fold.
func (m Maker) isFold(p Piece, edge seams.Name) bool {
	return p.Fold != "" && strict.Plain(string(p.Fold)) == strict.Plain(edge.String())
}

// onFold puts an edge of a piece on the fold. Only an edge along the warp can lie
// there: along the grainline on the straight grain, square to it on the cross grain,
// none on the bias.
func (m Maker) onFold(path Path, what language.Sentence, p Piece, piece *pieces.Piece) bool {
	if p.Fold == "" {
		return true
	}
	at := path.Key("fold")
	known, found := strict.KnownAs(string(p.Fold), edgeNames(*piece))
	if !found {
		m.Fault(at, strict.Unknown, "%s: the fold edge is %q, which it does not have; %s",
			"%s: die Bruchkante heißt %q, und die hat es nicht; %s", what, string(p.Fold),
			strict.Hint(string(p.Fold), edgeNames(*piece)))
		return false
	}
	edge, _ := piece.Edge(seams.Called(known))
	suits, others := m.edgesAlongWarp(*piece)
	isSuited := false
	for _, name := range suits {
		isSuited = isSuited || name == edge.Name.String()
	}
	switch lie := piece.Grain.Lie; {
	case lie == pieces.Bias:
		m.Fault(at, strict.Contradiction,
			"%s is on the bias, so it cannot lie on the fold; give its whole width and "+
				"remove fold",
			"%s liegt im schrägen Fadenlauf, also nicht im Stoffbruch; geben Sie die ganze Breite an, "+
				"ohne Bruch", what)
		return false
	case lie == pieces.EitherGrain:
		m.Fault(at, strict.Contradiction, "%s lies on the fold, so its grain is straight or cross, not either",
			"%s liegt im Stoffbruch, also ist der Fadenlauf gerade oder quer, nicht beliebig", what)
		return false
	case !isSuited && len(others) == 0:
		m.Fault(at, strict.Contradiction,
			"%s: the fold edge runs along the warp, and none of its straight edges does; "+
				"look at its grain",
			"%s: die Bruchkante läuft mit der Kette, und keine gerade Kante tut das; prüfen Sie den "+
				"Fadenlauf",
			what)
		return false
	case !isSuited:
		m.Fault(at, strict.Contradiction, "%s: the fold edge runs along the warp, so with %s grain it is %s, not %s",
			"%s: die Bruchkante läuft mit der Kette; bei Fadenlauf %s ist das %s, nicht %s", what,
			lie,
			strings.Join(suits, " or "), edge.Name)
		return false
	}
	piece.Fold = edge.Name
	for i := range piece.Edges {
		if e := &piece.Edges[i]; e.Name == piece.Fold {
			e.Allowance, e.Included, e.Unknown, e.Hem = 0, 0, false, false
		}
	}
	return true
}

// foldLean is how far, as a sine, an edge on the fold may lean from the warp: 1 mm on
// a metre [source.OwnChoice].
const foldLean = 0.001

// edgesAlongWarp are the edges that can lie on a fold, and the other ones.
func (m Maker) edgesAlongWarp(piece pieces.Piece) (along, others []string) {
	grain := geometry.Unit(geometry.Sub(piece.Grain.To, piece.Grain.From))
	if piece.Grain.Lie == pieces.CrossGrain {
		grain = geometry.Left(grain)
	}
	for _, e := range piece.Edges {
		u := geometry.Unit(geometry.Sub(e.Path.End(), e.Path.Start()))
		if math.Abs(geometry.Cross(u, grain)) < foldLean {
			along = append(along, e.Name.String())
		} else {
			others = append(others, e.Name.String())
		}
	}
	if len(along) == 0 {
		return along, nil
	}
	return along, others
}

// joins pieces a rectangle together from equal lengths.
func (m Maker) joins(path Path, what language.Sentence, p Piece, piece *pieces.Piece) bool {
	if p.Joins == "" {
		return true
	}
	joins := m.Count(path.Key("joins"), what.Its("joins", "Ansatznähte"), p.Joins)
	strip, ok := pieces.StripOf(*piece)
	switch {
	case !ok && piece.Fold == seams.None:
		m.Fault(path.Key("joins"), strict.Contradiction,
			"%s is no rectangle, so it is cut in one piece; remove joins",
			"%s ist kein Rechteck, also wird es in einem Stück zugeschnitten; nehmen Sie die "+
				"Ansatznähte weg", what)
		return false
	case !ok:
		m.Fault(path.Key("joins"), strict.Contradiction,
			"%s lies on the fold, so it is cut in one piece; remove joins "+
				"or fold",
			"%s liegt im Stoffbruch, also wird es in einem Stück zugeschnitten; nehmen Sie die "+
				"Ansatznähte oder den Bruch weg", what)
		return false
	case strip.Length/float64(joins+1) < construct.LeastStrip:
		m.Fault(path.Key("joins"), strict.OutOfRange, "%s: %d joins leave lengths of only %s; ask for fewer",
			"%s: %d Ansatznähte lassen nur Längen von %s; verlangen Sie weniger", what, joins,
			m.Say(strip.Length/float64(joins+1)))
		return false
	}
	*piece = strip.Joined(joins)
	return true
}
