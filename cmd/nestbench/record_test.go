package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestRecordKeepsTheNewestOfEachRun(t *testing.T) {
	path := filepath.Join(t.TempDir(), "density.csv")
	require.NoError(t, record(path, reached{Name: "shirts", Workers: 2, Seed: 1, Density: 86}, 10))
	require.NoError(t, record(path, reached{Name: "shirts", Workers: 2, Seed: 2, Density: 87}, 10))
	require.NoError(t, record(path, reached{Name: "shirts", Workers: 2, Seed: 1, Density: 88.125}, 10))
	rows, err := readRecord(path)
	require.NoError(t, err)
	require.Len(t, rows, 2)
	require.Equal(t, []string{"shirts", "10", "2", "1", "88.12"}, rows[0][:5])
	require.Equal(t, "2", rows[1][3])
}

func TestRecordRefusesAnotherFile(t *testing.T) {
	path := filepath.Join(t.TempDir(), "notes.txt")
	require.NoError(t, os.WriteFile(path, []byte("a shopping list\n"), 0o644))
	require.ErrorContains(t, record(path, reached{}, 1), "not a record of densities")
	kept, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, "a shopping list\n", string(kept))
}
