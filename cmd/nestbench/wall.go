package main

import "time"

var began = time.Now()

// wallTime is the time since the program began.
func wallTime() time.Duration { return time.Since(began) }
