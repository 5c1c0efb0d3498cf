package main

import (
	"errors"
	"strings"

	"ellwand/cmd/ellwand/app"
	piecewords "ellwand/pieces/words"
)

// sentence puts the program's name before each line of an error.
func sentence(err error) string {
	return "ellwand: " + strings.ReplaceAll(message(err), "\n", "\nellwand: ")
}

// message of an error, its options called as they are on the command line.
func message(err error) string {
	text := strings.TrimRight(piecewords.Refused(err).Error(), "\n")
	var refused *app.Refused
	if errors.As(err, &refused) {
		text = refused.Calling(func(a app.Argument) string { return "--" + string(a) })
	}
	return text
}
