package main

import (
	"fmt"

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
