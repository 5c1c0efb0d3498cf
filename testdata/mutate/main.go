// Mutate changes the code in one place at a time, at random from seeds, runs the tests
// of the changed package and of all others that come to the place, and lists the
// changes that no test sees:
//
//	go run ./testdata/mutate -seeds 2,3 -mutants 40 draft/... pieces
//
// The tree itself is left alone: the go command is given changed files as an overlay.
// A change that does not build is drawn again; one whose tests do not end counts as
// caught.
//
// All changes are compiled at once, each behind a switch, so that the tests of a package
// are built once. Each test is run once with nothing thrown, which must pass and shows
// which changes it comes to, in processes that it starts as well: a test that never
// comes to a change cannot see it, and is not run for it. Each change is tried alone
// with the tests of its own package, what is left with those of the others, several at
// a time. A change of a constant has no switch, and is built by itself.
package main

import (
	"context"
	"flag"
	"fmt"
	"io"
	"os"
	"os/signal"
	"slices"
	"strconv"
	"strings"
	"time"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	o := options{seeds: []uint64{1}}
	flag.Func("seeds", "seeds of the draws, with commas between them", func(text string) (err error) {
		o.seeds, err = parseSeeds(text)
		return err
	})
	flag.IntVar(&o.mutants, "mutants", 40, "how many changes each seed draws")
	flag.DurationVar(&o.limit, "limit", 10*time.Minute, "how long the tests of one package may take")
	flag.StringVar(&o.folder, "C", ".", "folder of the module")
	flag.Parse()
	o.patterns = flag.Args()
	if _, err := run(ctx, os.Stdout, o); err != nil {
		fmt.Fprintln(os.Stderr, "mutate:", err)
		os.Exit(1)
	}
}

// options say what to change and how often. Patterns are of packages, as the go
// command takes them, with or without "./".
type options struct {
	seeds    []uint64
	mutants  int
	limit    time.Duration
	folder   string
	patterns []string
}

func parseSeeds(text string) ([]uint64, error) {
	var out []uint64
	for word := range strings.SplitSeq(text, ",") {
		seed, err := strconv.ParseUint(word, 10, 64)
		if err != nil {
			return nil, err
		}
		out = append(out, seed)
	}
	return out, nil
}

// run draws the changes, tries them, and says what became of them.
func run(ctx context.Context, out io.Writer, o options) ([]*drawn, error) {
	floors, err := readFloors(ctx, o.folder)
	if err != nil {
		return nil, err
	}
	c, err := readCode(floors.folder, o.patterns)
	if err != nil {
		return nil, err
	}
	folder, err := os.MkdirTemp("", "mutate")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(folder)
	changes := c.draw(o.seeds, o.mutants)
	bench, err := openBench(folder, floors.folder, o.limit, c.plant(folder, changes))
	if err != nil {
		return nil, err
	}
	t := &trial{bench: bench, floors: floors, out: out, drawn: changes}
	err = t.all(ctx, c)
	t.sum(o.seeds)
	return changes, err
}

// sum says what survived, and how many were caught of each seed.
func (t *trial) sum(seeds []uint64) {
	for _, d := range t.drawn {
		switch {
		case d.caughtBy != "":
		case !d.switched || slices.ContainsFunc(t.units(), func(u *unit) bool { return u.reached[d.number] }):
			fmt.Fprintf(t.out, "SURVIVED  %s\n", t.floors.say(d.mutant))
		default:
			fmt.Fprintf(t.out, "SURVIVED  %s, which no test comes to\n", t.floors.say(d.mutant))
		}
	}
	for _, seed := range seeds {
		tried, caught := 0, 0
		for _, d := range t.drawn {
			if slices.Contains(d.seeds, seed) {
				tried++
				if d.caughtBy != "" {
					caught++
				}
			}
		}
		fmt.Fprintf(t.out, "seed %d: %d of %d caught\n", seed, caught, tried)
	}
	fmt.Fprintf(t.out, "%.0f s of processor time\n", t.spent.Seconds())
}
