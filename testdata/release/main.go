// Command release builds one file each for Linux, macOS and Windows, on both usual
// processors, and packs it into an archive that keeps what makes it run: make release.
// Archives of the same commit are the same to the byte.
package main

import (
	"crypto/sha256"
	"errors"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// target is a system and a processor, and what people call the system.
type target struct{ system, processor, called string }

// targets that are built for.
var targets = []target{
	{"linux", "amd64", "linux"}, {"linux", "arm64", "linux"}, {"darwin", "amd64", "macos"}, {"darwin", "arm64", "macos"},
	{"windows", "amd64", "windows"}, {"windows", "arm64", "windows"},
}

func main() {
	version := flag.String("version", "", "version of the release")
	out := flag.String("out", "out/release", "folder for the archives")
	flag.Parse()
	if err := run(*version, *out); err != nil {
		fmt.Fprintln(os.Stderr, "release:", err)
		os.Exit(1)
	}
}

func run(version, out string) error {
	if version == "" {
		return errors.New("give the version: -version 0.1.0")
	}
	if err := os.MkdirAll(out, 0o777); err != nil {
		return err
	}
	var sums strings.Builder
	for _, t := range targets {
		program, err := t.build(out)
		if err != nil {
			return err
		}
		name := fmt.Sprintf("ellwand-%s-%s-%s", version, t.called, t.processor)
		packed, err := t.pack(name, version, program)
		if err != nil {
			return err
		}
		name += t.ending()
		if err := os.WriteFile(filepath.Join(out, name), packed, 0o666); err != nil {
			return err
		}
		fmt.Fprintf(&sums, "%x  %s\n", sha256.Sum256(packed), name)
		fmt.Printf("%-36s %5.1f MB, %5.1f MB unpacked\n", name, megabytes(len(packed)), megabytes(len(program)))
	}
	return os.WriteFile(filepath.Join(out, "SHA256SUMS"), []byte(sums.String()), 0o666)
}

func megabytes(bytes int) float64 { return float64(bytes) / 1e6 }

// ending of the archive: a zip where every Windows opens it, elsewhere one that keeps
// that a file may be run.
func (t target) ending() string {
	if t.system == "windows" {
		return ".zip"
	}
	return ".tar.gz"
}

// build the program without a C compiler.
func (t target) build(out string) ([]byte, error) {
	path := filepath.Join(out, "building")
	defer os.Remove(path)
	build := exec.Command("go", "build", "-trimpath", "-buildvcs=auto", "-ldflags", "-s -w", "-o", path, "./cmd/ellwand")
	build.Env = append(os.Environ(), "CGO_ENABLED=0", "GOOS="+t.system, "GOARCH="+t.processor, "GOFLAGS=")
	build.Stderr = os.Stderr
	if err := build.Run(); err != nil {
		return nil, fmt.Errorf("%s on %s: %w", t.called, t.processor, err)
	}
	return os.ReadFile(path)
}
