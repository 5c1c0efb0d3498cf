package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/patternfile"
	"ellwand/cmd/ellwand/report"
	"ellwand/fabric/layoutfile"
)

// schemaNames are those of what there is a schema of.
func schemaNames() []string {
	return append([]string{"job", "pieces-file", "layout"}, report.Names()...)
}

func newSchema(e *env) *cobra.Command {
	return &cobra.Command{
		Use:   "schema [NAME]",
		Short: "Print the JSON Schema of a job, a layout or another document",
		Long: `Schema prints the JSON Schema of the job file. An editor that knows it
completes the keys and marks mistakes: save it beside the job and put

  # yaml-language-server: $schema=job.schema.json

on the job's first line.

Schema pieces-file prints that of files of pieces. Schema layout prints that of
the layouts that --layout writes, which hold everything that is needed to check
a lay. The other names are those of the documents that --json prints, each
headed by its format_version:

  ` + strings.Join(report.Names(), ", ") + `

"error" is printed where there is no other, sizes by draft --sizes, table by
estimate --table.`,
		Example: `  ellwand schema > job.schema.json
  ellwand schema layout > layout.schema.json
  ellwand schema estimate`,
		ValidArgs: schemaNames(),
		Args:      cobra.ArbitraryArgs,
		RunE: func(_ *cobra.Command, args []string) error {
			switch {
			case len(args) == 0:
				args = []string{"job"}
			case len(args) > 1:
				return noSchema(strings.Join(args, " "))
			}
			return writeSchema(e.out, args[0])
		},
	}
}

func writeSchema(w io.Writer, name string) error {
	switch name {
	case "job":
		return failure.Of(job.WriteSchema(w))
	case "pieces-file":
		return failure.Of(patternfile.WriteSchema(w))
	case "layout":
		return failure.Of(layoutfile.WriteSchema(w))
	}
	known, err := report.WriteSchema(w, name)
	if !known {
		return noSchema(name)
	}
	return failure.Of(err)
}

func noSchema(name string) error {
	return fmt.Errorf("there is no schema of %q; there is one of: %s", name, strings.Join(schemaNames(), ", "))
}
