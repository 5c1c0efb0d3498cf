package page

import (
	"context"
	"sync"
	"time"
)

// After the last tab is closed the program ends after a while, so that a page that is
// loaded again finds it; at first it waits longer for the browser [source.OwnChoice].
const (
	waitForFirst = 5 * time.Minute
	waitForNext  = time.Minute
)

// tabs counts the tabs that have the page open, by the streams that they hold.
type tabs struct {
	mutex   sync.Mutex
	open    int
	ever    bool
	changed chan struct{}
}

func newTabs() *tabs { return &tabs{changed: make(chan struct{}, 1)} }

// enter is called when a tab opens its stream; leave when it closes it.
func (t *tabs) enter() (leave func()) {
	t.add(1)
	return func() { t.add(-1) }
}

func (t *tabs) add(n int) {
	t.mutex.Lock()
	t.open, t.ever = t.open+n, true
	t.mutex.Unlock()
	select {
	case t.changed <- struct{}{}:
	default:
	}
}

// wait is how long to wait with as many tabs as there are; false as long as there are any.
func (t *tabs) wait() (time.Duration, bool) {
	t.mutex.Lock()
	defer t.mutex.Unlock()
	switch {
	case t.open > 0:
		return 0, false
	case t.ever:
		return waitForNext, true
	}
	return waitForFirst, true
}

// endWhenAlone calls end when no tab was open for a while.
func (t *tabs) endWhenAlone(ctx context.Context, end func()) {
	for {
		var over <-chan time.Time
		if wait, alone := t.wait(); alone {
			timer := time.NewTimer(wait)
			defer timer.Stop()
			over = timer.C
		}
		select {
		case <-ctx.Done():
			return
		case <-t.changed:
		case <-over:
			end()
			return
		}
	}
}
