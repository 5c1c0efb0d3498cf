package browser

import (
	"context"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// Visitor is a reader of the page in a browser of her own.
type Visitor struct {
	*testing.T
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
	err := chromedp.Do(v.Tab, chromedp.Poll[chromedp.Void]("Boolean("+expression+")"))
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
