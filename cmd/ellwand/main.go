// Command ellwand drafts pattern pieces from body measurements, lays them on
// cloth and says how much cloth to buy. README.md shows how to use it.
package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"strings"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/screen"
	"ellwand/pieces/language"
	"ellwand/pieces/text"
)

func main() {
	boundMemory()
	ctx, stop := interruptible()
	status := run(ctx, os.Args[1:], os.Stdout, os.Stderr)
	stop()
	os.Exit(status)
}

// run carries out one command line and returns its exit status.
func run(ctx context.Context, args []string, stdout, stderr io.Writer) int {
	printed := &output{to: stdout}
	err := execute(ctx, args, printed, stdout, stderr)
	if printed.err != nil {
		err = printed.lost()
	}
	if err == nil {
		return statusDone
	}
	fmt.Fprintln(screen.NewWriter(text.Writer(stderr), screen.Width(stderr)), sentence(withDetails(err, args)))
	status := statusOf(err)
	if printed.err == nil && status != statusNo && wantsJSON(args) {
		_ = report.Write(printed, errorDocument(status, err)) // the exit status tells it as well
	}
	return status
}

// execute carries out one command line. What nobody foresaw is an error as well.
func execute(ctx context.Context, args []string, printed, stdout, stderr io.Writer) (err error) {
	defer func() {
		if caught := failure.Caught(recover()); caught != nil {
			err = caught
		}
	}()
	if err := withinLimits(args); err != nil {
		return err
	}
	root := newRoot(newEnv(printed, stdout, stderr))
	root.SetArgs(args)
	root.SetOut(printed)
	root.SetErr(stderr)
	return root.ExecuteContext(ctx)
}

// withinLimits bounds the command line.
func withinLimits(args []string) error {
	if err := limit.Arguments.Check(language.Say("the command line", "die Befehlszeile"), len(args)); err != nil {
		return err
	}
	for _, arg := range args {
		const shown = 20 // bytes of one that is too long
		if len(arg) > limit.Argument.Most() {
			return limit.Argument.Check(language.Say("%q and what follows", "%q und das Folgende",
				strings.ToValidUTF8(arg[:shown], "")), len(arg))
		}
	}
	return nil
}
