package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"strings"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/screen"
	"ellwand/cmd/ellwand/words"
	"ellwand/pieces/found"
)

// asks says that somebody sits there to be asked.
func (e *env) asks() bool {
	return !e.json && !e.quiet && screen.IsReadTerminal(e.in)
}

// askFor all that neither the drawings nor the options say of pieces, one thing after
// the other. Nothing is asked of a piece that lacks nothing.
func (e *env) askFor(all app.Imported, answers *app.Answers) error {
	in := bufio.NewReader(e.in)
	for _, f := range all.Found {
		said, err := answers.Said(f)
		if err != nil || f.Fault != nil {
			return err
		}
		missing := f.Missing(said)
		if len(missing) == 0 {
			continue
		}
		fmt.Fprintf(e.err, "\n%s\n", words.Asked(f, all.Unit.System()))
		for _, q := range missing {
			if err := e.askOne(in, q, f, answers, true); err != nil {
				return err
			}
		}
		for _, q := range f.Optional(said) {
			if err := e.askOne(in, q, f, answers, false); err != nil {
				return err
			}
		}
	}
	return nil
}

// askOne asks until an answer is understood; an empty one leaves what is optional.
func (e *env) askOne(in *bufio.Reader, q found.Question, f app.Found, answers *app.Answers, needed bool) error {
	for {
		fmt.Fprint(e.err, words.Ask(q))
		line, err := in.ReadString('\n')
		line = strings.TrimSpace(line)
		switch {
		case err != nil && line == "" && errors.Is(err, io.EOF):
			return fmt.Errorf("the answers ended before all was said")
		case line == "" && needed:
			continue
		case line == "":
			return nil
		}
		next := answers.Copy()
		next.Add(q, f.Number, line)
		if _, err := next.Said(f); err != nil {
			fmt.Fprintln(e.err, message(err))
			continue
		}
		*answers = next
		return nil
	}
}
