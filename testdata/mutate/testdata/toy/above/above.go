// Package above uses toy.
package above

import "toy"

// Sign of a number that is not negative.
func Sign(n int) string {
	if toy.Positive(n) {
		return "plus"
	}
	return "none"
}
