package main

import (
	"fmt"
	"strings"

	"ellwand/fabric"
)

// layNames are the lays as they are written on the command line.
var layNames = []struct {
	name string
	lay  fabric.Lay
}{
	{"open", fabric.Open}, {"folded", fabric.FoldedAlong}, {"across", fabric.FoldedAcross}, {"turned", fabric.CutAcross},
	{"selvedge", fabric.SelvedgeIn}, {"middle", fabric.BothSelvedgesIn}, {"part", fabric.InStretches},
}

func layWords() string {
	var names []string
	for _, n := range layNames {
		names = append(names, n.name)
	}
	return strings.Join(names, ", ")
}

// parseLay reads the name of a lay, short or in full; nil leaves the choice
// open.
func parseLay(text string) (*fabric.Lay, error) {
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
