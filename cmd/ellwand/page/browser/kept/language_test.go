package kept

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

// A reader of German writes and reads decimal commas; the file keeps its points.
func TestGerman(t *testing.T) {
	look := browser.Usual
	look.Language = "de-AT,de,en"
	v := browser.Visit(t, look, "skirt.yaml")
	assert.Equal(t, "Wie viel Stoff?", browser.Value[string](v, `document.querySelector('h1').textContent`))
	v.Show("#/job/skirt.yaml/measure", browser.OnScreen+`'measure'`)
	v.Write("Taillenumfang", "83,5")
	v.Saved()
	assert.Contains(t, v.File("skirt.yaml"), "waist_girth: 83.5")
	v.Until(browser.Labelled("Taillenumfang") + `.value === '83,5'`)
	v.Show("#/job/skirt.yaml/lay", `/^\d+,\d\d m$/.test(document.querySelector('.said .amount')?.textContent)`)
}

// What lacks for a quote is asked on the same screen, in German too, and a price that was
// written before there is a currency stands once there is one.
func TestGermanQuote(t *testing.T) {
	look := browser.Usual
	look.Language = "de"
	v := browser.VisitWith(t, look, map[string]string{"blouse.yaml": bareBlouse})
	v.Show("#/job/blouse.yaml/charge", `document.querySelectorAll('.lacks button').length === 2`)
	v.Write("Preis: Oberstoff", "18,5")
	v.Until(`document.querySelector('.field .fault')?.textContent === 'Fehlt noch: Währung'`)
	v.Do(browser.Chosen(browser.Labelled("Währung"), "EUR"))
	v.Until(`document.querySelector('.paper .total')?.textContent.endsWith('€')`)
	v.Saved()
	assert.Contains(t, v.File("blouse.yaml"), "price: 18.5")
	assert.Regexp(t, `\d,\d\d.€`, browser.Value[string](v, `document.querySelector('.paper .total').textContent`))
}

// What is half typed is told beside its field, and does not come into the file.
func TestHalfTyped(t *testing.T) {
	v := browser.Visit(t, browser.Usual, "blouse.yaml")
	before := v.File("blouse.yaml")
	v.Show("#/job/blouse.yaml/measure", browser.OnScreen+`'measure'`)
	v.Write("Bust girth", "9x")
	v.Until(`document.querySelector('.field .fault')`)
	assert.Equal(t, before, v.File("blouse.yaml"))
	v.Write("Bust girth", "27")
	v.Until(`document.querySelector('.doubt, .fault')`)
}
