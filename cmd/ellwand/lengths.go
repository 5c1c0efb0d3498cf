package main

import (
	"fmt"
	"strings"

	"ellwand/pieces/measure"
)

// parseLength reads an option that is a length above 0; 0 when it is not
// given.
func parseLength(option, text string, unit measure.Unit) (float64, error) {
	if text == "" {
		return 0, nil
	}
	value, err := measure.Parse(text, unit)
	if err != nil {
		return 0, fmt.Errorf("%s: %w", option, err)
	}
	if value <= 0 {
		return 0, fmt.Errorf("%s: %s is no length; it must be above 0, such as 1.6m", option, text)
	}
	return float64(value), nil
}

// parseWidths reads a list such as "115cm,140cm,150cm".
func parseWidths(list []string, unit measure.Unit) ([]float64, error) {
	var out []float64
	for _, text := range list {
		width, err := measure.Parse(strings.TrimSpace(text), unit)
		if err != nil {
			return nil, fmt.Errorf("--widths: %w", err)
		}
		if width <= 0 {
			return nil, fmt.Errorf("--widths: a width of %s is no cloth; give it from edge to edge, such as 140cm", text)
		}
		out = append(out, float64(width))
	}
	return out, nil
}
