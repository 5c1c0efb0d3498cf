package lay

// What stands in the way of matching the repeat.
const (
	// MatchedNowhere: matched to the stripes, a piece finds no place across.
	MatchedNowhere Obstacle = "matched nowhere"
	// PatternTurned: the pattern of the upper ply runs the other way.
	PatternTurned Obstacle = "pattern turned"
	// StripesTurned: the same for stripes across.
	StripesTurned Obstacle = "stripes turned"
	// TwoFolds: stripes along cannot meet about both.
	TwoFolds Obstacle = "two folds"
	// OffCentreLine: the centre would not lie on the line of the repeat.
	OffCentreLine Obstacle = "off the centre line"
	// UnmatchedPoint, or right and left where the Point is none, that the open lay keeps.
	UnmatchedPoint Obstacle = "unmatched"
)
