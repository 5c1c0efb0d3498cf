package lay

// What stands in the way of a motif.
const (
	// NoMotifPoint: the piece does not have the Point.
	NoMotifPoint Obstacle = "no point for a motif"
	// OffMotif: a motif cannot be centred on the piece in this lay.
	OffMotif Obstacle = "off the motif"
)
