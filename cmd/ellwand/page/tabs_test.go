package page

import (
	"context"
	"testing"
	"testing/synctest"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// endedAfter is how long the program stays after what tabs do; the clock is the test's own.
func endedAfter(t *testing.T, do func(*tabs)) (after time.Duration) {
	t.Helper()
	synctest.Test(t, func(t *testing.T) {
		open, ended := newTabs(), make(chan time.Time, 1)
		ctx, cancel := context.WithCancel(t.Context())
		defer cancel()
		go open.endWhenAlone(ctx, func() { ended <- time.Now() })
		do(open)
		last := time.Now()
		after = (<-ended).Sub(last)
	})
	return after
}

// The program ends some time after its last tab is closed; a tab that is hidden keeps it for
// as long as it says that it is there, at least once a minute, and so does one that is seen.
func TestProgramEndsAfterItsLastTab(t *testing.T) {
	hidden := func(open *tabs, minutes int) {
		for range minutes {
			open.here()
			time.Sleep(time.Minute)
		}
		open.here()
	}
	tests := []struct {
		name string
		do   func(*tabs)
		want time.Duration
	}{
		{"no tab came", func(*tabs) {}, waitForFirst},
		{"closed", func(open *tabs) { open.enter()() }, waitForNext},
		{"seen for a day", func(open *tabs) {
			leave := open.enter()
			time.Sleep(24 * time.Hour)
			leave()
		}, waitForNext},
		{"hidden for a day", func(open *tabs) { open.enter()(); hidden(open, 24*60) }, waitForHidden},
		{"hidden, seen, closed", func(open *tabs) {
			hidden(open, 1)
			leave := open.enter()
			time.Sleep(time.Hour)
			leave()
		}, waitForNext},
		{"one hidden, one closed", func(open *tabs) {
			leave := open.enter()
			hidden(open, 60)
			leave()
		}, waitForHidden},
		{"opened hidden", func(open *tabs) { hidden(open, 60) }, waitForHidden},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) { assert.Equal(t, test.want, endedAfter(t, test.do)) })
	}
}

// What a hidden tab says comes to the tabs; nobody else can say it.
func TestHiddenTabIsHeard(t *testing.T) {
	v := newVisit(t).enter()
	status, _ := v.ask("POST", "/api/here", "{}")
	require.Equal(t, 202, status)
	assert.False(t, v.server.tabs.until.IsZero())
	other := newVisit(t)
	status, _ = other.ask("POST", "/api/here", "{}")
	assert.Equal(t, 403, status)
}
