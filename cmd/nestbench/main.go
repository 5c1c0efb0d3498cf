// Command nestbench lays instances of the open irregular strip packing
// collections and keeps a record of the densities that were reached. It is a
// tool for whoever works on the search; dressmakers use ellwand.
package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"os/signal"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/failure"
)

// Exit statuses.
const (
	statusDone   = 0
	statusFailed = 1 // a fault of the program
	statusBad    = 2 // bad input or usage
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	// The first Ctrl-C stops the search early; a second one ends the program.
	context.AfterFunc(ctx, stop)
	status := run(ctx, os.Args[1:], os.Stdout, os.Stderr)
	stop()
	os.Exit(status)
}

// run carries out one command line and returns its exit status.
func run(ctx context.Context, args []string, stdout, stderr io.Writer) int {
	root := newRoot()
	root.SetArgs(args)
	root.SetOut(stdout)
	root.SetErr(stderr)
	err := root.ExecuteContext(ctx)
	if err == nil {
		return statusDone
	}
	text := strings.TrimRight(err.Error(), "\n")
	fmt.Fprintln(stderr, "nestbench: "+strings.ReplaceAll(text, "\n", "\nnestbench: "))
	if failure.Is(err) {
		return statusFailed
	}
	return statusBad
}

func newRoot() *cobra.Command {
	root := &cobra.Command{
		Use:   "nestbench",
		Short: "Lay instances of the open nesting data and record densities",
		Long: `Nestbench lays instances of the open irregular strip packing collections with
the search of Ellwand, prints how dense the layouts are, and keeps a record.`,
		SilenceUsage:  true,
		SilenceErrors: true,
		Args:          knownCommand,
		RunE:          func(cmd *cobra.Command, _ []string) error { return cmd.Help() },
	}
	root.SetFlagErrorFunc(func(cmd *cobra.Command, err error) error {
		return fmt.Errorf("%w; see: %s --help", err, cmd.CommandPath())
	})
	root.AddCommand(newLay(), newJigsaw(), newKnown(), newCurve())
	return root
}

// knownCommand refuses what is no command.
func knownCommand(_ *cobra.Command, args []string) error {
	if len(args) == 0 {
		return nil
	}
	return fmt.Errorf("there is no command %q; see: nestbench --help", args[0])
}
