package browser

import (
	"context"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// farewell is what a test keeps of its time, to say what it waited for.
const farewell = 30 * time.Second

// glance is how often a test looks at the page: often enough for what a person sees.
const glance = 20 * time.Millisecond

// Visitor is a reader of the page in a browser of her own.
type Visitor struct {
	testing.TB
	// Tab of the browser, and Folder of the jobs.
	Tab    context.Context
	Folder string
}

// Do what is done in a browser.
func (v *Visitor) Do(actions ...chromedp.Action[chromedp.Void]) {
	v.Helper()
	require.NoError(v, chromedp.Do(v.Tab, actions...))
}

// Until an expression of the page is true: however long that takes, on any machine, as
// long as the run of the tests lasts.
func (v *Visitor) Until(expression string) {
	v.Helper()
	ctx, cancel := v.lasting()
	defer cancel()
	err := chromedp.Do(ctx, chromedp.Poll[chromedp.Void]("Boolean("+expression+")",
		chromedp.WithPollingInterval(glance), chromedp.WithPollingTimeout(0)))
	if err != nil {
		require.NoError(v, err, "waited for %s; the page says:\n%s", expression, v.Seen())
	}
}

// lasting is a context that ends shortly before the run of the tests is ended.
func (v *Visitor) lasting() (context.Context, context.CancelFunc) {
	if run, limited := v.TB.(interface{ Deadline() (time.Time, bool) }); limited {
		if end, ok := run.Deadline(); ok {
			return context.WithDeadline(v.Tab, end.Add(-farewell))
		}
	}
	return context.WithCancel(v.Tab)
}

// Seen is the text of the page, for the message of a test that fails.
func (v *Visitor) Seen() string {
	text, _ := chromedp.Run(v.Tab, chromedp.Evaluate[string](`document.body.innerText`))
	return text
}

// Value of an expression of the page.
func Value[T any](v *Visitor, expression string) T {
	v.Helper()
	out, err := chromedp.Run(v.Tab, chromedp.Evaluate[T](expression))
	require.NoError(v, err, expression)
	return out
}

// hear what the browser complains of: exceptions, and what the page's own policy forbids
// it. They fail the test when it is over.
func (v *Visitor) hear() {
	v.Helper()
	var mutex sync.Mutex
	var heard []string
	require.NoError(v, chromedp.Listen(v.Tab, func(event any) {
		mutex.Lock()
		defer mutex.Unlock()
		switch event := event.(type) {
		case *runtime.EventExceptionThrown:
			heard = append(heard, event.ExceptionDetails.Text+" "+event.ExceptionDetails.URL)
		case *log.EventEntryAdded:
			if event.Entry.Source != log.EntrySourceNetwork {
				heard = append(heard, event.Entry.Text)
			}
		}
	}))
	v.Cleanup(func() {
		mutex.Lock()
		defer mutex.Unlock()
		assert.Empty(v, heard, "the browser complains")
	})
}

// Await the value of a promise of the page.
func Await[T any](v *Visitor, expression string) T {
	v.Helper()
	out, err := chromedp.Run(v.Tab, chromedp.Evaluate[T](expression, chromedp.EvalAwaitPromise))
	require.NoError(v, err, expression)
	return out
}
