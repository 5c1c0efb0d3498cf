package audit

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/page/browser"
)

var (
	screensInto = flag.String("screens", "", "folder to render every screen into, to be looked at")
	screensOnly = flag.String("only", "", "the one screen to render")
	screensIn   = flag.String("language", "", "language of the screens, English if not given")
)

// TestScreens renders every screen at three widths, light and dark, when it is asked to.
func TestScreens(t *testing.T) {
	if *screensInto == "" {
		t.Skip("renders screens to be looked at: go test -args -screens FOLDER")
	}
	require.NoError(t, os.MkdirAll(*screensInto, 0o755))
	for _, wide := range []int64{1440, 1024, 320} {
		for _, dark := range []bool{false, true} {
			look := browser.Look{Wide: wide, High: 900, Dark: dark, Language: *screensIn}
			v := browser.Visit(t, look, "blouse.yaml", "kaftan.yaml", "princess.yaml", "skirt.yaml")
			for _, screen := range browser.Screens {
				if *screensOnly != "" && screen.Name != *screensOnly {
					continue
				}
				screen.Put(v)
				picture, err := chromedp.Run(v.Tab, chromedp.FullScreenshot(100))
				require.NoError(t, err)
				name := fmt.Sprintf("%s-%d%s.png", screen.Name, wide, map[bool]string{true: "-dark"}[dark])
				require.NoError(t, os.WriteFile(filepath.Join(*screensInto, name), picture, 0o644))
			}
		}
	}
}
