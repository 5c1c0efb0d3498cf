package kept

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

// A flaw and the repeat of a print are given by form, and are drawn on the cloth.
func TestClothByForm(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"bag.yaml": bag})
	v.Show("#/job/bag.yaml/lay", browser.OnScreen+`'lay'`)
	v.Laid()
	v.Click("The cloth: Shell")
	v.Click("0 flaws")
	for label, text := range map[string]string{"Along": "10", "Across": "12", "Radius": "2"} {
		v.Do(browser.Written(`[...document.querySelectorAll('.flaws .field')].find(
			(one) => one.textContent.toLowerCase().startsWith('`+label+`'.toLowerCase())).querySelector('input')`, text))
	}
	v.Click("Add a flaw")
	v.Saved()
	v.Laid()
	assert.Contains(t, v.File("bag.yaml"), "radius: 2")
	v.Until(`document.querySelector('.flaws summary')?.textContent === '1 flaw of the cloth'`)
	v.Do(browser.Written(browser.Labelled("Repeat of the print along"), "9"))
	v.Saved()
	v.Laid()
	assert.Contains(t, v.File("bag.yaml"), "along: 9")
	v.Click("Take 1 away")
	v.Saved()
	assert.NotContains(t, v.File("bag.yaml"), "radius")
}
