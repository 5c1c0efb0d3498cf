package lay

// Places are where the match points lie on the open cloth, by axis and name
// (across, with a name for each side): what is laid later keeps to them.
type Places [2]map[string]float64

// Match is something that a lay keeps on the repeat.
type Match struct {
	// Name of the match point; empty for the right and left of one piece.
	Name string
	// Across says that it is kept across the cloth, and not along it.
	Across bool
	// Pieces that keep it, by their index among those asked.
	Pieces []int
}
