package nofit

import "math"

// cosTurn and sinTurn take an angle as a share of a full turn.
func cosTurn(share float64) float64 { return math.Cos(2 * math.Pi * share) }
func sinTurn(share float64) float64 { return math.Sin(2 * math.Pi * share) }
