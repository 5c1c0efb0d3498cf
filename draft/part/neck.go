package part

import (
	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
)

// halfNeck is half the neck seam, from the fold of a collar to its opening.
type halfNeck struct {
	// fold and open are the pieces at either end, fold the centre line on it.
	fold, open pieces.Piece
	centre     string
	// opening is the centre line at the other end.
	opening string
	// first is the neck length of the piece at the fold, second of the other.
	first, second float64
	// extension is how far the opening reaches beyond its centre line.
	extension float64
}

// neckOf measures the neck of the bodice. A collar opens where the bodice
// does, and lies on the fold at the other centre line.
func neckOf(m Measures, name string) (halfNeck, error) {
	if m.Front == nil {
		return halfNeck{}, construct.About(subject.Kind).Refuse("%s: there is no neck to fit it to: draft a bodice", name)
	}
	n := halfNeck{fold: *m.Back, open: *m.Front, centre: "centre back", opening: "centre front"}
	if m.Back.Fold == "" && m.Front.Fold != "" {
		n.fold, n.open, n.centre, n.opening = n.open, n.fold, n.opening, n.centre
	}
	n.first, n.second = construct.SeamLength(n.fold, "neck"), construct.SeamLength(n.open, "neck")
	if edge, ok := n.open.Edge("extension neck"); ok {
		n.extension = edge.Path.Length()
	}
	return n, nil
}

// half is the length of half the neck seam.
func (n halfNeck) half() float64 { return n.first + n.second }

// matched pairs the neck edge of a collar with the neck, all round.
func (n halfNeck) matched(collar pieces.Piece) construct.Pairing {
	return construct.Equal("collar to neck", collar.Name, 2*construct.SeamLength(collar, "neck"), "neck seam", 2*n.half())
}
