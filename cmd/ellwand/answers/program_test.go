// Package answers runs the program and looks at what it answers: one answer from every
// command, documents that keep their schemas, papers that say their cautions. Tests only.
package answers

import (
	"os"
	"testing"

	"ellwand/testdata/program"
)

func TestMain(m *testing.M) { os.Exit(program.Main(m.Run)) }
