package rules

import (
	"ellwand/fabric/internal/motion"
	"ellwand/nest/layout"
	"ellwand/pieces"
)

// PlacementMotion is the same for a placement on a strip.
func PlacementMotion(problem layout.Problem, at layout.Placement) pieces.Motion {
	turn := problem.Items[at.Item].Turns[at.Turn]
	return motion.MotionOf(turn.Degrees+at.Tilt, turn.Mirrored, at.X, at.Y)
}
