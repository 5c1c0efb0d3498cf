package part

import (
	"math"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// asStrips gives the straight strips of a part the grain that is asked, and cuts each
// into equal pieces where joins are. It refuses what is no straight strip.
func asStrips(o Options, name string, block Block) (Block, error) {
	if o.Grain == AsDrawn && o.Joins == 0 {
		return block, nil
	}
	about := subject.Grain
	if o.Grain == AsDrawn {
		about = subject.Joins
	}
	all := block.Pieces
	block.Pieces = nil
	for _, piece := range all {
		strip, ok := pieces.StripOf(piece)
		if !ok {
			return Block{}, construct.About(about).Refuse("%s: it is no straight strip, so it lies as it is drawn, "+
				"in one "+
				"piece; leave grain and joins out",
				"%s: es ist kein gerader Streifen, also liegt es wie gezeichnet, in einem Stück; lassen "+
					"Sie Fadenlauf und Ansatznähte weg", called(name))
		}
		if length := strip.Length / float64(o.Joins+1); length < construct.LeastStrip {
			return Block{}, construct.About(subject.Joins).Refuse("%s: %d joins leave strips of only %s; ask for fewer",
				"%s: %d Ansatznähte lassen nur Streifen von %s; verlangen Sie weniger",
				called(name),
				o.Joins, construct.Length(length))
		}
		piece = strip.Joined(o.Joins)
		piece.Grain.Lie = lieOf(o.Grain, strip, piece.Grain.Lie)
		block.Pieces = append(block.Pieces, piece)
	}
	if o.Joins > 0 {
		joined := block.Pieces[0]
		block.Pairings = append(block.Pairings, construct.Equal(name, "strips joined", lengthJoined(joined, o.Joins),
			"length in one piece", lengthJoined(all[0], 0)))
	}
	return block, nil
}

// lengthJoined is the finished length of so many joins of strips, and of the piece itself
// without one.
func lengthJoined(piece pieces.Piece, joins int) float64 {
	bottom, side := construct.SeamLength(piece, seams.Bottom), construct.SeamLength(piece, seams.Left)
	return float64(joins+1) * math.Max(bottom, side)
}

// lieOf the grainline of a strip, which is drawn along its length or across it.
func lieOf(asked Grain, strip pieces.Strip, drawn pieces.GrainLie) pieces.GrainLie {
	switch {
	case asked == AsDrawn:
		return drawn
	case asked == Either:
		return pieces.EitherGrain
	case (asked == Lengthwise) == strip.GrainAlong:
		return pieces.StraightGrain
	}
	return pieces.CrossGrain
}
