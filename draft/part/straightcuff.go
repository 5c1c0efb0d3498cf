package part

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/source"
)

// cuff is straight and folded double along its middle.
func cuff(m Measures, o Options, name string) (Block, error) {
	length := o.Length
	if length == 0 {
		if m.Wrist == 0 {
			return Block{}, construct.About(subject.WristGirth).Refuse("%s: the wrist girth is missing: measure it, or "+
				"give the cuff's length",
				"%s: der Handgelenkumfang fehlt: messen Sie, oder geben Sie die Länge der Manschette an",
				called(name))
		}
		length = CuffLength(m.Wrist)
	}
	piece := folded(name, length, o.FinishedDepth())
	piece.Cut, piece.Pair = 2, true
	block := Block{Pieces: []pieces.Piece{piece}}
	if m.WristWidth > 0 {
		block.Pairings = []construct.Pairing{{
			Seam: "wrist to cuff", Of: "sleeve wrist", Length: m.WristWidth, Against: name, Other: length,
			Least: -cuffOverlap, Most: 2 * length,
			Normal: construct.Say("the sleeve up to three times as long, pleated or gathered in; "+
				"the cuff up to 2 cm longer, to button over (%s)",
				source.CommonPractice),
		}}
	}
	return block, nil
}

// folded is a rectangle folded double along its length, the fold line marked.
func folded(name string, length, depth float64) pieces.Piece {
	piece := pieces.Rectangle(name, length, 2*depth)
	piece.Marks = []pieces.Mark{{Name: marks.FoldLine,
		Path: construct.Line(orb.Point{0, depth}, orb.Point{length, depth})}}
	return piece
}
