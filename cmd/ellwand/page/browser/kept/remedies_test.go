package kept

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

const belted = `job: Belt # to be kept
units: cm
garments:
  - name: bag
    pieces:
      - {name: belt, width: 8, height: 80}
      - {name: side, width: 20, height: 30}
cloths:
  - {name: shell, width: 54, hand_laying: none, straighten: 0}
`

// A piece of cloth that is too short becomes enough by a click on what makes it so, which
// is one step that can be gone back; then it is taken as the cloth of the job.
func TestRemedyIsAButton(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"belt.yaml": belted})
	v.Show("#/job/belt.yaml/table", browser.OnScreen+`'table'`)
	v.Write("Length of the piece of cloth", "80")
	v.Click("Is it enough?")
	v.Click("Piece the belt")
	v.Until(`document.querySelector('.answer .amount')?.textContent === 'Yes'`)
	v.Saved()
	changed := strings.Replace(belted, "height: 80}", "height: 80, joins: 1}", 1)
	assert.Equal(t, changed, v.File("belt.yaml"))
	v.Click("Take it as the cloth of the job")
	v.Until(`document.getElementById('said').textContent === 'It is the cloth of the job now.'`)

	v.Saved()
	assert.Equal(t, strings.Replace(changed, "straighten: 0}", "straighten: 0, length: 80}", 1), v.File("belt.yaml"))
	for _, before := range []string{changed, belted} {
		v.Do(chromedp.Evaluate[chromedp.Void](`document.querySelector('main h1').focus()`),
			chromedp.KeyEvent("z", chromedp.KeyModifiers(chromedp.ModifierCtrl)))
		v.Until(`document.getElementById('said').textContent === 'Undone'`)
		v.Saved()
		assert.Equal(t, before, v.File("belt.yaml"))
		v.Do(chromedp.Evaluate[chromedp.Void](`document.getElementById('said').textContent = ''`))
	}
}
