package cloth

import "math"

// IsLength reports whether a number can be a length in mm: not negative, finite.
func IsLength(mm float64) bool { return mm >= 0 && !math.IsInf(mm, 1) }
