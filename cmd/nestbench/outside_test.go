package main

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/testdata/bench"
	"ellwand/testdata/check"
)

// nestbench runs one command line, which must end well.
func nestbench(t *testing.T, args ...string) {
	t.Helper()
	var out, errs bytes.Buffer
	require.Equal(t, statusDone, run(t.Context(), args, &out, &errs), errs.String())
}

// laidBy the search in a few passes: the file of the layout.
func laidBy(t *testing.T, instance string) string {
	t.Helper()
	file := filepath.Join(t.TempDir(), "layout.json")
	nestbench(t, "lay", instance, "--passes", "40", "--layout", file)
	return file
}

// Layouts of instances of our own are found right by the outside checker: of
// jigsaws cut straight, slanted and curved, and of a squared rectangle.
func TestOwnInstancesOutside(t *testing.T) {
	instances := []string{"../../testdata/squared-rectangle.json"}
	for _, cut := range []string{"straight", "slanted", "curved"} {
		path := filepath.Join(t.TempDir(), cut+".json")
		nestbench(t, "jigsaw", path, "--cut", cut, "--columns", "4", "--rows", "3")
		instances = append(instances, path)
	}
	for _, instance := range instances {
		t.Run(filepath.Base(instance), func(t *testing.T) {
			check.Bench(t, instance, laidBy(t, instance))
		})
	}
}

// The layouts of the open data are found right by the outside checker.
func TestOpenDataOutside(t *testing.T) {
	for _, instance := range bench.Instances(t) {
		t.Run(filepath.Base(instance), func(t *testing.T) {
			check.Bench(t, instance, laidBy(t, instance))
		})
	}
}

// A layout of an instance that breaks a rule is refused for it.
func TestSpoiledBenchLayoutsAreRefused(t *testing.T) {
	instance := filepath.Join(t.TempDir(), "instance.json")
	nestbench(t, "jigsaw", instance, "--columns", "3", "--rows", "2")
	text, err := os.ReadFile(laidBy(t, instance))
	require.NoError(t, err)
	type file = map[string]any
	first := func(f file) file { return f["placements"].([]any)[0].(file) }
	for name, c := range map[string]struct {
		spoil func(file)
		want  string
	}{
		"over the edge":   {func(f file) { first(f)["y"] = -1e3 }, "lies over the edge of the strip"},
		"over the end":    {func(f file) { f["length"] = f["length"].(float64) - 5 }, "lies over the edge of the strip"},
		"over another":    {func(f file) { first(f)["x"], first(f)["y"] = middleOfSecond(f) }, "lie over one another"},
		"turned":          {func(f file) { first(f)["rotation"] = 90 }, "turned in a way that it may not have"},
		"mirrored":        {func(f file) { first(f)["mirrored"] = true }, "turned in a way that it may not have"},
		"one is left out": {func(f file) { f["placements"] = f["placements"].([]any)[1:] }, "0 are laid, and 1 are asked"},
	} {
		t.Run(name, func(t *testing.T) {
			var f file
			require.NoError(t, json.Unmarshal(text, &f))
			c.spoil(f)
			spoiled, err := json.Marshal(f)
			require.NoError(t, err)
			path := filepath.Join(t.TempDir(), "spoiled.json")
			require.NoError(t, os.WriteFile(path, spoiled, 0o600))
			said, ok := check.Run(t, "bench", instance, path)
			assert.False(t, ok)
			assert.Contains(t, said, c.want)
		})
	}
}

// middleOfSecond is where the second piece lies: each is drawn about its middle.
func middleOfSecond(f map[string]any) (x, y any) {
	second := f["placements"].([]any)[1].(map[string]any)
	return second["x"], second["y"]
}
