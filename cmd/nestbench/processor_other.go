//go:build !unix

package main

import "time"

// processorTime is that on the wall where the system tells no other in the same way.
func processorTime() time.Duration { return wallTime() }
