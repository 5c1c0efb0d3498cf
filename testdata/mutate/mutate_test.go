package main

import (
	"bytes"
	"regexp"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Of a package whose changes are counted by hand, with more asked for than there
// are: those of Twice are caught by its tests, those of Positive by the tests
// above, those of Forgotten by none, and that of Joined does not build.
func TestToy(t *testing.T) {
	var out bytes.Buffer
	got, err := run(t.Context(), &out,
		options{seed: 1, mutants: 100, limit: time.Minute, folder: "testdata/toy", patterns: []string{"."}})
	require.NoError(t, err)
	var survived []string
	for _, m := range got.survived {
		survived = append(survived, m.was+" becomes "+m.with)
	}
	assert.ElementsMatch(t, []string{"- becomes +", "7 becomes 8"}, survived)
	assert.Equal(t, 2+3, got.caught, "* and 2; > twice and 0")
	for _, line := range []string{
		"caught    toy.go:6: * becomes /, by toy (",
		"caught    toy.go:9: > becomes <=, by toy/above (",
		"SURVIVED  toy.go:12: - becomes + (",
		"seed 1: 5 of 7 caught\n",
	} {
		assert.Contains(t, out.String(), line)
	}
	assert.NotContains(t, out.String(), "toy.go:15")
}

// The same seed draws the same changes, and no more than asked for.
func TestSeedDrawsTheSame(t *testing.T) {
	draw := func(seed uint64) string {
		var out bytes.Buffer
		got, err := run(t.Context(), &out, options{seed: seed, mutants: 2, limit: time.Minute, folder: "testdata/toy",
			patterns: []string{"./..."}})
		require.NoError(t, err)
		require.Equal(t, 2, got.tried())
		return regexp.MustCompile(` \(\d+ s\)`).ReplaceAllString(out.String(), "")
	}
	assert.Equal(t, draw(3), draw(3))
}

// A package is tested with itself first, then by what imports it.
func TestAbove(t *testing.T) {
	f, err := readFloors(t.Context(), "testdata/toy", nil)
	require.NoError(t, err)
	assert.Equal(t, []string{"toy", "toy/above"}, f.above("toy"))
	assert.Equal(t, []string{"toy/above"}, f.above("toy/above"))
}
