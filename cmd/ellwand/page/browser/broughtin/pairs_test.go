package broughtin

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

// chooseWorded takes a drawing of two pieces from a folder: of one two are cut, it has a
// right and a left; of the other it is written that it lies on the fold.
const chooseWorded = `(() => {
  const drawing = '<svg xmlns="http://www.w3.org/2000/svg" width="600mm" height="500mm" viewBox="0 0 600 500">' +
    '<g id="back"><path d="M20 20 H200 L170 400 H20 Z"/><text x="60" y="200" font-size="9">cut 2</text></g>' +
    '<g id="yoke"><path d="M300 20 H380 L340 220 H300 Z"/>' +
    '<text x="302" y="100" font-size="7">cut 1 on fold</text></g></svg>';
  const taken = new DataTransfer();
  taken.items.add(new File([drawing], 'skirt.svg'));
  const input = document.querySelector('input[type=file]');
  input.files = taken.files;
  input.dispatchEvent(new Event('change'));
  return true;
})()`

// Cut two of a piece with a right and a left is a pair, and what lies on the fold lies there,
// unless somebody says otherwise; a width that is asked for is asked for at its field.
func TestPairsAndFoldsOfADrawing(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, nil)
	v.Show("#/pattern", browser.OnScreen+`'pattern'`)
	assert.True(t, browser.Value[bool](v, chooseWorded))
	v.Until(`document.querySelector('.numbered')?.naturalWidth > 0`)
	value := func(label string) string { return browser.Value[string](v, browser.Labelled(label)+`.value`) }
	assert.Equal(t, "2", value("1: how many are cut"))
	assert.Equal(t, "yes", value("1: a pair"))
	assert.Equal(t, "left", value("2: which side"))
	v.Pick("1: a pair", "no")
	v.Until(`document.querySelector('.rows .doubt')?.textContent.includes('no left one')`)
	v.Pick("1: a pair", "yes")
	v.Until(`!document.querySelector('.rows .doubt:not([hidden])')`)
	v.Pick("seam allowance of all", "added")
	v.Click("Lay it")
	v.Until(`document.querySelector('.field .fault')?.textContent.includes('how wide it is')`)
	v.Write("how wide", "1.5")
	v.Click("Lay it")
	v.Until(browser.OnScreen + `'lay'`)
	v.Laid()
	text := v.File("skirt-pieces.yaml")
	assert.Regexp(t, `name: back\n +cut: 2\n +pair: yes`, text)
	assert.Regexp(t, `name: yoke\n +cut: 1\n +fold: `, text)
	assert.Contains(t, text, "allowance: 15")
	v.Show("#/job/skirt.yaml/pieces", browser.OnScreen+`'pieces'`)
	v.Until(`document.querySelector('.drafts')?.textContent.includes('cut 2, in pairs')`)
}

// What was answered when a file was brought in can be answered anew, and undone.
func TestAnswersAreChangedAfterwards(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, nil)
	v.Show("#/pattern", browser.OnScreen+`'pattern'`)
	assert.True(t, browser.Value[bool](v, chooseWorded))
	v.Until(`document.querySelector('.numbered')?.naturalWidth > 0`)
	v.Click("Lay it")
	v.Until(browser.OnScreen + `'lay'`)
	v.Laid()
	v.Until(`document.querySelector('main .doubt')?.textContent.includes('back, yoke are not known')`)
	v.Show("#/job/skirt.yaml/pieces", browser.OnScreen+`'pieces'`)
	v.Until(`document.querySelectorAll('.pieceDraft .doubt').length === 2`)
	v.Click("Change")
	told := func(text string) {
		v.Until(`document.querySelector('.pieceDraft').textContent.includes('` + text + `')`)
	}
	v.Pick("a pair", "no")
	told("no left one")
	v.Pick("which side", "left")
	told("cut 2 on the fold")
	v.Saved()
	assert.Contains(t, v.File("skirt.yaml"), "fold: left")
	v.Write("how many are cut", "1")
	told("cut 1 on the fold")
	v.Pick("seam allowance", "added")
	v.Write("how wide", "1.5")
	v.Until(`document.querySelectorAll('.pieceDraft .doubt').length === 1`)
	v.Saved()
	assert.Regexp(t, `allowance: "?1.5 cm`, v.File("skirt.yaml"))
	v.Do(chromedp.Evaluate[chromedp.Void](`document.activeElement.blur()`),
		chromedp.KeyEvent("z", chromedp.KeyModifiers(chromedp.ModifierCtrl)))
	v.Until(`document.querySelectorAll('.pieceDraft .doubt').length === 2`)
	v.Show("#/job/skirt.yaml/measure", browser.OnScreen+`'measure'`)
	v.Until(`document.querySelector('main').textContent.includes('no body to measure')`)
	v.Show("#/pattern", browser.OnScreen+`'pattern'`)
	v.Until(browser.Labelled("2: which side") + `?.value === 'left'`)
	v.Click("Empty the form")
	v.Until(`!document.querySelector('.numbered')`)
}
