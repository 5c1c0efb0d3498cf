package nest

import (
	"ellwand/nest/bound"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
)

// Names that callers still use for what stands in the packages below; they go
// when the callers have been changed.
type (
	Problem   = layout.Problem
	Item      = layout.Item
	Turn      = layout.Turn
	Pin       = layout.Pin
	Placement = layout.Placement
	Layout    = layout.Layout
)

const (
	PinNone = layout.PinNone
	PinLow  = layout.PinLow
	PinHigh = layout.PinHigh
)

func Verify(p Problem, l Layout) error { return verify.Layout(p, l) }
func Bound(p Problem) float64          { return bound.Length(p) }
func Misfit(p Problem) string          { return bound.Misfit(p) }
