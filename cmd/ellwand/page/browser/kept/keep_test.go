// Package kept tests, in a real browser, what the page keeps: histories, changes from
// outside, clients; and other languages.
package kept

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/page/browser"
)

func TestMain(m *testing.M) { browser.Main(m) }

// A change made outside is shown, and what was here can be had back.
func TestChangedOutside(t *testing.T) {
	v := browser.Visit(t, browser.Usual, "skirt.yaml")
	v.Show("#/job/skirt.yaml/measure", browser.OnScreen+`'measure'`)
	before := v.File("skirt.yaml")
	name := browser.Value[string](v, browser.Labelled("For whom")+`.value`)
	changed := strings.Replace(before, name, "Somebody Else", 1)
	require.NotEqual(t, before, changed)
	require.NoError(t, os.WriteFile(filepath.Join(v.Folder, "skirt.yaml"), []byte(changed), 0o644))
	v.Until(`document.querySelector('.notice')`)
	v.Until(browser.Labelled("For whom") + `.value === 'Somebody Else'`)
	v.Click("Keep what is here")
	v.Until(browser.Labelled("For whom") + `.value !== 'Somebody Else'`)
	v.Saved()
	assert.Equal(t, before, v.File("skirt.yaml"))
}

// The history leads back to the first file, byte for byte.
func TestHistory(t *testing.T) {
	v := browser.Visit(t, browser.Usual, "skirt.yaml")
	before := v.File("skirt.yaml")
	v.Show("#/job/skirt.yaml/measure", browser.OnScreen+`'measure'`)
	v.Write("For whom", "Wanda Leiris")
	v.Write("Waist girth", "79")
	v.Saved()
	assert.NotEqual(t, before, v.File("skirt.yaml"))
	v.Show("#/job/skirt.yaml/keep", `document.querySelectorAll('.history li').length > 2`)
	v.Do(browser.ClickOn(`document.querySelector('.history li:last-child button')`))
	v.Until(`document.querySelector('.history li:last-child[aria-current]')`)
	v.Saved()
	assert.Equal(t, before, v.File("skirt.yaml"))
}

// A client's measurements are kept apart, and taken into a job by her name.
func TestClients(t *testing.T) {
	v := browser.Visit(t, browser.Usual, "skirt.yaml")
	v.Show("#/clients", browser.OnScreen+`'clients'`)
	v.Write("Name", "Wanda Leiris")
	v.Write("Waist girth", "81.5")
	v.Write("Hip girth", "104")
	v.Click("Note these measurements")
	v.Until(`document.querySelector('.clients summary')?.textContent.includes('Wanda Leiris')`)
	v.Show("#/job/skirt.yaml/measure", browser.OnScreen+`'measure'`)
	v.Click("Take these measurements")
	v.Until(browser.Labelled("Waist girth") + `.value === '81.5'`)
	v.Saved()
	assert.Contains(t, v.File("skirt.yaml"), "Wanda Leiris")

	// A fitting that is noted later is told in her job.
	v.Show("#/clients", browser.OnScreen+`'clients'`)
	v.Write("Name", "Wanda Leiris")
	v.Write("Waist girth", "83")
	v.Click("Note these measurements")
	v.Until(`[...document.querySelectorAll('.clients dd')].some((one) => one.textContent.startsWith('83'))`)
	v.Show("#/job/skirt.yaml/measure", browser.OnScreen+`'measure'`)
	v.Until(`document.querySelector('.client .doubt')?.textContent.includes('waist girth 83')`)

	v.Show("#/", `/\d m of/.test(document.querySelector('[data-job="skirt.yaml"] .amount')?.textContent)`)
}

// A file that is broken is shown with its fault, and can be put right on the page.
func TestBrokenFile(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"broken.yaml": "job: Broken\nunits: cm\ngarmentz: []\n"})
	v.Show("#/job/broken.yaml/keep", browser.OnScreen+`'keep'`)
	v.Until(`document.querySelector('.faults p')?.textContent.includes('garmentz')`)
	assert.True(t, browser.Value[bool](v, `document.querySelector('textarea').value.includes('garmentz')`))
}

// A piece of cloth that is too short is answered with what would make it enough.
func TestPieceOfCloth(t *testing.T) {
	v := browser.Visit(t, browser.Usual, "skirt.yaml")
	v.Show("#/job/skirt.yaml/table", browser.OnScreen+`'table'`)
	v.Write("Length of the piece of cloth", "300")
	v.Click("Is it enough?")
	v.Until(`document.querySelector('.answer .amount')?.textContent === 'Yes'`)
	v.Until(`document.querySelector('.answer .cloth .piece')`)
	v.Write("Length of the piece of cloth", "30")
	v.Click("Is it enough?")
	v.Until(`['It cannot be', 'Not found'].includes(document.querySelector('.answer .amount')?.textContent)`)
}

// The same in inches, whose lengths are no whole millimetres; its corners are those of a
// rectangle that was typed, moved a little.
func TestPieceOfClothInInches(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"bag.yaml": `job: Bag
units: in
garments:
  - name: bag
    pieces:
      - {name: side, width: 14 1/8, height: 15 3/4, cut: 2}
cloths:
  - {name: shell, width: 58}
`})
	v.Show("#/job/bag.yaml/table", browser.OnScreen+`'table'`)
	v.Write("Length of the piece of cloth", "31 3/8")
	v.Click("Is it enough?")
	v.Until(`document.querySelector('.answer .amount')?.textContent === 'Yes'`)
	v.Write("2: Along", "30 7/16")
	v.Write("2: Across", "1 1/3")
	v.Click("Is it enough?")
	v.Until(`document.querySelector('.answer .cloth .piece')`)
	assert.Equal(t, "Yes", browser.Value[string](v, `document.querySelector('.answer .amount').textContent`))
}
