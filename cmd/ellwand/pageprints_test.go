package main

import (
	"context"
	"io"
	"net/http"
	"net/http/cookiejar"
	"net/url"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/page"
)

// openedPage serves the page of a folder, and returns the address it is at and who has
// opened it.
func openedPage(t *testing.T, folder string, search app.Search) (string, *http.Client) {
	t.Helper()
	ctx, cancel := context.WithCancel(context.Background())
	addresses, ended := make(chan string, 1), make(chan error, 1)
	go func() {
		ended <- page.Serve(ctx, page.Options{
			Folder: folder, Stay: true, Search: search, Opened: func(address string) { addresses <- address },
		})
	}()
	t.Cleanup(func() { cancel(); assert.NoError(t, <-ended) })
	opened, err := url.Parse(<-addresses)
	require.NoError(t, err)
	jar, err := cookiejar.New(nil)
	require.NoError(t, err)
	client := &http.Client{Jar: jar}
	answer, err := client.Get(opened.String())
	require.NoError(t, err)
	require.NoError(t, answer.Body.Close())
	require.Equal(t, http.StatusOK, answer.StatusCode)
	return "http://" + opened.Host, client
}

// marketSkirt is a small job with everything that is printed.
const marketSkirt = `job: Market skirt
client: Adanna Obidike
units: cm
size: 12
table: women
currency: EUR
garments:
  - name: skirt
    skirt: {shape: a-line, length: 62, back: fold}
    parts: [{kind: waistband, depth: 4}]
    linings: [{of: [front skirt, back skirt], cloth: lining}]
    making: {hours: 3}
cloths:
  - {name: shell, width: 140, price: 18.50}
  - {name: lining, width: 140, price: 6.90}
quote: {rate: 28, date: 2026-03-02}
`

// What the page prints is what the commands write, byte for byte.
func TestPagePrintsWhatTheCommandsWrite(t *testing.T) {
	folder := t.TempDir()
	job := filepath.Join(folder, "market.yaml")
	require.NoError(t, os.WriteFile(job, []byte(marketSkirt), 0o644))
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	address, client := openedPage(t, folder, app.Search{Passes: 2, Seed: 1})
	for kind, args := range map[string][]string{
		"draft":                               {"draft", job, "--sheet"},
		"pieces":                              {"print", job, "--passes", "2", "-o"},
		"quote":                               {"quote", job, "--passes", "2", "-o"},
		"plan":                                {"marker", job, "--passes", "2", "-o"},
		"plan?cloth=lining":                   {"marker", job, "--passes", "2", "--cloth", "lining", "-o"},
		"marker":                              {"marker", job, "--passes", "2", "--full", "-o"},
		"marker?paper=a0":                     {"marker", job, "--passes", "2", "--full", "--paper", "a0", "-o"},
		"projector":                           {"project", job, "-o"},
		"projector?of=lining&size=10&size=12": {"project", job, "--cloth", "lining", "--sizes", "10,12", "-o"},
		"pieces?piece=front+skirt&piece=waistband&of=shell&size=10&size=12&seams=12": {"print", job, "--passes", "2",
			"--piece", "front skirt,waistband", "--cloth", "shell", "--sizes", "10,12", "--seams", "12", "-o"},
	} {
		file := filepath.Join(t.TempDir(), "written.pdf")
		require.Zero(t, run(context.Background(), append(args, file), io.Discard, io.Discard), kind)
		written, err := os.ReadFile(file)
		require.NoError(t, err)
		answer, err := client.Get(address + "/print/market.yaml/" + kind)
		require.NoError(t, err)
		printed, err := io.ReadAll(answer.Body)
		require.NoError(t, err)
		require.NoError(t, answer.Body.Close())
		assert.Equal(t, "application/pdf", answer.Header.Get("Content-Type"), kind)
		assert.True(t, string(written) == string(printed), "%s: the page prints %d bytes, the command writes %d", kind,
			len(printed), len(written))
	}
}
