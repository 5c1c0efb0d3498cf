package files

import (
	"os"
	"path/filepath"
)

// missingFolders are the folders that are made to hold some files, the innermost last.
func missingFolders(all []file) []string {
	var out []string
	known := map[string]bool{}
	for _, f := range all {
		var missing []string
		for folder := filepath.Dir(f.final); !known[folder]; folder = filepath.Dir(folder) {
			known[folder] = true
			if _, err := os.Lstat(folder); err == nil {
				break
			}
			missing = append([]string{folder}, missing...)
		}
		out = append(out, missing...)
	}
	return out
}

// removeEmpty removes folders of which nothing is in them, the last first.
func removeEmpty(folders []string) {
	for i := len(folders) - 1; i >= 0; i-- {
		os.Remove(folders[i]) // fails where something is in it
	}
}
