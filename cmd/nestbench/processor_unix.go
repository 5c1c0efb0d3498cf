//go:build unix

package main

import (
	"syscall"
	"time"
)

// processorTime is what this process has used of all processors, so that others on the
// machine do not count.
func processorTime() time.Duration {
	var used syscall.Rusage
	if syscall.Getrusage(syscall.RUSAGE_SELF, &used) != nil {
		return wallTime()
	}
	return time.Duration(used.Utime.Nano() + used.Stime.Nano())
}
