package main

import (
	"bytes"
	"context"
	"errors"
	"os"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/failure"
)

// A panic is one sentence, with its details in a file that is the user's alone.
func TestPanicIsASentence(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	var caught error
	func() {
		defer func() { caught = failure.Caught(recover()) }()
		var none map[string]int
		//lint:ignore SA5000 it is to panic
		none["a"] = 1
	}()
	require.True(t, failure.Is(caught))
	text := sentence(withDetails(caught, []string{"estimate", "job.yaml"}))
	assert.NotContains(t, text, "map")
	assert.NotContains(t, text, "\n")
	name := regexp.MustCompile(`details are in (\S+):`).FindStringSubmatch(text)
	require.NotNil(t, name, text)
	details, err := os.ReadFile(name[1])
	require.NoError(t, err)
	assert.Contains(t, string(details), "assignment to entry in nil map")
	assert.Contains(t, string(details), "edge_test.go")
	assert.Contains(t, string(details), "estimate job.yaml")
	info, err := os.Stat(name[1])
	require.NoError(t, err)
	assert.Equal(t, os.FileMode(0o600), info.Mode().Perm())
	assert.Equal(t, errors.ErrUnsupported, withDetails(errors.ErrUnsupported, nil), "other errors stay as they are")
}

// panicking panics when it is written to, as a fault deep inside would.
type panicking struct{}

func (panicking) Write([]byte) (int, error) { panic("the press is jammed") }

func TestPanicEndsWithItsStatus(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	var told bytes.Buffer
	assert.Equal(t, statusFailed, run(context.Background(), []string{"version"}, panicking{}, &told))
	assert.Contains(t, told.String(), "not by anything you wrote")
	assert.NotContains(t, told.String(), "jammed")
}
