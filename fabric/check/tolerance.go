package check

// Tolerances of the check, mm [source.OwnChoice].
const (
	coverTolerance = 0.03
	alikeTolerance = 0.2  // of an outline and its image
	seamTolerance  = 0.1  // of a seam line drawn from chords
	fineTolerance  = 0.01 // of a cutting line drawn from chords
	matchTolerance = 1.0  // of two points that match
	excessAllowed  = 0.15
	edgeTolerance  = 1e-3
)
