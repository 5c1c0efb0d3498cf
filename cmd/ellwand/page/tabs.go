package page

import (
	"context"
	"sync"
	"time"
)

// After the last tab is closed the program ends after a while, so that a page that is
// loaded again finds it; at first it waits longer for the browser. A tab that is hidden says
// that it is there three times in a minute, or as often as its browser lets it, which is once
// a minute [source.OwnChoice].
const (
	waitForFirst  = 5 * time.Minute
	waitForNext   = time.Minute
	waitForHidden = 3 * time.Minute
)

// tabs counts the tabs that have the page open, by the streams that they hold; those that
// are hidden hold none, and say that they are there.
type tabs struct {
	mutex sync.Mutex
	open  int
	ever  bool
	// until when a hidden tab is taken to be there.
	until   time.Time
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
	t.tell()
}

// here is said by a tab that is hidden.
func (t *tabs) here() {
	t.mutex.Lock()
	t.until, t.ever = time.Now().Add(waitForHidden), true
	t.mutex.Unlock()
	t.tell()
}

func (t *tabs) tell() {
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
		return max(waitForNext, time.Until(t.until)), true
	}
	return waitForFirst, true
}

// endWhenAlone calls end when no tab was open for a while.
func (t *tabs) endWhenAlone(ctx context.Context, end func()) {
	for {
		var over <-chan time.Time
		if wait, alone := t.wait(); alone {
			over = time.After(wait)
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
