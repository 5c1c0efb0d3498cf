package browser

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

func (v *visitor) do(actions ...chromedp.Action[chromedp.Void]) {
	v.Helper()
	require.NoError(v, chromedp.Do(v.tab, actions...))
}

// until an expression of the page is true.
func (v *visitor) until(expression string) {
	v.Helper()
	err := chromedp.Do(v.tab, chromedp.Poll[chromedp.Void]("Boolean("+expression+")"))
	require.NoError(v, err, "waited for %s; the page says:\n%s", expression, v.seen())
}

// seen is the text of the page, for the message of a test that fails.
func (v *visitor) seen() string {
	text, _ := chromedp.Run(v.tab, chromedp.Evaluate[string](`document.body.innerText`))
	return text
}

func value[T any](v *visitor, expression string) T {
	v.Helper()
	out, err := chromedp.Run(v.tab, chromedp.Evaluate[T](expression))
	require.NoError(v, err, expression)
	return out
}

// show a screen, whole, once what says so is true.
func (v *visitor) show(hash, there string) {
	v.Helper()
	v.do(chromedp.Evaluate[chromedp.Void](fmt.Sprintf(`location.hash = %q`, hash)))
	v.until(there)
	v.until(`[...document.images].every((image) => image.complete || image.loading === 'lazy')`)
}

// button or link of a name, as it is read out.
func named(name string) string {
	return fmt.Sprintf(`[...document.querySelectorAll('button, a, summary, label')].find(
		(one) => (one.getAttribute('aria-label') ?? one.textContent).trim().toLowerCase().startsWith(%q))`, strings.ToLower(name))
}

// click what has a name, with the mouse.
func (v *visitor) click(name string) {
	v.Helper()
	v.until(named(name))
	x, y := v.middle(named(name))
	v.do(chromedp.MouseClickXY(x, y))
}

// middle of an element, scrolled into view.
func (v *visitor) middle(element string) (x, y float64) {
	v.Helper()
	at := value[[]float64](v, `(() => {
		const one = `+element+`;
		one.scrollIntoView({ block: 'center', inline: 'center', behavior: 'instant' });
		const box = one.getBoundingClientRect();
		return [box.left + box.width / 2, box.top + box.height / 2];
	})()`)
	return at[0], at[1]
}

// write into a file of the visitor's folder.
func (v *visitor) file(name string) string {
	v.Helper()
	text, err := os.ReadFile(filepath.Join(v.folder, name))
	require.NoError(v, err)
	return string(text)
}
