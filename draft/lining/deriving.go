package lining

import (
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// deriving is a lining in the making.
type deriving struct {
	piece pieces.Piece
	// more is by how much a seam was made longer on purpose.
	more map[seams.Name]float64
}

// index of an edge, -1 when the piece has none of the name.
func (d *deriving) index(name seams.Name) int {
	for i, edge := range d.piece.Edges {
		if edge.Name == name {
			return i
		}
	}
	return -1
}

func (d *deriving) moveNotches(edge seams.Name, by float64) {
	for i := range d.piece.Notches {
		if d.piece.Notches[i].Edge == edge {
			d.piece.Notches[i].At += by
		}
	}
}
