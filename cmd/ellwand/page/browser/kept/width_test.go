package kept

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

// Another width is laid at once, and again when it is taken back: the lay in view follows.
func TestLayFollowsTheWidth(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"bag.yaml": bag})
	v.Show("#/job/bag.yaml/lay", browser.OnScreen+`'lay'`)
	v.Laid()
	const tab = `document.querySelector('.tabs a[aria-current] span').textContent`
	before := browser.Value[string](v, tab)
	v.Click("The cloth: Shell")
	v.Write("Width of the cloth", "150")
	v.Until(tab + `.includes('150')`)
	v.Laid()
	assert.Contains(t, browser.Value[string](v, `location.hash`), "/1500mm/")
	assert.Equal(t, "", browser.Value[string](v, `document.getElementById('notices').textContent`))
	v.Press("\t")
	v.Do(browser.ClickOn(browser.Named("Undo")))
	v.Until(tab + ` === '` + before + `'`)
	v.Laid()
}

// The lay that the commands choose is opened and marked, and has its reason beside it; the
// amounts name the same one.
func TestOneLayIsRecommended(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"bag.yaml": bag})
	v.Show("#/job/bag.yaml/lay", browser.OnScreen+`'lay'`)
	v.Laid()
	v.Until(`document.querySelector('.ways em')?.textContent === 'recommended'`)
	v.Do(browser.ClickOn(`document.querySelector('.ways a:has(em)')`))
	v.Until(`document.querySelector('.ways a[aria-current] em')?.textContent === 'recommended'`)
	v.Laid()
	way := browser.Value[string](v, `document.querySelector('.ways a[aria-current] span').textContent`)
	assert.Contains(t, browser.Value[string](v, `document.querySelector('.recommended').textContent`), way)
	chosen := browser.Await[string](v, `fetch('/api/jobs/bag.yaml/table').then((answer) => answer.json())
		.then((table) => table.cloths[0].chosen)`)
	assert.Equal(t, chosen, way)
	v.Do(browser.ClickOn(browser.Named("Look longer")))
	v.Until(`document.querySelector('.progress').textContent === 'Nothing shorter was found.'`)

	// The plan is of the recommended lay, and of the other one that was looked at.
	v.Show("#/job/bag.yaml/lay/shell/900mm/folded%20across%20the%20weft",
		`document.querySelector('.ways a[aria-current]')`)
	v.Show("#/job/bag.yaml/print", browser.OnScreen+`'print'`)
	v.Until(`document.querySelectorAll('.prints a[href*="/plan"]').length === 2`)
	second := browser.Value[string](v, `document.querySelectorAll('.prints a')[1].href`)
	assert.Contains(t, second, "lay=folded+across+the+weft")
}

// Nobody waits for the amounts of all lays to see one of them.
func TestALayIsSeenBeforeAllAreReckoned(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"bag.yaml": bag})
	v.Do(chromedp.Evaluate[chromedp.Void](`window.fetch = ((fetch) => (address, ...more) =>
		String(address).endsWith('/table') ? new Promise(() => {}) : fetch(address, ...more))(window.fetch)`))
	v.Show("#/job/bag.yaml/lay", browser.OnScreen+`'lay'`)
	v.Laid()
}

// Units stand beside what is asked for, and what is in use where nothing is written in grey.
func TestUnitsAndUsualValuesAreShown(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"bag.yaml": bag})
	v.Show("#/job/bag.yaml/lay", browser.OnScreen+`'lay' && document.querySelector('.clothForms')`)
	v.Laid()
	v.Until(`document.querySelector('[data-path*="selvedge"] input')?.placeholder === '1'`)
	v.Until(`document.querySelector('[data-path*="step"] input')?.placeholder === '10'`)
	v.Show("#/job/bag.yaml/charge", browser.OnScreen+`'charge'`)
	for field, unit := range map[string]string{"margin": "%", "deposit": "%", "price": "a metre"} {
		v.Until(`document.querySelector('[data-path*="` + field + `"] .unit')?.textContent === '` + unit + `'`)
	}
}

// What is said of a piece in the hand does not move the cloth under it.
func TestNotesDoNotPushTheCloth(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"bag.yaml": bag})
	v.Show("#/job/bag.yaml/lay", browser.OnScreen+`'lay'`)
	v.Laid()
	v.Do(browser.ClickOn(`document.querySelector('.asList summary')`))
	v.Do(chromedp.Evaluate[chromedp.Void](`document.querySelector('.cloth .piece').focus()`))
	v.Until(`!document.querySelector('.inHand').hidden`)
	const top = `document.querySelector('.cloth').getBoundingClientRect().top + scrollY`
	before := browser.Value[float64](v, top)
	for browser.Value[int](v, `document.querySelectorAll('.wrongs li').length`) == 0 {
		v.Press(kb.ArrowUp)
	}
	assert.Equal(t, before, browser.Value[float64](v, top))
	v.Press(kb.Escape)
}

// Control and Y does again what was undone, as control, shift and Z.
func TestControlYDoesAgain(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"bag.yaml": bag})
	v.Show("#/job/bag.yaml/measure", browser.OnScreen+`'measure'`)
	v.Write("Name of the job", "Another bag")
	v.Saved()
	v.Do(chromedp.Evaluate[chromedp.Void](`document.activeElement.blur()`),
		chromedp.KeyEvent("z", chromedp.KeyModifiers(chromedp.ModifierCtrl)))
	v.Until(`document.getElementById('said').textContent === 'Undone'`)
	v.Do(chromedp.KeyEvent("y", chromedp.KeyModifiers(chromedp.ModifierCtrl)))
	v.Until(`document.getElementById('said').textContent === 'Done again'`)
	assert.Contains(t, v.File("bag.yaml"), "Another bag")
}
