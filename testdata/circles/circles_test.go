package circles

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Files in a folder refer one way.
func TestFilesReferOneWay(t *testing.T) {
	found, err := Of("ellwand/...")
	require.NoError(t, err)
	for _, circle := range found {
		t.Errorf("%s: %v refer to each other; move what all of them need into a file below", circle.Package, circle.Files)
	}
}

// The package in testdata/ring has three files in a circle, one that only uses them and
// one that they use.
func TestCirclesAreFound(t *testing.T) {
	found, err := Of("./testdata/ring")
	require.NoError(t, err)
	assert.Equal(t, []Circle{{"ellwand/testdata/circles/testdata/ring", []string{"a.go", "b.go", "c.go"}}}, found)
	_, err = Of("./testdata/missing")
	require.Error(t, err)
}
