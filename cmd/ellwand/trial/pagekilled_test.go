//go:build unix

package trial

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"math/rand/v2"
	"net/http"
	"net/http/cookiejar"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/testdata/program"
	"ellwand/testdata/sample"
)

const typedJob = "# as it was taken\njob: killed   # while typing\nunits: cm\ngarments:\n  - name: bag\n    pieces:\n" +
	"      - {name: side, width: 38, height: 44, cut: 2}\n      - {name: strap, width: 9, height: 70}\ncloths:\n" +
	"  - name: shell\n    width: 90\n"

// served is the program with its page open, and a browser that types into it.
type served struct {
	t       *testing.T
	run     *exec.Cmd
	browser *http.Client
	address string
	token   string
}

var tokenInPage = regexp.MustCompile(`name="ellwand-token" content="([^"]+)"`)

func serve(t *testing.T, folder string) *served {
	t.Helper()
	run := exec.Command(program.Path, "page", folder, "--no-browser", "--stay")
	run.Env = append(os.Environ(), "XDG_CACHE_HOME="+filepath.Join(folder, "..", "cache"))
	out, err := run.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, run.Start())
	address, err := bufio.NewReader(out).ReadString('\n')
	require.NoError(t, err)
	jar, err := cookiejar.New(nil)
	require.NoError(t, err)
	s := &served{t: t, run: run, browser: &http.Client{Jar: jar}}
	answer, err := s.browser.Get(strings.TrimSpace(address))
	require.NoError(t, err)
	defer answer.Body.Close()
	page, err := io.ReadAll(answer.Body)
	require.NoError(t, err)
	found := tokenInPage.FindSubmatch(page)
	require.NotNil(t, found)
	s.token = string(found[1])
	s.address, _, _ = strings.Cut(strings.TrimSpace(address), "/?")
	return s
}

// shown is what the page is told of the job.
type shown struct {
	Revision int
	Text     string
	Fields   []struct {
		Path  []any
		Value string
	}
	Can struct{ Undo bool }
}

// value of the width of the strap, be it half typed.
func (s shown) value() string {
	for _, field := range s.Fields {
		if fmt.Sprint(field.Path) == "[garments 0 pieces 1 width]" {
			return field.Value
		}
	}
	return ""
}

// ask the program; false where it is no more.
func (s *served) ask(method, path, body string) (shown, bool) {
	request, err := http.NewRequest(method, s.address+path, strings.NewReader(body))
	require.NoError(s.t, err)
	request.Header.Set("X-Ellwand-Token", s.token)
	answer, err := s.browser.Do(request)
	if err != nil {
		return shown{}, false
	}
	defer answer.Body.Close()
	var out shown
	if json.NewDecoder(answer.Body).Decode(&out) != nil {
		return shown{}, false
	}
	require.Equal(s.t, http.StatusOK, answer.StatusCode)
	return out, true
}

// A program that is killed while somebody types loses nothing that it had answered, and
// at most has what it was asked when it was killed; all can be gone back to the first
// file. The long run kills 40 times.
func TestKilledPageLosesNothing(t *testing.T) {
	home := t.TempDir()
	folder := filepath.Join(home, "sewing")
	require.NoError(t, os.Mkdir(folder, 0o700))
	path := filepath.Join(folder, "bag.yaml")
	require.NoError(t, os.WriteFile(path, []byte(typedJob), 0o600))
	rng := rand.New(rand.NewPCG(26, 40))
	last, pending := "9", "9" // what was answered, and what was asked when it was killed
	const act = `{"base":%d,"do":[{"set":{"path":["garments",0,"pieces",1,"width"],"value":%q,"typing":%t}}]}`
	for i := range sample.Of(5, 40) {
		s := serve(t, folder)
		state, ok := s.ask("GET", "/api/jobs/bag.yaml", "")
		require.True(t, ok)
		require.Contains(t, []string{last, pending}, state.value(), "kill %d", i)
		last = state.value()
		killAt := rng.IntN(30)
		for n := 0; ; n++ {
			value := typedAt(i, n)
			if n == killAt {
				moment := time.Duration(rng.IntN(30_000)) * time.Microsecond
				defer time.AfterFunc(moment, func() { _ = s.run.Process.Kill() }).Stop()
			}
			next, alive := s.ask("POST", "/api/jobs/bag.yaml/act", fmt.Sprintf(act, state.Revision, value, n%3 > 0))
			if !alive {
				pending = value
				break
			}
			state, last = next, value
		}
		_ = s.run.Wait()
		text, err := os.ReadFile(path)
		require.NoError(t, err)
		assert.Regexp(t, `^# as it was taken\njob: killed   # while typing\n(?s:.*)\n    width: 90\n$`, string(text))
	}
	s := serve(t, folder)
	defer func() { _ = s.run.Process.Kill(); _ = s.run.Wait() }()
	state, _ := s.ask("GET", "/api/jobs/bag.yaml", "")
	for state.Can.Undo {
		var ok bool
		state, ok = s.ask("POST", "/api/jobs/bag.yaml/act", fmt.Sprintf(`{"base":%d,"do":[{"undo":{}}]}`, state.Revision))
		require.True(t, ok)
	}
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	assert.Equal(t, typedJob, string(text))
}

// typedAt is what is typed next: a number letter by letter, which does not stand while it
// ends in a point.
func typedAt(round, n int) string {
	number := fmt.Sprintf("%d.%d", 10+(7*round+n)%60, 1+n%9)
	return number[:1+n%len(number)]
}
