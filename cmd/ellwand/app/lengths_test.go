package app

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/plan"
	"ellwand/testdata/sample"
)

// recorded is the shortest length known of a cloth of an example job, in the way of
// laying that takes least.
type recorded struct {
	job, cloth    string
	width, length float64
}

func recordedLengths(t *testing.T) []recorded {
	t.Helper()
	file, err := os.Open(filepath.Join("..", "..", "..", "testdata", "lengths.csv"))
	require.NoError(t, err)
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	require.NoError(t, err)
	var out []recorded
	for _, row := range rows[1:] {
		width, err := strconv.ParseFloat(row[2], 64)
		require.NoError(t, err)
		length, err := strconv.ParseFloat(row[3], 64)
		require.NoError(t, err)
		out = append(out, recorded{row[0], row[1], width, length})
	}
	return out
}

// The usual effort comes within a median of 1.5 % of the shortest lengths known, and
// within 4 % of each. In the suite it is tried on the jobs that are laid soonest.
func TestUsualEffortComesNearTheShortestKnown(t *testing.T) {
	quick := []string{"skirt", "velvet"}
	var over []float64
	for _, known := range recordedLengths(t) {
		if !sample.Long() && !slices.Contains(quick, known.job) {
			continue
		}
		work, err := ReadJob(t.Context(), filepath.Join("..", "..", "..", "testdata", known.job+".yaml"))
		require.NoError(t, err)
		cloths, err := Cloths(work, nil)
		require.NoError(t, err)
		for _, c := range cloths {
			if c.Name != known.cloth || c.Width != known.width {
				continue
			}
			need, err := newFinder(Search{Seed: 1, Anew: true}).find(t.Context(), c, work.PiecesOf(c.Name), plan.Options{})
			require.NoError(t, err)
			shortest := need.Length
			for _, p := range need.Found {
				shortest = min(shortest, p.Taken)
			}
			t.Logf("%s %s %.0f: %.0f mm, shortest known %.0f", known.job, known.cloth, known.width, shortest, known.length)
			assert.LessOrEqual(t, shortest, 1.04*known.length, "%s, %s, %.0f mm", known.job, known.cloth, known.width)
			over = append(over, shortest/known.length-1)
		}
	}
	require.NotEmpty(t, over)
	slices.Sort(over)
	assert.LessOrEqual(t, over[len(over)/2], 0.015, "median")
}
