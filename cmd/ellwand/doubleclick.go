package main

import (
	"io"
	"os"
	"path/filepath"
	"runtime"

	"github.com/inconshreveable/mousetrap"
	"golang.org/x/term"
)

// isDoubleClicked says that the program was most likely started from a desktop, with
// nobody at a terminal who typed its name. Windows tells who started it. A Mac opens a
// terminal for it, and gives its full path; from a bundle, and on Linux, nothing that it
// is joined to is a terminal, but there is a desktop.
func isDoubleClicked(args []string, stdout io.Writer) bool {
	if len(args) > 0 || stdout != io.Writer(os.Stdout) {
		return false
	}
	switch runtime.GOOS {
	case "windows":
		return mousetrap.StartedByExplorer()
	case "darwin":
		return filepath.IsAbs(os.Args[0]) || !isOnTerminal()
	}
	return !isOnTerminal() && os.Getenv("DISPLAY")+os.Getenv("WAYLAND_DISPLAY") != "" && isFromDesktop()
}

func isOnTerminal() bool {
	for _, file := range []*os.File{os.Stdin, os.Stdout, os.Stderr} {
		if term.IsTerminal(int(file.Fd())) {
			return true
		}
	}
	return false
}

// isFromDesktop says that nobody reads what is written: it goes nowhere, into the journal
// of the session or into a file of it, and not into a pipe as from a script.
func isFromDesktop() bool {
	info, err := os.Stdout.Stat()
	return err == nil && info.Mode()&os.ModeNamedPipe == 0
}
