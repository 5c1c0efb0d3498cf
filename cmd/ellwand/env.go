package main

import (
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/screen"
	"ellwand/pieces/text"
)

// env is what every command writes to, and the options that all of them take.
type env struct {
	out, err io.Writer
	in       io.Reader // answers, where somebody is asked
	screen   io.Writer // out, in the columns that there are
	stdout   io.Writer // what out writes to, as it is
	width    int       // columns of stdout
	json     bool
	quiet    bool
}

func newEnv(printed, stdout, stderr io.Writer) *env {
	out, width := text.Writer(printed), screen.Width(stdout)
	return &env{in: os.Stdin, out: out, err: stderr, screen: screen.NewWriter(out, width), stdout: stdout, width: width}
}

// note tells the user something beside the result.
func (e *env) note(format string, args ...any) {
	if !e.quiet {
		fmt.Fprintf(screen.NewWriter(text.Writer(e.err), screen.Width(e.err)), format+"\n", args...)
	}
}

// one returns a check that a command is given exactly one argument.
func one(what string) cobra.PositionalArgs {
	return func(cmd *cobra.Command, args []string) error {
		switch {
		case len(args) == 0:
			return fmt.Errorf("%s needs %s; for example:\n%s", cmd.CommandPath(), what, cmd.Example)
		case len(args) > 1:
			return fmt.Errorf("%s takes one argument, %s, but was given %d: %s", cmd.CommandPath(), what, len(args),
				strings.Join(args, " "))
		}
		return nil
	}
}

// noArguments refuses arguments where there are none to give.
func noArguments(cmd *cobra.Command, args []string) error {
	if len(args) > 0 {
		return fmt.Errorf("%s takes no arguments, but was given: %s", cmd.CommandPath(), strings.Join(args, " "))
	}
	return nil
}

// printJSON prints a document on stdout.
func (e *env) printJSON(value any) error {
	return failure.Of(report.Write(e.out, value))
}
