package bound

import (
	"github.com/paulmach/orb"

	"ellwand/nest/bound/internal/proof"
	"ellwand/nest/layout"
)

// This file exchanges along and across: pieces that need more than the width when they are
// laid so do not fit on the length.

// transposedStrip is the sheet with x and y exchanged.
func transposedStrip(p layout.Problem) proof.Strip {
	strip := proof.Strip{Width: p.Length, Gap: p.Gap, Reach: layout.Tolerance * p.Height()}
	for _, zone := range p.Zones {
		strip.Zones = append(strip.Zones, transposed(zone))
	}
	return strip
}

// transposedPieces exchanges x and y of every outline. Their pins say nothing then, and
// the least extents have been looked at.
func transposedPieces(pieces []proof.Piece) []proof.Piece {
	out := make([]proof.Piece, len(pieces))
	for i, piece := range pieces {
		out[i] = proof.Piece{Copies: piece.Copies, Tilts: piece.Tilts, Area: piece.Area}
		for _, outline := range piece.Outlines {
			out[i].Outlines = append(out[i].Outlines, transposed(outline))
		}
		for _, way := range piece.Ways {
			out[i].Ways = append(out[i].Ways, transposed(way))
		}
		for _, t := range piece.Turns {
			out[i].Turns = append(out[i].Turns, proof.Turned{Outline: transposed(t.Outline),
				Period: [2]float64{t.Period[1], t.Period[0]}, Offset: [2]float64{t.Offset[1], t.Offset[0]}})
		}
	}
	return out
}

func transposed(ring orb.Ring) orb.Ring {
	out := make(orb.Ring, len(ring))
	for i, q := range ring {
		out[i] = orb.Point{q[1], q[0]}
	}
	return out
}
