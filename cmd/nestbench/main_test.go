package main

import (
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"ellwand/testdata/scripts"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"nestbench": main})
}

// TestScripts runs every script of testdata/script. $DATA is the folder of the
// example jobs and instances.
func TestScripts(t *testing.T) {
	scripts.Run(t, scripts.Setting{Paths: map[string]string{"DATA": "../../testdata"}})
}
