package draft

// Below these a body is taken for one that may be a child's, in mm: most of those
// below are, few grown bodies are, and the children's table ends about here
// [source.OwnChoice].
const (
	childHeight = 1500
	childBust   = 780
	childHip    = 840
)

// IsChildSized reports whether a body may be a child's: by its height, or where
// that is not given by its bust, else its hip. Small adults have such bodies, too.
func (b Body) IsChildSized() bool {
	for _, limit := range []struct {
		name  Measurement
		below float64
	}{{Height, childHeight}, {BustGirth, childBust}, {HipGirth, childHip}} {
		if value, given := b[limit.name]; given {
			return value < limit.below
		}
	}
	return false
}
