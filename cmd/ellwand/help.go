package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/manual"
	"ellwand/cmd/ellwand/screen"
	"ellwand/cmd/ellwand/strict"
)

// newHelp is the command that shows the help of a command or a page of the
// manual.
func newHelp(e *env) *cobra.Command {
	return &cobra.Command{
		Use:   "help [COMMAND|TOPIC]",
		Short: "Show how a command is used, or a page on the job file",
		Long: `Help shows how a command is used, or a page on a part of the job file, a page at
a time on a terminal (through the program that the variable PAGER names):

` + manual.Contents() + `
The name of a key that holds others leads to its page: help repeat.`,
		Example: "  ellwand help job\n  ellwand help measurements\n  ellwand help estimate",
		Args:    cobra.MaximumNArgs(1),
		ValidArgsFunction: func(cmd *cobra.Command, _ []string, _ string) ([]string, cobra.ShellCompDirective) {
			return helpNames(cmd.Root()), cobra.ShellCompDirectiveNoFileComp
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return cmd.Root().Help()
			}
			return e.help(cmd.Root(), args[0])
		},
	}
}

func (e *env) help(root *cobra.Command, name string) error {
	if topic, known := manual.Find(name); known && !isCommand(root, name) {
		return e.paged(topic.Page(e.width))
	}
	if found, rest, err := root.Find([]string{name}); err == nil && len(rest) == 0 && found != root {
		return found.Help()
	}
	return fmt.Errorf("there is no help on %q; %s", name, near(root, name))
}

func isCommand(root *cobra.Command, name string) bool {
	for _, cmd := range root.Commands() {
		if cmd.Name() == name {
			return true
		}
	}
	return false
}

// near names the topics that a mistyped one may mean; all of them when none is
// near.
func near(root *cobra.Command, name string) string {
	if meant := strict.Nearest(name, helpNames(root)); meant != "" {
		return "did you mean " + meant + "?"
	}
	return "there is help on: " + strings.Join(helpNames(root), ", ")
}

// helpNames are the commands and topics that there is help on.
func helpNames(root *cobra.Command) []string {
	var out []string
	for _, topic := range manual.Topics() {
		out = append(out, topic.Name)
	}
	for _, cmd := range root.Commands() {
		if cmd.IsAvailableCommand() {
			out = append(out, cmd.Name())
		}
	}
	return out
}

// paged shows a text through the reader's pager on a terminal, and as it is
// anywhere else or where there is no pager.
func (e *env) paged(page string) error {
	if screen.IsTerminal(e.stdout) {
		pager := strings.Fields(os.Getenv("PAGER"))
		if len(pager) == 0 {
			pager = []string{"less", "-FX"}
		}
		cmd := exec.Command(pager[0], pager[1:]...)
		cmd.Stdin, cmd.Stdout, cmd.Stderr = strings.NewReader(page), e.stdout, e.err
		var absent *exec.Error
		if err := cmd.Run(); !errors.As(err, &absent) {
			return nil // what a pager that was left early says is no fault
		}
	}
	_, err := io.WriteString(e.out, page)
	return err
}
