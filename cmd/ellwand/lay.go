package main

import (
	"fmt"
	"strings"

	"ellwand/fabric/lay"
)

// layNames are the lays as they are written on the command line.
var layNames = []struct {
	name string
	lay  lay.Kind
}{
	{"open", lay.Open}, {"folded", lay.FoldedAlong}, {"across", lay.FoldedAcross}, {"turned", lay.CutAcross},
	{"selvedge", lay.SelvedgeIn}, {"middle", lay.BothSelvedgesIn}, {"part", lay.InStretches},
}

func layShortNames() []string {
	var names []string
	for _, n := range layNames {
		names = append(names, n.name)
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
	for _, n := range layNames {
		if strings.EqualFold(text, n.name) || strings.EqualFold(text, n.lay.String()) {
			return &n.lay, nil
		}
	}
	return nil, fmt.Errorf("--lay %q is not known; use one of: %s", text, layWords())
}
