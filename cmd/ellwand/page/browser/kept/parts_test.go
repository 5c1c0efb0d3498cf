package kept

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/page/browser"
)

const bareBlouse = "job: Blouse\nunits: cm\nbody: {bust_girth: 94, waist_girth: 76}\ngarments:\n  - name: blouse\n" +
	"    bodice: {fit: easy, back: seam}\n    sleeve: {}\ncloths:\n  - {name: shell, width: 140}\n"

// Parts, a lining and another cloth are added by form; each is one step that can be gone
// back, and the job stays one that can be laid.
func TestPartsLiningAndCloth(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"blouse.yaml": bareBlouse})
	v.Show("#/job/blouse.yaml/pieces", `document.querySelector('[data-screen=pieces] .draft .cutting')`)
	choose := func(label, value string) {
		t.Helper()
		v.Until(browser.Labelled(label))
		v.Do(browser.Chosen(browser.Labelled(label), value))
	}
	drawn := func(name string) string {
		return `[...document.querySelectorAll('.pieceDraft strong')].some((one) => one.textContent.toLowerCase() === '` +
			name + `')`
	}
	add := func(part string) {
		t.Helper()
		choose("Another part", part)
		v.Do(browser.ClickOn(`document.querySelector('.parts .adding button')`))
		v.Until(drawn(part))
		v.Saved()
	}
	add("patch pocket")
	v.Do(chromedp.Evaluate[chromedp.Void](`[...document.querySelectorAll('.parts .field')].find(
		(one) => one.textContent.startsWith('depth')).querySelector('input').focus()`), chromedp.KeyEvent("14\t"))
	v.Saved()
	add("cuff")
	v.Click("Line it")
	v.Until(`document.querySelector('.parts details[data-part=linings0] input:checked')`)
	v.Click("Which cloth each piece is cut from")
	choose("Patch pocket", "lining")
	v.Saved()
	v.Click("Another cloth")
	v.Write("What it is called", "contrast")
	v.Write("Width of the cloth", "110")
	v.Do(browser.ClickOn(`[...document.querySelectorAll('.cutFrom .ticks label')].find(
		(one) => one.textContent.trim().toLowerCase() === 'cuff')`))
	v.Do(browser.ClickOn(`document.querySelector('.cutFrom .adding > button')`))
	v.Until(browser.Labelled("Cuff") + `?.value === 'contrast'`)
	v.Saved()
	text := v.File("blouse.yaml")
	for _, line := range []string{"kind: patch pocket", "depth: 14", "kind: cuff", "lining: [patch pocket]",
		"name: contrast"} {
		assert.Contains(t, text, line)
	}
	file, err := job.Parse("blouse.yaml", []byte(text))
	require.NoError(t, err)
	work, err := file.Resolve()
	require.NoError(t, err, text)
	cloths, err := app.Cloths(work, nil)
	require.NoError(t, err)
	assert.Len(t, cloths, 3)
}
