package store

import (
	"time"
)

// Limits of what is kept [source.OwnChoice].
const (
	// mostBytes of one entry: a lay of ten thousand pieces takes about two million.
	mostBytes = 4 << 20
	// fullAt bytes of all entries the oldest are dropped, until emptied are left.
	fullAt  = 64 << 20
	emptied = 48 << 20
	// stale is how old the temporary file of a process that was killed is at least.
	stale = time.Hour
)
