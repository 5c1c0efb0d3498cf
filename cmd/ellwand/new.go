package main

import (
	_ "embed"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/report"
)

//go:embed starter.yaml
var starter string

func newNew(e *env) *cobra.Command {
	var force bool
	cmd := &cobra.Command{
		Use:   "new JOB",
		Short: "Write a starter job to change into your own",
		Long: `New writes a job file with a comment beside every line. It can be laid as it
is; replace the measurements and the cloths by your own.`,
		Example: "  ellwand new blouse.yaml",
		Args:    one("a name for the job file"),
		RunE: func(_ *cobra.Command, args []string) error {
			return e.newJob(args[0], force)
		},
	}
	cmd.Flags().BoolVar(&force, "force", false, "overwrite a file that exists")
	return cmd
}

func (e *env) newJob(path string, force bool) error {
	files := &files.Set{Force: force}
	err := files.Add(path, func(w io.Writer) error {
		_, err := io.WriteString(w, starter)
		return err
	})
	if err != nil {
		return err
	}
	if err := files.Commit(); err != nil {
		return err
	}
	if e.json {
		return e.printJSON(report.Started{File: path})
	}
	fmt.Fprintf(e.out, "Wrote %s. Change it to your own measurements and cloths, then:\n  ellwand estimate %s\n", path,
		path)
	return nil
}
