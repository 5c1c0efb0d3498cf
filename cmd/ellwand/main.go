// Command ellwand drafts pattern pieces from body measurements, lays them on
// cloth and says how much cloth to buy. README.md shows how to use it.
package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/screen"
	"ellwand/pieces/text"
)

// Exit statuses.
const (
	statusDone   = 0
	statusFailed = 1 // a fault of the program: nothing the user wrote is wrong
	statusBad    = 2 // bad input or usage
	statusNo     = 3 // the answer is no
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
	root := newRoot(newEnv(stdout, stderr))
	root.SetArgs(args)
	root.SetOut(stdout)
	root.SetErr(stderr)
	err := root.ExecuteContext(ctx)
	if err == nil {
		return statusDone
	}
	fmt.Fprintln(screen.NewWriter(text.Writer(stderr), screen.Width(stderr)), sentence(err))
	var answer *no
	switch {
	case failure.Is(err):
		return statusFailed
	case errors.As(err, &answer):
		return statusNo
	}
	return statusBad
}

// no marks an answer that is no, such as a remnant that does not fit.
type no struct{ answer string }

func (n *no) Error() string { return n.answer }
