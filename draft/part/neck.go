package part

import (
	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// halfNeck is half the neck seam, from the fold of a collar to its opening.
type halfNeck struct {
	// fold and open are the pieces at either end, fold the centre line on it.
	fold, open pieces.Piece
	centre     seams.Name
	// opening is the centre line at the other end.
	opening seams.Name
	// first is the neck length of the piece at the fold, second of the other.
	first, second float64
	// extension is how far the opening reaches beyond its centre line.
	extension float64
}

// neckOf measures the neck of the bodice. A collar opens where the bodice
// does, and lies on the fold at the other centre line.
func neckOf(m Measures, name string) (halfNeck, error) {
	if m.Front == nil {
		return halfNeck{}, construct.About(subject.Kind).Refuse("%s: there is no neck to fit it to: draft a bodice",
			"%s: es gibt kein Halsloch dazu: verlangen Sie ein Oberteil",
			called(name))
	}
	n := halfNeck{fold: *m.Back, open: *m.Front, centre: seams.CentreBack, opening: seams.CentreFront}
	if m.Back.Fold == seams.None && m.Front.Fold != seams.None {
		n.fold, n.open, n.centre, n.opening = n.open, n.fold, n.opening, n.centre
	}
	n.first, n.second = construct.SeamLength(n.fold, seams.Neck), construct.SeamLength(n.open, seams.Neck)
	if edge, ok := n.open.Edge(seams.ExtensionNeck); ok {
		n.extension = edge.Path.Length()
	}
	return n, nil
}

// half is the length of half the neck seam.
func (n halfNeck) half() float64 { return n.first + n.second }

// matched pairs the neck edge of a collar with the neck, all round.
func (n halfNeck) matched(collar pieces.Piece) construct.Pairing {
	return construct.Equal("collar to neck", collar.Name, 2*construct.SeamLength(collar, seams.Neck), "neck seam",
		2*n.half())
}
