package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"os/signal"
	"path/filepath"
	"runtime"
	"runtime/debug"
	"strings"
	"syscall"

	"ellwand/cmd/ellwand/build"
	"ellwand/cmd/ellwand/failure"
)

// interruptible is a context that the first Ctrl-C, or a request to end, ends: the
// search stops and its best is shown. A second one ends the program.
func interruptible() (context.Context, context.CancelFunc) {
	signals := []os.Signal{os.Interrupt, syscall.SIGTERM}
	if !signal.Ignored(syscall.SIGHUP) { // as it is under nohup
		signals = append(signals, syscall.SIGHUP)
	}
	ctx, stop := signal.NotifyContext(context.Background(), signals...)
	context.AfterFunc(ctx, stop)
	return ctx, stop
}

// softMemory is where the memory is swept more often rather than grown: the
// largest jobs stay below 1 GB.
const softMemory = 700 << 20

// boundMemory keeps the program small, unless its user says otherwise.
func boundMemory() {
	if os.Getenv("GOMEMLIMIT") == "" {
		debug.SetMemoryLimit(softMemory)
	}
}

// output is standard output: it keeps the first error of writing to it, since
// nobody looks whether a table could be printed.
type output struct {
	to  io.Writer
	err error
}

func (o *output) Write(data []byte) (int, error) {
	n, err := o.to.Write(data)
	if err != nil && o.err == nil {
		o.err = err
	}
	return n, err
}

// lost says that the results were not printed.
func (o *output) lost() error {
	reason := o.err
	var detail *fs.PathError
	if errors.As(reason, &detail) {
		reason = detail.Err
	}
	return fmt.Errorf("the results could not be printed to standard output (%w); make room there, or send them elsewhere",
		reason)
}

// withDetails keeps what is known of a fault that nobody foresaw in a file of the
// user's own, and says where.
func withDetails(err error, args []string) error {
	details := failure.DetailsOf(err)
	if details == "" {
		return err
	}
	name, failed := keepDetails(details, args)
	if failed != nil {
		return fmt.Errorf("%w; nothing of yours was changed by it. Please report it with the job file", err)
	}
	return fmt.Errorf("%w; nothing of yours was changed by it. The details are in %s: please report it with them and "+
		"the job file",
		err, name)
}

func keepDetails(details string, args []string) (string, error) {
	folder := os.TempDir()
	if cache, err := os.UserCacheDir(); err == nil && os.MkdirAll(filepath.Join(cache, "ellwand"), 0o700) == nil {
		folder = filepath.Join(cache, "ellwand")
	}
	file, err := os.CreateTemp(folder, "fault-*.txt") // which only its owner may read
	if err != nil {
		return "", err
	}
	_, err = fmt.Fprintf(file, "ellwand %s (%s, %s, %s/%s)\n%s\n\n%s\n", version, build.Commit(), runtime.Version(),
		runtime.GOOS, runtime.GOARCH, strings.Join(args, " "), details)
	return file.Name(), errors.Join(err, file.Close())
}
