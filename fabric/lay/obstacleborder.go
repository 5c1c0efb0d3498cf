package lay

// What stands in the way of a border.
const (
	// NoHem: a piece of the border has no such Edge.
	NoHem Obstacle = "no hem"
	// CurvedHem cannot lie on a border.
	CurvedHem Obstacle = "curved hem"
	// SlantedHem is not square to the grainline.
	SlantedHem Obstacle = "slanted hem"
	// BorderOnOnePly: the upper ply does not have the border there.
	BorderOnOnePly Obstacle = "border on one ply"
	// BorderAgainstNap: the nap would run the wrong way over the piece.
	BorderAgainstNap Obstacle = "border against the nap"
	// BorderOutside: with the hem on the line, Takes from the edge, the piece does not
	// lie between the selvedges.
	BorderOutside Obstacle = "border outside"
)
