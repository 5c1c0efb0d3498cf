package main

import (
	"encoding/json"
	"fmt"
	"runtime"
	"runtime/debug"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/failure"
)

// version of the program; raised with each release.
const version = "0.1.0"

func newVersion(e *env) *cobra.Command {
	return &cobra.Command{
		Use:     "version",
		Short:   "Print the version",
		Example: "  ellwand version",
		Args:    noArguments,
		RunE: func(*cobra.Command, []string) error {
			if e.json {
				return e.printJSON(map[string]string{"version": version, "commit": commit(), "go": runtime.Version()})
			}
			fmt.Fprintf(e.out, "ellwand %s (%s, %s)\n", version, commit(), runtime.Version())
			return nil
		},
	}
}

// commit the program was built from, when the build recorded it; with + for
// changes that were not committed.
func commit() string {
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

// printJSON prints a value on stdout, indented.
func (e *env) printJSON(value any) error {
	encoder := json.NewEncoder(e.out)
	encoder.SetIndent("", "  ")
	encoder.SetEscapeHTML(false)
	if err := encoder.Encode(value); err != nil {
		return failure.Of(err)
	}
	return nil
}
