// Mutate changes the code in one place at a time, at random from a seed, runs
// the tests of the changed package and of those above it, and lists the changes
// that no test saw:
//
//	go run ./testdata/mutate -seed 2 -mutants 40 draft/... pieces
//
// The tree itself is left alone: the go command is given each changed file as
// an overlay. A change that does not build is drawn again; one whose tests do
// not end within the limit counts as caught.
package main

import (
	"cmp"
	"context"
	"flag"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"os/signal"
	"slices"
	"time"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	var o options
	flag.Uint64Var(&o.seed, "seed", 1, "seed of the draw")
	flag.IntVar(&o.mutants, "mutants", 40, "how many changes to try")
	flag.DurationVar(&o.limit, "limit", 3*time.Minute, "how long the tests of one package may take")
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
	seed     uint64
	mutants  int
	limit    time.Duration
	folder   string
	patterns []string
}

// tally is what came of a run.
type tally struct {
	caught   int
	survived []mutant
}

// run draws the changes and tries them one by one.
func run(ctx context.Context, out io.Writer, o options) (tally, error) {
	floors, err := readFloors(ctx, o.folder, o.patterns)
	if err != nil {
		return tally{}, err
	}
	var all []mutant
	for _, p := range floors.chosen {
		found, err := mutantsOf(p)
		if err != nil {
			return tally{}, err
		}
		all = append(all, found...)
	}
	slices.SortFunc(all, func(a, b mutant) int {
		return cmp.Or(cmp.Compare(a.file, b.file), cmp.Compare(a.from, b.from), cmp.Compare(a.with, b.with))
	})
	random := rand.New(rand.NewPCG(o.seed, 0))
	random.Shuffle(len(all), func(i, j int) { all[i], all[j] = all[j], all[i] })
	var sum tally
	for _, m := range all {
		if sum.tried() == o.mutants || ctx.Err() != nil {
			break
		}
		begun := time.Now()
		outcome, err := floors.try(ctx, m, o.limit)
		if err != nil {
			return sum, err
		}
		switch {
		case ctx.Err() != nil || outcome.unbuilt:
			continue
		case outcome.caughtBy == "":
			sum.survived = append(sum.survived, m)
			fmt.Fprintf(out, "SURVIVED  %s (%.0f s)\n", floors.say(m), time.Since(begun).Seconds())
		default:
			sum.caught++
			fmt.Fprintf(out, "caught    %s, by %s (%.0f s)\n", floors.say(m), outcome.caughtBy, time.Since(begun).Seconds())
		}
	}
	fmt.Fprintf(out, "\nseed %d: %d of %d caught\n", o.seed, sum.caught, sum.tried())
	for _, m := range sum.survived {
		fmt.Fprintln(out, floors.say(m))
	}
	return sum, ctx.Err()
}

func (t tally) tried() int { return t.caught + len(t.survived) }
