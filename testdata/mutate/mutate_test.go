package main

import (
	"bytes"
	"fmt"
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
		options{seeds: []uint64{1}, mutants: 100, limit: time.Minute, folder: "testdata/toy", patterns: []string{"."}})
	require.NoError(t, err)
	var survived []string
	for _, m := range got {
		if m.caughtBy == "" {
			survived = append(survived, m.was+" becomes "+m.with)
		}
	}
	assert.ElementsMatch(t, []string{"- becomes +", "7 becomes 8"}, survived)
	for _, line := range []string{
		"caught    toy.go:6: * becomes /, by toy\n",
		"caught    toy.go:9: > becomes <=, by toy/above\n",
		"SURVIVED  toy.go:12: - becomes +",
		"seed 1: 5 of 7 caught\n",
	} {
		assert.Contains(t, out.String(), line)
	}
	assert.NotContains(t, out.String(), "toy.go:15")
}

// A change of each kind is caught by tests that hold all of them: what a switch throws
// is the change. The constant has none, nor the second of two changes of one operator.
func TestKinds(t *testing.T) {
	var out bytes.Buffer
	got, err := run(t.Context(), &out,
		options{seeds: []uint64{1}, mutants: 100, limit: time.Minute, folder: "testdata/toy", patterns: []string{"kinds"}})
	require.NoError(t, err)
	assert.NotContains(t, out.String(), "SURVIVED")
	apart := map[string]int{}
	for _, d := range got {
		if !d.switched {
			apart[d.was]++
		}
	}
	assert.Equal(t, map[string]int{"3.0": 1, "<": 2, "<=": 1, ">": 2, ">=": 1}, apart)
}

// The same seed draws the same changes, and no more than asked for; what two seeds draw
// is tried once.
func TestSeedDrawsTheSame(t *testing.T) {
	c, err := readCode("testdata/toy", nil)
	require.NoError(t, err)
	places := func(seeds ...uint64) map[string][]uint64 {
		out := map[string][]uint64{}
		for _, d := range c.draw(seeds, 10) {
			out[fmt.Sprint(d.file, d.from, d.was, d.with)] = d.seeds
		}
		return out
	}
	assert.Len(t, places(3), 10)
	assert.Equal(t, places(3), places(3))
	assert.NotEqual(t, places(3), places(4))
	both := 0
	for _, seeds := range places(3, 4) {
		both += len(seeds)
	}
	assert.Equal(t, 20, both)
}

// The switches of one file stand within each other, and where two begin or end together.
func TestSwitches(t *testing.T) {
	c, err := readCode("testdata/toy", []string{"kinds"})
	require.NoError(t, err)
	var some []edit
	for _, m := range c.mutants() {
		if m.line == 30 && m.was != "%" {
			e, ok := c.switched(m, len(some))
			require.True(t, ok)
			some = append(some, e)
		}
	}
	assert.Contains(t, weave(c.sources[c.mutants()[0].file], some),
		"\tif mutateFlip(0, mutateFlip(2, n%mutatePick[int](1, 3, 2) == mutatePick[int](3, 2, 1))) {\n")
}

// What imports a package can see its changes, by its code or by its tests.
func TestAbove(t *testing.T) {
	f, err := readFloors(t.Context(), "testdata/toy")
	require.NoError(t, err)
	assert.Equal(t, map[string]bool{"toy": true, "toy/above": true, "toy/kinds": false}, f.above("toy"))
	assert.Equal(t, map[string]bool{"toy": false, "toy/above": true, "toy/kinds": false}, f.above("toy/above"))
}
