package main

import (
	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
)

func newSchema(e *env) *cobra.Command {
	return &cobra.Command{
		Use:   "schema",
		Short: "Print the JSON Schema of the job file",
		Long: `Schema prints the JSON Schema of the job file. An editor that knows it
completes the keys and marks mistakes: save it beside the job and put

  # yaml-language-server: $schema=job.schema.json

on the job's first line.`,
		Example: "  ellwand schema > job.schema.json",
		Args:    noArguments,
		RunE: func(*cobra.Command, []string) error {
			if err := job.WriteSchema(e.out); err != nil {
				return failure.Of(err)
			}
			return nil
		},
	}
}
