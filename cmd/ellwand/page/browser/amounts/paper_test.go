package amounts

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/page/browser"
)

// priced is a small job with a quote.
const priced = `job: Two bags
client: Nives Tarabella
units: cm
garments:
  - name: bag
    making: {hours: 2}
    pieces: [{name: side, width: 30, height: 40, cut: 2}]
cloths:
  - {name: shell, width: 140, price: 12}
currency: EUR
quote:
  rate: 20
  notions: [{name: thread, price: 2.60}]
  terms: [Paid when fetched.]
`

// priceFields of the paper, by what is written before them in the file.
var priceFields = []struct{ label, key string }{
	{"Price: Shell", "price: "}, {"Rate of an hour", "rate: "}, {"Price", "name: thread, price: "},
}

// at the field of the paper whose label begins so.
func atField(label string) string {
	return fmt.Sprintf(`[...document.querySelectorAll('.paper label')].find(
		(one) => one.textContent.toLowerCase() === %q.toLowerCase())?.control`, label)
}

// What is written on the paper letter by letter, with pauses of any length between, stands in
// the file as it was written, whatever answers come meanwhile.
func TestPriceIsKeptToItsLastDigit(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"bags.yaml": priced})
	v.Show("#/job/bags.yaml/charge", `document.querySelector('.paper .total .figure')?.textContent`)
	chance := rand.New(rand.NewPCG(1, 2))
	const figures, otherwise = "3.10", "7.20"
	for i := range 30 {
		field := priceFields[i%len(priceFields)]
		text := []string{figures, otherwise}[i/len(priceFields)%2]
		x, y := v.Middle(atField(field.label))
		v.Do(chromedp.MouseClickXY(x, y), chromedp.Evaluate[chromedp.Void](`document.activeElement.select()`))
		for _, letter := range text {
			pause := []float64{0, 5, 40, 120, 260, 420}[chance.IntN(6)] * chance.Float64()
			browser.Await[bool](v, fmt.Sprintf(`new Promise((over) => setTimeout(() => over(true), %f))`, pause))
			v.Do(chromedp.KeyEvent(string(letter)))
		}
		if chance.IntN(2) == 0 {
			v.Do(chromedp.KeyEvent("\t"))
		}
		v.Saved()
		assert.Contains(t, v.File("bags.yaml"), field.key+text, "time %d, %s", i, field.label)
		assert.Equal(t, text, browser.Value[string](v, atField(field.label)+`.value`))
	}
	v.Do(chromedp.KeyEvent("\t"))
	v.Until(`!document.querySelector('main [aria-busy]')`)
	for _, field := range priceFields {
		assert.Equal(t, "7.20", browser.Value[string](v, atField(field.label)+`.value`), field.label)
	}
}

// A change that comes from elsewhere while a hand writes on the paper neither takes the field
// away nor what is written in it.
func TestPaperStaysUnderTheHand(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"bags.yaml": priced})
	v.Show("#/job/bags.yaml/charge", `document.querySelector('.paper .total .figure')?.textContent`)
	x, y := v.Middle(atField("Price: Shell"))
	v.Do(chromedp.MouseClickXY(x, y), chromedp.Evaluate[chromedp.Void](`document.activeElement.select()`),
		chromedp.KeyEvent("9"))
	v.Saved()
	more := strings.Replace(v.File("bags.yaml"), "price: 2.60}]", "price: 2.60}, {name: clasp, price: 4}]", 1)
	require.NoError(t, os.WriteFile(filepath.Join(v.Folder, "bags.yaml"), []byte(more), 0o600))
	v.Until(`document.querySelectorAll('.paper ul:nth-of-type(2) > li').length === 2`)
	v.Do(chromedp.KeyEvent(".40"))
	v.Saved()
	assert.Equal(t, strings.Replace(more, "price: 9", "price: 9.40", 1), v.File("bags.yaml"))
	assert.Equal(t, "9.40", browser.Value[string](v, `document.activeElement.value`))
}

// Notions and terms are added on the paper, and taken away there.
func TestLinesOfThePaper(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"bags.yaml": priced})
	v.Show("#/job/bags.yaml/charge", `document.querySelector('.paper .total .figure')?.textContent`)
	v.Click("Another notion")
	for key, text := range map[string]string{"name": "clasp", "price": "4.00"} {
		v.Do(browser.Written(`[...document.querySelectorAll('.paper .adding[open] .field')].find(
			(one) => one.textContent.trim().toLowerCase() === '`+key+`').querySelector('input')`, text))
	}
	v.Click("Add it")
	v.Until(`[...document.querySelectorAll('.paper li')].some((one) => one.textContent.includes('4.00'))`)
	v.Saved()
	assert.Contains(t, v.File("bags.yaml"), "{name: thread, price: 2.60}, {name: clasp, price: 4.00}]")
	v.Click("Take thread away")
	v.Until(`!document.querySelector('.paper').textContent.includes('Take thread away')`)
	v.Saved()
	assert.Contains(t, v.File("bags.yaml"), "notions: [{name: clasp, price: 4.00}]")
	v.Do(browser.Written(atField("Your terms"), "Paid when fetched.\n\nNothing is sent. \n"))
	v.Saved()
	assert.Contains(t, v.File("bags.yaml"), "terms: [Paid when fetched., Nothing is sent.]")
	v.Do(browser.Written(atField("Your terms"), ""))
	v.Saved()
	assert.NotContains(t, v.File("bags.yaml"), "terms")
}

// What a price is asked for is said before there is one.
func TestLinesAreNamedBeforeTheyArePriced(t *testing.T) {
	v := browser.Visit(t, browser.Usual, "blouse.yaml")
	v.Show("#/job/blouse.yaml/charge", `document.querySelector('.paper .lacks')`)
	assert.Equal(t, []string{"Shell", "Lining"}, browser.Value[[]string](v, `[...document.querySelectorAll('.paper .what .text')]
		.slice(0, 2).map((one) => one.textContent)`))
}

// On a narrow screen the lines of the paper are broken, and nothing of it is pushed aside.
func TestPaperIsBrokenIntoLines(t *testing.T) {
	narrow := browser.Look{Wide: 320, High: 700}
	v := browser.VisitWith(t, narrow, map[string]string{"bags.yaml": strings.Replace(priced, "name: shell,",
		"name: wool from the mill behind the weir,", 1)})
	v.Show("#/job/bags.yaml/charge", `document.querySelector('.paper .total .figure')?.textContent`)
	assert.Empty(t, browser.Value[[]string](v, `(() => {
		const paper = document.querySelector('.paper');
		const right = paper.getBoundingClientRect().right;
		return [...paper.querySelectorAll('*')].filter((one) => one.getBoundingClientRect().right > right)
			.map((one) => one.outerHTML);
	})()`))
	assert.True(t, browser.Value[bool](v, `document.querySelector('.paper').scrollWidth <= innerWidth`))
}
