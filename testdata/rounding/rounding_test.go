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

// The packages that decide the coordinates of what is laid (those of nest have
// their own test). Their functions of math are still those of math.
func TestProductsOfCoordinatesAreRounded(t *testing.T) {
	faults, err := Faults("ellwand/pieces", "ellwand/pieces/geometry", "ellwand/fabric/bed", "ellwand/fabric/cloth",
		"ellwand/fabric/lay", "ellwand/fabric/internal/geometry", "ellwand/fabric/rules", "ellwand/fabric/plan")
	require.NoError(t, err)
	for _, fault := range faults {
		if fault.Function == "" {
			t.Error(fault)
		}
	}
}

func TestFaultsOfAPackageThatIsNone(t *testing.T) {
	_, err := Faults("./testdata/missing")
	require.Error(t, err)
}
