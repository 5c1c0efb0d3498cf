package browser

import (
	"cmp"
	"context"
	"errors"
	"os"
	"path/filepath"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	front "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/page"
)

// Look of a visitor's screen: its size in pixels, and what she prefers.
type Look struct {
	Wide, High int64
	Dark       bool
	Touch      bool
	Language   string // as a browser asks for it; English where it is empty
}

// Visit opens the page of a folder with these jobs, each a file of testdata at the top.
// Without a browser the test is skipped.
func Visit(t testing.TB, l Look, jobs ...string) *Visitor {
	t.Helper()
	texts := map[string]string{}
	for _, name := range jobs {
		text, err := os.ReadFile(filepath.Join("../../../../../testdata", name))
		require.NoError(t, err)
		texts[name] = string(text)
	}
	return VisitWith(t, l, texts)
}

// Job of testdata of the page, by the name of its file: its text.
func Job(t testing.TB, name string) string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("../../testdata", name))
	require.NoError(t, err)
	return string(text)
}

// VisitWith opens the page of a folder with jobs of these texts, by their names.
func VisitWith(t testing.TB, l Look, texts map[string]string) *Visitor {
	t.Helper()
	shared := started(t)
	folder := t.TempDir()
	for name, text := range texts {
		require.NoError(t, os.WriteFile(filepath.Join(folder, name), []byte(text), 0o644))
	}
	tab, _ := chromedp.NewContext(shared, chromedp.WithNewBrowserContext())
	require.NoError(t, chromedp.Do(tab))
	t.Cleanup(func() { _ = chromedp.Cancel(tab) })
	v := &Visitor{t, tab, folder}
	v.hear()
	require.NoError(t, l.put(tab))
	v.Do(chromedp.Navigate(serve(t, folder)))
	v.Until(`document.querySelector('main h1')`)
	return v
}

// put the browser into the look.
func (l Look) put(ctx context.Context) error {
	scheme := "light"
	if l.Dark {
		scheme = "dark"
	}
	_, sized := chromedp.Call(ctx, emulation.SetDeviceMetricsOverride, emulation.SetDeviceMetricsOverrideParams{
		Width: l.Wide, Height: l.High, DeviceScaleFactor: 1,
	})
	_, coloured := chromedp.Call(ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
		Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: scheme}},
	})
	_, touched := chromedp.Call(ctx, emulation.SetTouchEmulationEnabled, emulation.SetTouchEmulationEnabledParams{
		Enabled: l.Touch, MaxTouchPoints: 1,
	})
	_, spoken := chromedp.Call(ctx, emulation.SetUserAgentOverride, emulation.SetUserAgentOverrideParams{
		UserAgent: "test of the page", AcceptLanguage: cmp.Or(l.Language, "en"),
	})
	return errors.Join(sized, coloured, touched, spoken)
}

// serve the page of a folder until the test ends; the address is the one that is opened.
func serve(t testing.TB, folder string) string {
	t.Helper()
	ctx, cancel := context.WithCancel(context.Background())
	opened := make(chan string, 1)
	ended := make(chan error, 1)
	go func() {
		ended <- page.Serve(ctx, page.Options{
			Folder: folder, Stay: true, Search: app.Search{Passes: 3, Seed: 1},
			Opened: func(address string) { opened <- address },
		})
	}()
	t.Cleanup(func() { cancel(); require.NoError(t, <-ended) })
	select {
	case address := <-opened:
		return address
	case err := <-ended:
		ended <- nil
		require.NoError(t, err)
		return ""
	}
}

// Another tab in the window of the visitor's browser, in which an address is opened; hers is
// hidden by it.
func (v *Visitor) Another(address string) *Visitor {
	v.Helper()
	tab, _ := chromedp.NewContext(v.Tab, chromedp.WithNewWindow(false))
	require.NoError(v, chromedp.Do(tab))
	v.Cleanup(func() { _ = chromedp.Cancel(tab) })
	other := &Visitor{v.TB, tab, v.Folder}
	other.hear()
	other.Do(chromedp.Navigate(address))
	other.Until(`document.querySelector('main h1')`)
	return other
}

// See this tab, in front of the others of its window.
func (v *Visitor) See() {
	v.Helper()
	_, err := chromedp.Call(v.Tab, front.BringToFront, cdp.Empty{})
	require.NoError(v, err)
	v.Until(`!document.hidden`)
}
