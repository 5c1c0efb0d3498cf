package nest

import (
	"strings"
	"testing"

	"ellwand/testdata/rounding"

	"github.com/stretchr/testify/require"
)

// The same problem has the same layout on every processor (see also the golden
// layouts and `make check-arm64`). The judge keeps to the functions of math: it
// shares nothing with the search, and nothing branches on what it finds.
func TestBitsAreTheSameOnEveryProcessor(t *testing.T) {
	faults, err := rounding.Faults("./...")
	require.NoError(t, err)
	for _, fault := range faults {
		if fault.Function == "" || !strings.Contains(fault.Begin.Filename, "/nest/verify/") {
			t.Error(fault)
		}
	}
}
