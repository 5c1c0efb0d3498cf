package bodice

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// The opening at the centre front or back, in mm [source.CommonPractice]: the
// extension is about as wide as a button, the facing reaches 6 cm in from the
// edge.
const (
	usualExtension = 20
	leastExtension = 5
	mostExtension  = facingWidth - 15
	facingWidth    = 60
)

func (o Options) extension() float64 {
	if o.Extension > 0 {
		return o.Extension
	}
	return usualExtension
}

// opens is the centre line at which the bodice opens; none if at neither.
func (o Options) opens() seams.Name {
	switch {
	case o.FrontOpening:
		return seams.CentreFront
	case o.BackOpening:
		return seams.CentreBack
	}
	return seams.None
}

func (o Options) checkOpening() error {
	switch {
	case o.opens() == seams.None:
		return nil
	case o.FrontOpening && o.BackOpening:
		return construct.About(subject.Front, subject.Back).Refuse(
			"bodice: it opens at the front or at the back; leave out one of them",
			"Oberteil: es öffnet sich vorn oder hinten; lassen Sie eines davon weg")
	case o.BackOpening && o.BackOnFold:
		return construct.About(subject.Back).Refuse("bodice: a back that opens does not lie on the fold; leave out "+
			"one of them",
			"Oberteil: ein Rücken mit Verschluss liegt nicht im Stoffbruch; lassen Sie eines davon weg")
	case o.BackOpening && o.Yoke != 0:
		return construct.About(subject.Yoke).Refuse("bodice: a back that opens has no yoke, which lies on the fold; "+
			"leave out one of them",
			"Oberteil: ein Rücken mit Verschluss hat keine Passe, die im Stoffbruch liegt; lassen Sie "+
				"eines davon weg")
	}
	if e := o.extension(); e < leastExtension || e > mostExtension {
		return construct.About(subject.Extension).Refuse("bodice: an extension of %s beyond the %s cannot be; ask for "+
			"%s to %s, about the width of a button",
			"Oberteil: ein Übertritt von %s über %s geht nicht; verlangen Sie %s bis %s, etwa die "+
				"Breite eines Knopfs", construct.Length(e), o.opens(), construct.AtLeast(leastExtension),
			construct.AtMost(mostExtension))
	}
	return nil
}

// open grows an extension and a facing on to a piece that is drawn to the
// centre line at which the bodice opens. Folded back along its edge, the facing
// is the mirror image of the piece beside it, so that it lies under it edge to
// edge.
func (f figures) open(s *construct.Sheet, o Options, piece pieces.Piece) pieces.Piece {
	last := len(piece.Edges) - 1
	neck, bottom, centre := piece.Edges[last-1].Path, piece.Edges[0], piece.Edges[last].Path
	ext := o.extension()
	inner := min(facingWidth-ext, 0.8*neck.Start()[0], 0.8*bottom.Path.End()[0])
	fold := pieces.MirrorAbout(orb.Point{-ext, 0}, orb.Point{-ext, 1})
	top, foot := centre.Start(), centre.End()
	onFold := func(p orb.Point) orb.Point { return orb.Point{-ext, p[1]} }

	covered := stretchTo(neck.Reverse(), inner)
	below := stretchTo(bottom.Path, inner)
	facingNeck := construct.Join(construct.Line(onFold(top), fold.Apply(top)), covered.Map(fold))
	facingBottom := construct.Join(below.Map(fold).Reverse(), construct.Line(fold.Apply(foot), onFold(foot)))

	piece.Edges = append([]pieces.Edge{}, piece.Edges[:last]...)
	piece.Edges = append(piece.Edges,
		construct.Edge(seams.ExtensionNeck, construct.Line(top, onFold(top))),
		construct.Edge(seams.FacingNeck, facingNeck),
		construct.Edge(seams.FacingEdge, construct.Line(facingNeck.End(), facingBottom.Start())))
	if bottom.Hem {
		// One hem runs on under piece, extension and facing.
		piece.Edges[0].Path = construct.Join(facingBottom, construct.Line(onFold(foot), foot), bottom.Path)
	} else {
		piece.Edges = append(piece.Edges,
			construct.Edge(seams.FacingWaist, facingBottom),
			construct.Edge(seams.ExtensionWaist, construct.Line(onFold(foot), foot)))
	}
	piece.Cut, piece.Pair, piece.Fold = 2, true, seams.None
	piece.Marks = append(piece.Marks,
		pieces.Mark{Name: marks.OfCentre(o.opens()), Path: centre},
		pieces.Mark{Name: marks.FacingFold, Path: construct.Line(onFold(top), onFold(foot))})
	which, at := "front", o.opens().String()
	if o.BackOpening {
		which = "back"
	}
	s.Draw("draw the "+which+" edge {} to the left of the "+at+", as long as it, and join it to neck and lower edge "+
		"squarely", "the extension, about the width of a button", ext)
	s.Draw("fold the paper along the "+which+" edge and trace neck and lower edge through it as far as {} beyond the "+
		at+": this is the facing, closed by a straight line",
		"6 cm from the "+which+" edge, or less on a narrow neck",
		inner)
	return piece
}

// stretchTo is the part of a path that begins on the centre line up to a
// distance from it.
func stretchTo(path pieces.Path, x float64) pieces.Path {
	return construct.Stretch(path, 0, construct.Reach(path, 0, x))
}
