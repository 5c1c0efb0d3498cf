// Package wholejob tests whole jobs on the page in a real browser, by mouse.
package wholejob

import (
	"fmt"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

func TestMain(m *testing.M) { browser.Main(m) }

// at a step of the job that is open.
func at(v *browser.Visitor, step string) {
	v.Helper()
	v.Click(step)
}

// The first answer takes two clicks and three numbers.
func TestFirstAnswer(t *testing.T) {
	v := browser.Visit(t, browser.Usual)
	v.Click("Blouse")
	v.Write("Bust girth", "94")
	v.Write("Waist girth", "76")
	v.Write("Width of the cloth", "140")
	v.Click("How much cloth?")
	v.Until(`/^Buy \d\.\d+ m/.test(document.querySelector('.answer .amount')?.textContent)`)
}

// A whole job by mouse: a new client in inches, a princess dress, three widths.
func TestWholeJobByMouse(t *testing.T) {
	v := browser.Visit(t, browser.Usual)
	v.Click("Princess dress")
	v.Click("Inches")
	v.Write("Bust girth", "37")
	v.Write("Waist girth", "30")
	v.Write("Hip girth", "39 3/4")
	v.Write("Width of the cloth", "58")
	v.Click("Make a job of it")
	v.Until(browser.OnScreen + `'measure'`)
	v.Write("For whom", "Ilse Maartens")
	v.Write("Back neck point to waist", "16 1/8")
	v.Saved()
	v.Until(`document.querySelector('.notes .why')`)
	assert.Contains(t, v.File("princess-dress.yaml"), "16 1/8")

	at(v, "Pieces")
	v.Until(`document.querySelectorAll('.draft').length > 3`)
	v.Do(chromedp.Evaluate[chromedp.Void](`document.querySelector('.draft .edge').scrollIntoView({ block: 'center' })`))

	at(v, "Lay")
	v.Laid()
	v.Click("The cloth: Shell")
	v.Click("Another width")
	v.Write("Width 2", "45")
	v.Until(`document.querySelectorAll('.tabs:not(.ways) a').length === 2`)
	v.Click("Another width")
	v.Write("Width 3", "36")
	v.Until(`document.querySelectorAll('.tabs:not(.ways) a').length === 3`)
	v.Laid()

	v.Drag(browser.Piece("front bodice"), 40, 0)
	v.Until(browser.Held + `=== 1`)
	v.Laid() // the rest lies round it, and still
	v.Until(`document.querySelector('.progress').textContent === 'The piece is held; the rest was laid again.'`)
	v.Drag(browser.Piece("top sleeve"), 0, -25)
	v.Until(browser.Held + `=== 2`)
	v.Click("Lay the rest anew")
	v.Laid()
	assert.Contains(t, v.File("princess-dress.yaml"), "laid_by_hand")
	v.Click("Undo")
	v.Until(browser.Held + `=== 1`)
	v.Saved()
	v.Click("Do again")
	v.Until(browser.Held + `=== 2`)

	at(v, "Buy and charge")
	v.Write("Currency", "EUR")
	v.Write("Price: Shell", "18.50")
	v.Write("Rate of an hour", "28")
	v.Write("Hours: Princess dress", "12")
	v.Until(`/€\d/.test(document.querySelector('.paper .total')?.textContent)`)

	at(v, "Print")
	v.Until(`document.querySelector('.prints a')`)
	assert.Equal(t, "%PDF-", browser.Await[string](v, browser.FirstOfPrint))
}

// A second piece may be taken while the first is still on its way down.
func TestTwoDragsInARow(t *testing.T) {
	v := browser.Visit(t, browser.Usual, "skirt.yaml")
	v.Show("#/job/skirt.yaml/lay", `document.querySelector('.cloth .piece')`)
	v.Laid()
	all := browser.Value[int](v, `document.querySelectorAll('.cloth .piece').length`)
	assert.Greater(t, all, 1)
	for i := range 2 {
		v.Drag(fmt.Sprintf(`document.querySelectorAll('.cloth .piece .outline')[%d]`, i), 30, 0)
	}
	v.Until(browser.Held + `=== 2`)
	v.Saved()
}
