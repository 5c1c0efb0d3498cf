package main

import (
	"bytes"
	"context"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// ellwand runs one command line and returns its output; it must end well.
func ellwand(t *testing.T, args ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	status := run(context.Background(), args, &out, &errs)
	require.Equal(t, statusDone, status, "ellwand %s: %s", strings.Join(args, " "), errs.String())
	return out.String()
}
