// Package build says what a program was built from.
package build

import "runtime/debug"

// Commit the program was built from, when the build recorded it; with + for
// changes that were not committed.
func Commit() string {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return "unknown commit"
	}
	revision, changed := "unknown commit", ""
	for _, s := range info.Settings {
		switch {
		case s.Key == "vcs.revision" && len(s.Value) >= 12:
			revision = s.Value[:12]
		case s.Key == "vcs.modified" && s.Value == "true":
			changed = "+"
		}
	}
	return revision + changed
}
