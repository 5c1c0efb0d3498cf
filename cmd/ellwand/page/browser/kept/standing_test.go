package kept

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

// What cannot stand in a field stays there and is marked, even where nothing stood before;
// what is shown and printed meanwhile says that it is older, and leads to the field.
func TestWrongFieldIsNotIgnored(t *testing.T) {
	v := browser.Visit(t, browser.Usual, "skirt.yaml")
	v.Show("#/job/skirt.yaml/charge", browser.OnScreen+`'charge'`)
	before := v.File("skirt.yaml")
	v.Write("Hours", "six")
	v.Saved()
	const hours = `document.querySelector('[data-path*="hours"] input')`
	v.Until(hours + `.getAttribute('aria-invalid') === 'true'`)
	assert.Equal(t, "six", browser.Value[string](v, hours+`.value`))
	assert.Equal(t, before, v.File("skirt.yaml"))
	v.Until(`document.getElementById('saved').textContent === '1 field is not right; all else is saved'`)
	v.Show("#/job/skirt.yaml/print", browser.OnScreen+`'print' && document.querySelector('.standing a')`)
	v.Until(`![...document.querySelectorAll('.prints a')].some((one) => one.href)`)
	v.Do(browser.ClickOn(`document.querySelector('.standing a')`))
	v.Until(browser.OnScreen + `'charge' && document.activeElement === ` + hours)
	v.Write("Hours", "6.50")
	v.Saved()
	v.Until(`!document.querySelector('.standing a') && document.getElementById('saved').textContent === 'all is saved'`)
	assert.Contains(t, v.File("skirt.yaml"), "hours: 6.50")
	assert.Equal(t, "6.50", browser.Value[string](v, hours+`.value`))
}

// A width that was written in metres, or a nought short, is asked about where it is written.
func TestNarrowWidthIsAskedAbout(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"bag.yaml": bag})
	v.Show("#/job/bag.yaml/lay", browser.OnScreen+`'lay'`)
	v.Laid()
	v.Click("The cloth: Shell")
	v.Write("Width of the cloth", "1.40")
	v.Until(`document.querySelector('.widths .fault')?.textContent.endsWith('Did you mean 140 cm?')`)
	v.Write("Width of the cloth", "140")
	v.Laid()
	v.Until(`!document.querySelector('.widths .fault')`)
}
