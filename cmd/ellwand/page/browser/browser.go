// Package browser visits the page in a real browser, for tests: Debian's chromium, where
// it is installed. Nothing waits for a clock: what is waited for is said in the words of
// the page.
package browser

import (
	"context"
	"os"
	"os/exec"
	"sync"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

var (
	once    sync.Once
	browser context.Context
)

// flags of the browser: without a screen, and without asking anything of the network.
func flags(program string) []chromedp.ExecAllocatorOption {
	return append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(program), chromedp.NoSandbox,
		chromedp.DisableGPU, chromedp.NoFirstRun, chromedp.Flag("disable-quic", true),
		chromedp.Flag("disable-background-networking", true), chromedp.Flag("disable-component-update", true),
		chromedp.Flag("disable-sync", true), chromedp.Flag("lang", "en"))
}

// started is the browser that all tests share; without one they are skipped.
func started(t testing.TB) context.Context {
	t.Helper()
	program, err := exec.LookPath("chromium")
	if err != nil {
		t.Skip("chromium is not installed")
	}
	once.Do(func() {
		allocator, _ := chromedp.NewExecAllocator(context.Background(), flags(program)...)
		browser, _ = chromedp.NewContext(allocator)
		require.NoError(t, chromedp.Do(browser))
	})
	return browser
}

// Main runs the tests of a package, and closes the browser when they are done.
func Main(m *testing.M) {
	status := m.Run()
	if browser != nil {
		_ = chromedp.Cancel(browser)
	}
	os.Exit(status)
}
