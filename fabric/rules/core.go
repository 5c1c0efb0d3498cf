package rules

import (
	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// atMost are the pieces as large as they may be.
func atMost(all []pieces.Piece) []pieces.Piece {
	out := make([]pieces.Piece, len(all))
	for i, piece := range all {
		out[i] = piece.AtMost()
	}
	return out
}

// coreOf a template is what the true piece surely covers of it: where it is laid
// larger by its accuracy, twice that inside. Nil where the outline is exact. Where
// nothing is surely covered it is a speck, which proves nothing.
func coreOf(t Template) orb.Ring {
	if t.Piece.Accuracy == 0 {
		return nil
	}
	laid := t.Piece
	laid.Accuracy = 2*laid.Accuracy + outwardTolerance
	least, ok := laid.AtLeast()
	if !ok {
		return speck(t)
	}
	core, err := least.CuttingOutline(fineTolerance)
	if err != nil {
		return speck(t)
	}
	return core
}

// speck is a triangle of a tenth of a mm where the first edge begins.
func speck(t Template) orb.Ring {
	at := t.Piece.Grain.From
	if len(t.Outline) > 0 {
		at = t.Outline[0]
	}
	const side = 0.1 // [source.OwnChoice]
	return orb.Ring{at, {at[0] + side, at[1]}, {at[0], at[1] + side}, at}
}
