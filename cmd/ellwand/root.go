package main

import (
	"fmt"
	"os"
	"runtime"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/build"
	"ellwand/cmd/ellwand/manual"
)

func newRoot(e *env) *cobra.Command {
	cobra.MousetrapHelpText = "" // a double click opens the page
	root := &cobra.Command{
		Use:   "ellwand",
		Short: "From measurements to pattern pieces, cloth to buy and a marker plan",
		Long: `Ellwand reads a job file with body measurements, garments and cloths. It
drafts the pieces, lays them on each cloth as densely as it can, and says how
much to buy; the plan it prints can be chalked with a tape measure.

Begin with a starter job, change it, and ask for the cloth:

  ellwand new blouse.yaml
  ellwand estimate blouse.yaml

What the job file may hold is told by pages of their own, such as ellwand help
cloth:

` + manual.Contents() + `
Exit status: 0 done; 1 failed, and not by anything you wrote; 2 the job, the
command or a file is not right, and the message says what to change; 3 the
answer is no.`,
		Version:       version,
		SilenceUsage:  true,
		SilenceErrors: true,
		Args:          knownCommand,
		RunE: func(cmd *cobra.Command, args []string) error {
			if isDoubleClicked(os.Args[1:], e.stdout) {
				return e.page(cmd.Context(), pageOptions{folder: homeFolder(),
					searchFlags: searchFlags{Search: app.Search{Seed: 1}}})
			}
			return cmd.Help()
		},
	}
	root.PersistentFlags().BoolVar(&e.json, "json", false, "print JSON for programs instead of tables")
	root.PersistentFlags().BoolVarP(&e.quiet, "quiet", "q", false, "no progress and no notes on stderr")
	root.SetFlagErrorFunc(func(cmd *cobra.Command, err error) error {
		return fmt.Errorf("%w; see: %s --help", err, cmd.CommandPath())
	})
	root.SetHelpCommand(newHelp(e))
	root.SetUsageTemplate(strings.ReplaceAll(root.UsageTemplate(), ".FlagUsages",
		fmt.Sprintf(".FlagUsagesWrapped %d", e.width)))
	usual := root.HelpFunc()
	root.SetHelpFunc(func(cmd *cobra.Command, args []string) {
		cmd.SetOut(e.screen)
		usual(cmd, args)
	})
	root.SetVersionTemplate("{{.Name}} {{.Version}} (" + build.Commit() + ", " + runtime.Version() + ")\n")
	root.AddCommand(newNew(e), newDraft(e), newEstimate(e), newMarker(e), newRemnant(e), newPrint(e), newCompare(e),
		newConvert(e), newQuote(e), newShow(e), newExport(e), newProject(e), newImport(e), newSchema(e), newPage(e),
		newVersion(e))
	completions(root)
	return root
}

// knownCommand refuses what is no command.
func knownCommand(root *cobra.Command, args []string) error {
	if len(args) == 0 {
		return nil
	}
	root.SuggestionsMinimumDistance = 2
	if near := root.SuggestionsFor(args[0]); len(near) > 0 {
		return fmt.Errorf("there is no command %q; did you mean %s?", args[0], strings.Join(near, " or "))
	}
	return fmt.Errorf("there is no command %q; see: ellwand --help", args[0])
}
