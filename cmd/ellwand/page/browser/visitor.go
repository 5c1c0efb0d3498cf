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

// patience is how long a condition of the page may take before a test gives up; it is
// far longer than any takes.
const patience = 5 * time.Minute

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

// Until an expression of the page is true.
func (v *Visitor) Until(expression string) {
	v.Helper()
	err := chromedp.Do(v.Tab, chromedp.Poll[chromedp.Void]("Boolean("+expression+")",
		chromedp.WithPollingTimeout(patience/2)))
	require.NoError(v, err, "waited for %s; the page says:\n%s", expression, v.Seen())
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
