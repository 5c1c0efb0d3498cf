package page

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/page/folder"
)

// BenchmarkKeystroke is a letter typed into a measurement until the page has the new
// drawing of all pieces: the value set in the text, the journal, the file, the draft.
func BenchmarkKeystroke(b *testing.B) {
	for _, job := range []string{"blouse", "princess", "trousers"} {
		b.Run("job="+job, func(b *testing.B) {
			text, err := os.ReadFile("../../../testdata/" + job + ".yaml")
			require.NoError(b, err)
			path := b.TempDir()
			require.NoError(b, os.WriteFile(filepath.Join(path, "a.yaml"), text, 0o600))
			f, err := folder.Open(path)
			require.NoError(b, err)
			s := newServer(b.Context(), f, Options{Search: app.Search{Passes: 20, Seed: 1}}, "127.0.0.1:1")
			defer s.close()
			one, err := s.now().jobs.named("a.yaml")
			require.NoError(b, err)
			for i := 0; b.Loop(); i++ {
				body := fmt.Sprintf(`{"base":%d,"do":[{"set":{"path":["body","waist_girth"],"value":"7%d","typing":true}}]}`,
					one.State().Revision, i%10)
				answer := httptest.NewRecorder()
				act(answer, httptest.NewRequest(http.MethodPost, "/", strings.NewReader(body)), one)
				require.Equal(b, http.StatusOK, answer.Code)
				b.SetBytes(int64(answer.Body.Len()))
			}
		})
	}
}
