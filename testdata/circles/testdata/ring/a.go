// Package ring has files in a circle, for a test.
package ring

// First needs the second.
type First struct{ next *Second }
