package part

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// collar is a straight collar: its half neck edge as long as half the neck
// seam, its end slanting out to a point [source.CommonPractice]. It opens where the
// bodice does.
func collar(m Measures, o Options, name string) (Block, error) {
	neck := o.Length / 2
	if neck == 0 {
		if m.Front == nil {
			return Block{}, construct.About(subject.Kind).Refuse("%s: there is no neck to fit it to: draft a bodice, "+
				"or "+
				"give the collar's length",
				"%s: es gibt kein Halsloch dazu: verlangen Sie ein Oberteil, oder geben Sie die Länge des "+
					"Kragens an", called(name))
		}
		neck = construct.SeamLength(*m.Front, seams.Neck) + construct.SeamLength(*m.Back, seams.Neck)
	}
	var fold seams.Name = seams.CentreBack
	if m.Back != nil && m.Back.Fold == seams.None && m.Front.Fold != seams.None {
		fold = seams.CentreFront
	}
	depth := o.FinishedDepth()
	corners := []orb.Point{{0, 0}, {neck, 0}, {neck + float64(collarPoint*depth), depth}, {0, depth}}
	piece := polygon(name, corners, seams.Neck, seams.FrontCollarEdge, seams.OuterCollarEdge, fold)
	piece.Cut, piece.Fold = 2, fold
	block := Block{Pieces: []pieces.Piece{piece}}
	if m.Front != nil {
		seam := construct.SeamLength(*m.Front, seams.Neck) + construct.SeamLength(*m.Back, seams.Neck)
		block.Pairings = []construct.Pairing{construct.Equal("collar to neck", name, 2*neck, "neck seam", 2*seam)}
	}
	return block, nil
}
