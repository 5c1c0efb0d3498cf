package main

import (
	"encoding/json"
	"fmt"
	"runtime"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/build"
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
				return e.printJSON(map[string]string{"version": version, "commit": build.Commit(), "go": runtime.Version()})
			}
			fmt.Fprintf(e.out, "ellwand %s (%s, %s)\n", version, build.Commit(), runtime.Version())
			return nil
		},
	}
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
