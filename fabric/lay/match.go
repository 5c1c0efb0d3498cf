package lay

import "ellwand/pieces/marks"

// Match is something that a lay keeps on the repeat.
type Match struct {
	// Name of the match point; None for the right and left of one piece.
	Name marks.Name
	// Across says that it is kept across the cloth, and not along it.
	Across bool
	// Of is the first piece of those that it joins, by its index among those asked: it
	// tells matches of one name apart, such as the sides of a bodice and of a skirt.
	Of int
	// Pieces that keep it, by their index among those asked.
	Pieces []int
}
