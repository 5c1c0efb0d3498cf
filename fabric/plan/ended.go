package plan

import (
	"fmt"
	"math"
	"time"
)

// Ended says of searches that they were ended before their work was done, and how far
// they had got. The zero value says that they were not.
type Ended struct {
	Early bool
	// Work that was due, and that was done.
	Work Work
	// Of is what the work is a share of: "the usual effort".
	Of string
	// After is how long was searched.
	After time.Duration
}

// Percent of the work that was done, in whole ones, rounded down.
func (e Ended) Percent() int { return int(math.Floor(100 * e.Work.Done())) }

// Share of the work that was done: "12 % of the usual effort".
func (e Ended) Share() string { return fmt.Sprintf("%d %% of %s", e.Percent(), e.Of) }

// Say it in a sentence; empty when the work was done.
func (e Ended) Say() string {
	if !e.Early {
		return ""
	}
	return fmt.Sprintf("The search was ended early, after %s and %s; a longer one may find that less is enough.", e.Time(),
		e.Share())
}

// Time that was searched, for people: "3.1 s", "4 min".
func (e Ended) Time() string {
	switch seconds := e.After.Seconds(); {
	case seconds < 10:
		return fmt.Sprintf("%.1f s", seconds)
	case seconds < 120:
		return fmt.Sprintf("%.0f s", seconds)
	default:
		return fmt.Sprintf("%.0f min", seconds/60)
	}
}

// And adds searches of the same command, which took no time beside these.
func (e Ended) And(more Ended) Ended {
	e.Early, e.Work, e.After = e.Early || more.Early, e.Work.Plus(more.Work), max(e.After, more.After)
	if e.Of == "" {
		e.Of = more.Of
	}
	return e
}
