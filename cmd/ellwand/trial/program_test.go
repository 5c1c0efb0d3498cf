package trial

import (
	"os"
	"testing"

	"ellwand/testdata/program"
)

func TestMain(m *testing.M) { os.Exit(program.Main(m.Run)) }
