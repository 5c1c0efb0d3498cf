package amounts

import (
	"testing"

	"github.com/chromedp/chromedp"

	"ellwand/cmd/ellwand/page/browser"
)

// endlessTables lets no table of the amounts be reckoned, and counts those that are waited
// for: a browser keeps six ways to one program, and does not ask a seventh question.
const endlessTables = `(() => {
	const before = window.fetch;
	window.waited = 0;
	window.fetch = (address, about) => address.endsWith('/table')
		? new Promise((_, refused) => {
			window.waited += 1;
			about.signal.addEventListener('abort', () => {
				window.waited -= 1;
				refused(new DOMException('given up', 'AbortError'));
			});
		})
		: before(address, about);
})()`

// Amounts that are reckoned for a job as it was before are given up when it changes, so
// that they do not stand in the way of the hand.
func TestOldAmountsAreGivenUp(t *testing.T) {
	v := browser.Visit(t, browser.Usual, "skirt.yaml")
	v.Show("#/job/skirt.yaml/lay", `document.querySelector('.cloth .piece')`)
	v.Laid()
	v.Do(chromedp.Evaluate[chromedp.Void](endlessTables))
	for range 3 {
		v.Drag(`document.querySelector('.cloth .piece .outline')`, 30, 0)
		v.Until(browser.Held + `=== 1`)
		v.Saved()
		v.Until(`window.waited === 1`)
		v.Click("Undo")
		v.Until(browser.Held + `=== 0`)
		v.Saved()
		v.Until(`window.waited === 1`)
	}
}
