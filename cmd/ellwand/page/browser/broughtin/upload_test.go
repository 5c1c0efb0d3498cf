// Package broughtin tests, in a real browser, that photos, scans and drawings become jobs.
package broughtin

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

func TestMain(m *testing.M) { browser.Main(m) }

// Photos, scans and drawings are clicked through to a job that is laid, with its amount.
func TestFilesBecomeJobs(t *testing.T) {
	for _, c := range []struct {
		name, file string
		known      func(v *browser.Visitor)
		answers    map[string]string
		written    []string
	}{
		{"photo", "pieces/tracing/testdata/mat.jpg", func(v *browser.Visitor) {
			v.Write("Squares on the ground", "1 cm")
		}, map[string]string{"1: what it is called": "front", "1: how many are cut": "2"},
			[]string{"name: front", "accuracy:"}},
		{"scan", "pieces/tracing/testdata/scan.jpg", func(v *browser.Visitor) {
			v.Click("A scan, or a photo")
			v.Write("Distance 1: from where", "34.9,754.5 864.1,754.5")
			v.Write("Distance 1: how far", "76")
			v.Write("Distance 2: from where", "34.9,754.5 34.9,34.5")
			v.Write("Distance 2: how far", "66")
		}, map[string]string{"2: what it is called": "back"}, []string{"name: back", "accuracy:"}},
		{"dxf", "cmd/ellwand/testdata/pocket.dxf", nil, nil, []string{"pieces:"}},
		{"pdf", "pieces/tidy/testdata/layered.pdf", nil, map[string]string{"1: how many are cut": "2"}, []string{"cut: 2"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			v := browser.VisitWith(t, browser.Usual, nil)
			v.Show("#/pattern", browser.OnScreen+`'pattern'`)
			v.Choose(c.file)
			if c.known != nil {
				c.known(v)
			}
			v.Until(`document.querySelector('.numbered')?.naturalWidth > 0`)
			for label, text := range c.answers {
				v.Write(label, text)
			}
			v.Write("name of the job", "Brought "+c.name)
			v.Do(chromedp.Evaluate[chromedp.Void](`document.querySelector('main form').requestSubmit()`))
			v.Until(browser.OnScreen + `'lay'`)
			v.Laid()
			assert.Regexp(t, `\d m$`, browser.Value[string](v, `document.querySelector('.said .amount').textContent`))
			base := map[string]string{"photo": "mat", "scan": "scan", "dxf": "pocket", "pdf": "layered"}[c.name]
			for _, text := range c.written {
				assert.Contains(t, v.File(base+"-pieces.yaml"), text)
			}
		})
	}
}
