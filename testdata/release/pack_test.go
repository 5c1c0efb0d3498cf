package main

import (
	"archive/tar"
	"archive/zip"
	"bytes"
	"compress/gzip"
	"errors"
	"io"
	"io/fs"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// inside lists what an archive holds, with whether it may be run.
func inside(t *testing.T, packed []byte, isZip bool) map[string]fs.FileMode {
	t.Helper()
	out := map[string]fs.FileMode{}
	if isZip {
		r, err := zip.NewReader(bytes.NewReader(packed), int64(len(packed)))
		require.NoError(t, err)
		for _, f := range r.File {
			out[f.Name] = f.Mode()
		}
		return out
	}
	r, err := gzip.NewReader(bytes.NewReader(packed))
	require.NoError(t, err)
	for files := tar.NewReader(r); ; {
		header, err := files.Next()
		if errors.Is(err, io.EOF) {
			return out
		}
		require.NoError(t, err)
		out[header.Name] = header.FileInfo().Mode()
	}
}

func TestArchivesKeepTheRunBit(t *testing.T) {
	t.Chdir("../..")
	runs := map[string]string{
		"linux": "n/ellwand", "darwin": "n/Ellwand.app/Contents/MacOS/ellwand", "windows": "n/ellwand.exe",
	}
	for _, one := range targets {
		packed, err := one.pack("n", "1.2.3", []byte("program"))
		require.NoError(t, err)
		again, err := one.pack("n", "1.2.3", []byte("program"))
		require.NoError(t, err)
		assert.Equal(t, packed, again)
		found := inside(t, packed, one.system == "windows")
		assert.Equal(t, fs.FileMode(0o755), found[runs[one.system]].Perm(), one.called)
		assert.Contains(t, found, "n/LICENSE.txt")
		assert.Contains(t, found, "n/BEGIN.txt")
	}
	_, err := os.Stat("LICENSE")
	assert.NoError(t, err)
}
