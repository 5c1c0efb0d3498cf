package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/layoutfile"
)

// schemas by what they describe.
var schemas = map[string]func(io.Writer) error{"job": job.WriteSchema, "layout": layoutfile.WriteSchema}

func newSchema(e *env) *cobra.Command {
	return &cobra.Command{
		Use:   "schema [job|layout]",
		Short: "Print the JSON Schema of the job file, or of the layout file",
		Long: `Schema prints the JSON Schema of the job file. An editor that knows it
completes the keys and marks mistakes: save it beside the job and put

  # yaml-language-server: $schema=job.schema.json

on the job's first line.

Schema layout prints that of the layouts that --layout writes, which hold
everything that is needed to check a lay.`,
		Example: `  ellwand schema > job.schema.json
  ellwand schema layout > layout.schema.json`,
		ValidArgs: []string{"job", "layout"},
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) > 1 || len(args) == 1 && schemas[args[0]] == nil {
				return fmt.Errorf("there is no schema of %q; write job or layout", strings.Join(args, " "))
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			what := "job"
			if len(args) > 0 {
				what = args[0]
			}
			if err := schemas[what](e.out); err != nil {
				return failure.Of(err)
			}
			return nil
		},
	}
}
