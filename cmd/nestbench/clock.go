package main

import "time"

// clockOf so many workers: the processor time that each has had. It says what a quiet
// machine of so many cores would reach, on one that is busy.
func clockOf(workers int) func() time.Duration {
	return func() time.Duration { return processorTime() / time.Duration(workers) }
}
