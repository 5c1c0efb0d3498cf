package main

import (
	"path/filepath"
	"strings"

	"ellwand/cmd/ellwand/job"
)

// planName is the file of a cloth's plan: the name asked for the first cloth,
// with the cloth's name added for the others.
func planName(output, cloth string, index int) string {
	if index == 0 {
		return output
	}
	extension := filepath.Ext(output)
	return strings.TrimSuffix(output, extension) + "-" + job.Slug(cloth) + extension
}
