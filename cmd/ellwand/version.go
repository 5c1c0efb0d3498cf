package main

import (
	"fmt"
	"runtime"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/build"
	"ellwand/cmd/ellwand/report"
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
				return e.printJSON(report.Program{Version: version, Commit: build.Commit(), Go: runtime.Version()})
			}
			fmt.Fprintf(e.out, "ellwand %s (%s, %s)\n", version, build.Commit(), runtime.Version())
			return nil
		},
	}
}
