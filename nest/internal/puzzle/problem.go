package puzzle

import "github.com/paulmach/orb"

// Problem asks for a layout of all pieces on Length x Width without any waste.
type Problem struct {
	Width, Length float64
	// Shapes are clean, counter-clockwise outlines.
	Shapes [][]orb.Point
	Pieces []Piece
}

// Piece is an outline in the turns that it may take, as indices of shapes, and how
// often it is to be laid.
type Piece struct {
	Shapes []int
	Copies int
}

// Placed says by how much a shape was moved, for one copy of a piece.
type Placed struct {
	Piece, Shape int
	X, Y         float64
}
