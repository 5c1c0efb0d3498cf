// Package audit tests, in a real browser, that the page can be used by everybody.
package audit

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/page/browser"
	"ellwand/testdata/sample"
)

func TestMain(m *testing.M) { browser.Main(m) }

// auditor is the release of axe-core (Deque, MPL 2.0) that looks for what keeps people
// out. It is fetched by npm once, into the cache of whoever runs the tests.
const auditor = "axe-core@4.14.1"

// audit is the text of the auditor; without npm the test is skipped.
func audit(t *testing.T) string {
	t.Helper()
	cache, err := os.UserCacheDir()
	require.NoError(t, err)
	folder := filepath.Join(cache, "ellwand-tests", auditor)
	file := filepath.Join(folder, "node_modules", "axe-core", "axe.min.js")
	if _, err := os.Stat(file); err != nil {
		npm, err := exec.LookPath("npm")
		if err != nil {
			t.Skip("npm is not installed, so axe-core cannot be fetched")
		}
		require.NoError(t, os.MkdirAll(folder, 0o755))
		if said, err := exec.Command(npm, "install", "--silent", "--prefix", folder, auditor).CombinedOutput(); err != nil {
			t.Skipf("axe-core cannot be fetched: %s", said)
		}
	}
	text, err := os.ReadFile(file)
	require.NoError(t, err)
	return string(text)
}

// found is a rule that is broken, and where.
type found struct {
	ID    string
	Help  string
	Nodes []struct {
		HTML           string
		FailureSummary string
	}
}

const run = `axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] })
	.then(({ violations }) => JSON.stringify(violations))`

// looks are light on a wide screen and dark on a narrow one; in the long run every width,
// light and dark.
func looks() []browser.Look {
	if !sample.Long() {
		return []browser.Look{{Wide: 1440, High: 900}, {Wide: 320, High: 640, Dark: true}}
	}
	var out []browser.Look
	for _, wide := range []int64{1440, 1024, 320} {
		out = append(out, browser.Look{Wide: wide, High: 900}, browser.Look{Wide: wide, High: 900, Dark: true})
	}
	return out
}

// TestNobodyIsKeptOut holds every screen against the rules of WCAG 2.2 A and AA that a
// program can look for.
func TestNobodyIsKeptOut(t *testing.T) {
	script := audit(t)
	for _, l := range looks() {
		v := browser.Visit(t, l, "blouse.yaml", "kaftan.yaml")
		v.Do(chromedp.Evaluate[chromedp.Void](script))
		for _, screen := range browser.Screens {
			screen.Put(v)
			for _, one := range audited(v) {
				for _, node := range one.Nodes {
					assert.Fail(t, one.Help, "%s, %d pixels wide, %s: %s\n%s", screen.Name, l.Wide, one.ID, node.HTML,
						node.FailureSummary)
				}
			}
			assertReflows(v, screen.Name, l)
		}
	}
}

// assertReflows says that nothing of a screen reaches beyond its width (WCAG 2.2, 1.4.10).
func assertReflows(v *browser.Visitor, screen string, l browser.Look) {
	v.Helper()
	wide := browser.Value[int64](v, `document.documentElement.scrollWidth`)
	assert.LessOrEqual(v, wide, l.Wide, "%s is wider than its window", screen)
}

// audited is what the auditor finds on the screen.
func audited(v *browser.Visitor) []found {
	v.Helper()
	text, err := chromedp.Run(v.Tab, chromedp.Evaluate[string](run, chromedp.EvalAwaitPromise))
	require.NoError(v, err)
	var all []found
	require.NoError(v, json.Unmarshal([]byte(text), &all))
	return all
}

// TestTheAuditorLooks puts a fault into a screen: a picture that says nothing, and words
// that are hardly seen.
func TestTheAuditorLooks(t *testing.T) {
	script := audit(t)
	v := browser.Visit(t, browser.Look{Wide: 1024, High: 768})
	v.Do(chromedp.Evaluate[chromedp.Void](script), chromedp.Evaluate[chromedp.Void](`
		const faint = document.createElement('p');
		faint.textContent = 'hardly seen';
		faint.style.color = '#ccc';
		document.querySelector('main').append(document.createElement('img'), faint);`))
	var rules []string
	for _, one := range audited(v) {
		rules = append(rules, one.ID)
	}
	assert.ElementsMatch(t, []string{"image-alt", "color-contrast"}, rules)
}
