package browser

import (
	"path/filepath"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// Choose a file of the repository in the field for files, as from a folder.
func (v *Visitor) Choose(path string) {
	v.Helper()
	file, err := filepath.Abs(filepath.Join("../../../../..", path))
	require.NoError(v, err)
	v.Do(chromedp.SetUploadFiles(`main input[type=file]`, []string{file}))
}
