package rounding

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestFaultsAreThoseThatAreMarked(t *testing.T) {
	text, err := os.ReadFile("testdata/sums/sums.go")
	require.NoError(t, err)
	var want, got []int
	for i, line := range strings.Split(string(text), "\n") {
		if strings.HasSuffix(line, "// fault") {
			want = append(want, i+1)
		}
	}
	faults, err := Faults("./testdata/sums")
	require.NoError(t, err)
	for _, fault := range faults {
		got = append(got, fault.Begin.Line)
	}
	require.Equal(t, want, got)
	require.Contains(t, faults[0].String(), "sums.go:14:51: round this product by a conversion, float64(a*b)")
	require.Contains(t, faults[len(faults)-1].String(), "rand.NormFloat64 differs from processor to processor")
}

// The rooms that decide what is drafted and where it is laid (those of nest have
// their own test).
func TestBitsAreTheSameOnEveryProcessor(t *testing.T) {
	faults, err := Faults("ellwand/draft", "ellwand/draft/bodice", "ellwand/draft/construct", "ellwand/draft/lining",
		"ellwand/draft/part", "ellwand/draft/skirt", "ellwand/draft/sleeve", "ellwand/draft/straightcut",
		"ellwand/draft/trousers", "ellwand/pieces", "ellwand/pieces/geometry",
		"ellwand/pieces/measure", "ellwand/pieces/outline", "ellwand/fabric/bed", "ellwand/fabric/cloth",
		"ellwand/fabric/internal/motion", "ellwand/fabric/lay", "ellwand/fabric/plan", "ellwand/fabric/purchase",
		"ellwand/fabric/remnant", "ellwand/fabric/rules")
	require.NoError(t, err)
	for _, fault := range faults {
		t.Error(fault)
	}
}

func TestFaultsOfAPackageThatIsNone(t *testing.T) {
	_, err := Faults("./testdata/missing")
	require.Error(t, err)
}
