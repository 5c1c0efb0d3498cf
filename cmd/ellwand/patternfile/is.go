package patternfile

import (
	"io"
	"os"
	"regexp"
)

// heading is the key that a file of pieces begins with, wherever it stands at the top.
var heading = regexp.MustCompile(`(?m)^["']?pieces_file["']?[ \t]*:`)

// Is says that a file is one of pieces, by the key that no other has. Of one that
// cannot be read it says no.
func Is(path string) bool {
	info, err := os.Stat(path)
	if err != nil || !info.Mode().IsRegular() {
		return false
	}
	file, err := os.Open(path)
	if err != nil {
		return false
	}
	defer file.Close()
	data, err := io.ReadAll(io.LimitReader(file, int64(form.Size.Most())))
	return err == nil && heading.Match(data)
}
