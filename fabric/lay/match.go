package lay

import "ellwand/pieces/marks"

// Match is something that a lay keeps on the repeat.
type Match struct {
	// Name of the match point; None for the right and left of one piece.
	Name marks.Name
	// Across says that it is kept across the cloth, and not along it.
	Across bool
	// Pieces that keep it, by their index among those asked.
	Pieces []int
}
