package nest

import "ellwand/nest/internal/model"

// Tables are what searches for several problems about the same outlines share,
// such as the ways to lay the same pieces: the regions where two outlines
// overlap, which take longer to make than a short search. They are safe for
// concurrent use.
type Tables struct {
	width float64
	made  model.Shared
}

// NewTables returns empty tables for strips about as wide as that, from a quarter
// to four times the width; those of other strips are not shared.
func NewTables(width float64) *Tables { return &Tables{width: width} }

// scaleFor is the width that tolerances on a strip are shares of: that of the
// tables, where it is near, so that outlines come out the same on all strips.
func (t *Tables) scaleFor(width float64) float64 {
	if t == nil || width > 4*t.width || width < t.width/4 {
		return width
	}
	return t.width
}
