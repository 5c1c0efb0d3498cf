package strict

import (
	"os"
	"path/filepath"
	"strings"
)

// mostLooked at of a folder, for a file that is named nearly so [source.OwnChoice].
const mostLooked = 2000

// nearFile is the path of a file beside the one that is missing whose name is nearly the
// same: most often the other ending of the two that a YAML file may have. Empty when there
// is none.
func nearFile(path string) string {
	folder, err := os.Open(filepath.Dir(path))
	if err != nil {
		return ""
	}
	defer folder.Close()
	entries, err := folder.ReadDir(mostLooked)
	if err != nil {
		return ""
	}
	typed, isTyped := filepath.Base(path), isYAML(path)
	var stems []string
	names := map[string]string{}
	for _, entry := range entries {
		if name := entry.Name(); !entry.IsDir() && isYAML(name) {
			stems, names[stem(name)] = append(stems, stem(name)), name
		}
	}
	near, isThere := names[stem(typed)]
	if !isTyped {
		near, isThere = names[strings.ToLower(typed)]
	}
	if !isThere && isTyped {
		near, isThere = names[Nearest(stem(typed), stems)]
	}
	if !isThere {
		return ""
	}
	return filepath.Join(filepath.Dir(path), near)
}

func isYAML(name string) bool {
	ending := strings.ToLower(filepath.Ext(name))
	return ending == ".yaml" || ending == ".yml"
}

func stem(name string) string { return strings.ToLower(strings.TrimSuffix(name, filepath.Ext(name))) }
