package main

import (
	"fmt"
	"strings"

	"ellwand/fabric/lay"
)

func layShortNames() []string {
	var names []string
	for _, kind := range lay.Kinds() {
		names = append(names, kind.Short())
	}
	return names
}

func layWords() string { return strings.Join(layShortNames(), ", ") }

// parseLay reads the name of a lay, short or in full; nil leaves the choice
// open.
func parseLay(text string) (*lay.Kind, error) {
	if text == "" {
		return nil, nil
	}
	if kind, known := lay.Named(strings.ToLower(text)); known {
		return &kind, nil
	}
	return nil, fmt.Errorf("--lay %q is not known; use one of: %s", text, layWords())
}
