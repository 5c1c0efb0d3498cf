// Package wholejob tests whole jobs on the page in a real browser: by mouse, by keyboard
// and by finger.
package wholejob

import (
	"os"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

func TestMain(m *testing.M) {
	status := m.Run()
	browser.Close()
	os.Exit(status)
}

var usual = browser.Look{Wide: 1440, High: 900}

// at a step of the job that is open.
func at(v *browser.Visitor, step string) {
	v.Helper()
	v.Click(step)
}

const onScreen = `document.querySelector('main').dataset.screen === `

// The first answer takes two clicks and three numbers.
func TestFirstAnswer(t *testing.T) {
	v := browser.Visit(t, usual)
	v.Click("Blouse")
	v.Write("Bust girth", "94")
	v.Write("Waist girth", "76")
	v.Write("Width of the cloth", "140")
	v.Click("How much cloth?")
	v.Until(`/^\d\.\d+ m/.test(document.querySelector('.answer .amount')?.textContent)`)
}

// A whole job by mouse: a new client in inches, a princess dress, three widths.
func TestWholeJobByMouse(t *testing.T) {
	v := browser.Visit(t, usual)
	v.Click("Princess dress")
	v.Click("Inches")
	v.Write("Bust girth", "37")
	v.Write("Waist girth", "30")
	v.Write("Hip girth", "39 3/4")
	v.Write("Width of the cloth", "58")
	v.Click("Make a job of it")
	v.Until(onScreen + `'measure'`)
	v.Write("For whom", "Ilse Maartens")
	v.Write("Back neck point to waist", "16 1/8")
	v.Saved()
	v.Until(`document.querySelector('.notes .why')`)
	assert.Contains(t, v.File("princess-dress.yaml"), "16 1/8")

	at(v, "Pieces")
	v.Until(`document.querySelectorAll('.draft').length > 3`)
	v.Do(chromedp.Evaluate[chromedp.Void](`document.querySelector('.draft .edge').scrollIntoView({ block: 'center' })`))

	at(v, "Lay")
	v.Until(`document.querySelector('.cloth .piece') && document.querySelector('.said .amount').textContent`)
}
