package amounts

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

const sizedSkirt = "job: Skirts\nunits: cm\nsize: 12\ntable: women\ngarments:\n  - name: skirt\n" +
	"    skirt: {shape: straight}\ncloths:\n  - {name: shell, width: 140}\n"

const amounts = `[...document.querySelectorAll('.bySize td')].map((one) => one.firstChild.textContent)`

// sizesShown are the heads of the rows.
const sizesShown = `[...document.querySelectorAll('.bySize tbody th[rowspan]')].map((one) => one.textContent)`

// tick a size, or take its tick away.
func tick(v *browser.Visitor, size string) {
	v.Helper()
	v.Do(browser.ClickOn(fmt.Sprintf(`document.querySelector('.sizes input[value="%s"]')`, size)))
}

// Several sizes and widths stand in one table; one that is ticked while it stands is asked
// for at once.
func TestTableOfSizes(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"skirts.yaml": sizedSkirt})
	v.Show("#/job/skirts.yaml/charge", `document.querySelector('.sizes input')`)
	tick(v, "16")
	v.Write("Widths of the cloth", "90; 150")
	v.Click("How much in each?")
	v.Until(amounts + `.length === 8`)
	for _, text := range browser.Value[[]string](v, amounts) {
		assert.Regexp(t, `^\d\.\d\d m$`, text)
	}
	assert.Equal(t, []string{"Skirt, size 12", "Skirt, size 16"}, browser.Value[[]string](v, sizesShown))
	tick(v, "12")
	v.Until(sizesShown + `.join() === 'Skirt, size 16'`)
	v.Write("Widths of the cloth", "wide")
	v.Until(`document.querySelector('.bySize .fault')`)
	assert.Equal(t, sizedSkirt, v.File("skirts.yaml"), "a table changes nothing")
}

// A table that takes long can be stopped: what was found by then stands there.
func TestTableOfSizesIsStopped(t *testing.T) {
	look := browser.Usual
	look.Language = "de"
	v := browser.VisitWith(t, look, map[string]string{"skirts.yaml": sizedSkirt})
	v.Show("#/job/skirts.yaml/charge", `document.querySelector('.sizes input')`)
	v.Do(browser.ClickOn(`document.querySelectorAll('.sizes input:not(:checked)').forEach((one) => one.click());
		document.querySelector('.sizes input')`))
	var widths []string
	for i := range 50 {
		widths = append(widths, fmt.Sprint(90+i))
	}
	v.Write("Breiten des Stoffes", strings.Join(widths, "; "))
	v.Click("Wie viel jeweils?")
	v.Until(`!document.querySelector('.bySize .stop').hidden`)
	v.Do(browser.ClickOn(`document.querySelector('.bySize .stop')`))
	v.Until(amounts + `.length > 0`)
	v.Until(`document.querySelector('.bySize .stop').hidden`)
	assert.Contains(t, browser.Value[string](v, `document.querySelector('.bySize').textContent`),
		"Vor dem Ende angehalten")
	assert.Contains(t, browser.Value[[]string](v, amounts), "nicht aufgelegt")
}
