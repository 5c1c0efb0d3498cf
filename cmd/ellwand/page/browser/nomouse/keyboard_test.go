// Package nomouse tests, in a real browser, whole jobs by the keyboard alone and by finger.
package nomouse

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

func TestMain(m *testing.M) { browser.Main(m) }

// typed into the field whose label begins so, which the tabulator comes to.
func typed(v *browser.Visitor, label, text string) {
	v.Helper()
	v.TabTo(`on.id && (` + browser.Labelled(label) + `) === on`)
	v.Do(chromedp.KeyEvent("a", chromedp.KeyModifiers(chromedp.ModifierCtrl)), chromedp.KeyEvent(text))
}

// entered is a button or link that the tabulator comes to, pressed by the keyboard.
func entered(v *browser.Visitor, name string) {
	v.Helper()
	v.TabTo(`['A', 'BUTTON', 'SUMMARY'].includes(on.tagName) && on === ` + browser.Named(name))
	v.Press(kb.Enter)
}

// The same job by the keyboard alone.
func TestWholeJobByKeyboard(t *testing.T) {
	v := browser.Visit(t, browser.Usual)
	v.TabTo(`on.closest('.gallery')`)
	v.Press(" ", kb.ArrowRight, kb.ArrowRight)
	v.Until(`document.querySelector('.gallery input:checked').value === 'princess dress'`)
	v.TabTo(`on.value === 'cm'`)
	v.Press(kb.ArrowRight, kb.ArrowRight)
	typed(v, "Bust girth", "37")
	typed(v, "Waist girth", "30")
	typed(v, "Hip girth", "39 3/4")
	typed(v, "Width of the cloth", "58")
	entered(v, "Make a job of it")
	v.Until(browser.OnScreen + `'measure'`)
	typed(v, "For whom", "Ilse Maartens")
	entered(v, "On to the pieces")
	v.Until(`document.querySelectorAll('.draft .edge').length > 3`)
	v.TabTo(`on.closest('.draft .edge')`)
	v.Press(kb.Enter)
	v.Until(`document.activeElement.closest('.panel')`)
	v.Press("3/4\t")
	v.Saved()
	assert.Contains(t, v.File("princess-dress.yaml"), "3/4")
	entered(v, "On to the lay")
	v.Laid()

	v.TabTo(`on.matches('.cloth .piece[aria-label^="front bodice"]')`)
	v.Press(kb.ArrowRight, kb.ArrowRight)
	v.Do(chromedp.KeyEvent(kb.ArrowRight, chromedp.KeyModifiers(chromedp.ModifierShift)))
	v.Until(`document.querySelector('.piece.moving')`)
	v.Press(kb.Enter)
	v.Until(browser.Held + `=== 1`)
	v.TabTo(`on.matches('.cloth .piece[aria-label^="top sleeve"]')`)
	v.Press("h")
	v.Until(browser.Held + `=== 2`)
	entered(v, "Lay the rest anew")
	v.Laid()
	v.Until(browser.Held + `=== 2`)
	v.Do(chromedp.KeyEvent("z", chromedp.KeyModifiers(chromedp.ModifierCtrl)))
	v.Until(browser.Held + `=== 1`)

	entered(v, "On to the price")
	v.Until(browser.OnScreen + `'charge'`)
	typed(v, "Currency", "EUR")
	typed(v, "Price: Shell", "18.50")
	v.Press("\t")
	v.Until(`/€\d/.test(document.querySelector('.paper .total')?.textContent)`)
	entered(v, "On to printing")
	v.Until(`document.querySelector('.prints a')`)
	assert.Equal(t, "%PDF-", browser.Await[string](v, browser.FirstOfPrint))
}

// The lay is a list, too, in which the same keys move a piece; Escape puts it back.
func TestLayAsList(t *testing.T) {
	v := browser.Visit(t, browser.Usual, "skirt.yaml")
	v.Show("#/job/skirt.yaml/lay", `document.querySelector('.cloth .piece')`)
	v.Laid()
	entered(v, "The lay as a list")
	v.TabTo(`on.closest('.laid')`)
	place := `document.querySelector('.cloth .piece').getAttribute('transform')`
	before := browser.Value[string](v, place)
	v.Press(kb.ArrowRight)
	v.Until(`document.querySelector('.piece.moving')`)
	v.Press(kb.Escape)
	v.Until(`!document.querySelector('.piece.moving')`)
	assert.Equal(t, before, browser.Value[string](v, place))
}
