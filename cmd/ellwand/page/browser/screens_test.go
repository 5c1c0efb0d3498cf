package browser

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

var screensInto = flag.String("screens", "", "folder to render every screen into, to be looked at")

// screens of the page, each with what says that it is there whole.
var screens = []struct{ name, hash, there string }{
	{"begin", "#/", `document.querySelector('[data-screen=begin] .cards img')`},
	{"pattern", "#/pattern", `document.querySelector('[data-screen=pattern] .rows li')`},
	{"cloth", "#/cloth", `document.querySelector('[data-screen=cloth] .gallery img')`},
	{"clients", "#/clients", `document.querySelector('[data-screen=clients] .visit .field')`},
	{"measure", "#/job/blouse.yaml/measure", `document.querySelector('[data-screen=measure] .where img')`},
	{"pieces", "#/job/blouse.yaml/pieces", `document.querySelector('[data-screen=pieces] .draft .cutting')`},
	{"lay", "#/job/blouse.yaml/lay", `document.querySelector('[data-screen=lay] .cloth .piece') && document.querySelector('.said .amount').textContent`},
	{"table", "#/job/blouse.yaml/table", `document.querySelector('[data-screen=table] .remnant .stuff')`},
	{"charge", "#/job/blouse.yaml/charge", `document.querySelector('[data-screen=charge] .paper') && !document.querySelector('main [aria-busy]')`},
	{"print", "#/job/blouse.yaml/print", `document.querySelector('[data-screen=print] .prints a')`},
	{"keep", "#/job/blouse.yaml/keep", `document.querySelector('[data-screen=keep] textarea')`},
}

// TestScreens renders every screen at three widths, light and dark, when it is asked to.
func TestScreens(t *testing.T) {
	if *screensInto == "" {
		t.Skip("renders screens to be looked at: go test -args -screens FOLDER")
	}
	require.NoError(t, os.MkdirAll(*screensInto, 0o755))
	for _, wide := range []int64{1440, 1024, 320} {
		for _, dark := range []bool{false, true} {
			v := visit(t, look{wide: wide, high: 900, dark: dark}, "blouse.yaml", "princess.yaml", "skirt.yaml")
			for _, screen := range screens {
				v.show(screen.hash, screen.there)
				picture, err := chromedp.Run(v.tab, chromedp.FullScreenshot(100))
				require.NoError(t, err)
				name := fmt.Sprintf("%s-%d%s.png", screen.name, wide, map[bool]string{true: "-dark"}[dark])
				require.NoError(t, os.WriteFile(filepath.Join(*screensInto, name), picture, 0o644))
			}
		}
	}
}
