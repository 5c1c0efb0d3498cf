// Package toy has a change that its own tests see, one that only those above
// see, and one that none sees.
package toy

// Twice is tested here.
func Twice(n int) int { return n * 2 }

// Positive is tested by the package above.
func Positive(n int) bool { return n > 0 }

// Forgotten is not tested.
func Forgotten(n int) int { return n - 7 }

// Joined has a sum without a difference.
func Joined(a, b string) string { return a + b }
