package main

import (
	"context"
	"fmt"
	"strconv"
	"time"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/limit"
	"ellwand/fabric/plan"
)

// searchFlags are the options of every command that looks for layouts.
type searchFlags struct {
	app.Search
	// limit of time for the whole command; 0 is none.
	limit time.Duration
	force bool
	flags *pflag.FlagSet
}

func (s *searchFlags) register(cmd *cobra.Command) {
	flags := cmd.Flags()
	s.flags = flags
	flags.Var((*effort)(&s.Effort), "effort", "how much to search: quick, usual or long; the same answer on any machine")
	flags.Var((*span)(&s.limit), "time", "end the search after this time at the latest: 30s, 2m, or a number of seconds")
	flags.Var((*passes)(&s.Passes), "passes", "passes of each search, in place of the effort")
	s.Seed = 1
	flags.Var((*limit.Seed)(&s.Seed), "seed", "seed of the search; another seed may find another layout")
	flags.Var(limit.NumberOf(&s.Workers, limit.Workers), "workers", "processor cores to use; 0 is all of them")
	flags.BoolVar(&s.Anew, "anew", false, "search anew: use nothing that was found before, and keep nothing")
	flags.BoolVar(&s.force, "force", false, "overwrite files that exist")
}

// check refuses what cannot be meant.
func (s *searchFlags) check() error {
	if s.Passes > 0 && s.flags.Changed("effort") {
		return fmt.Errorf("--effort and --passes both say how much to search; give one of them")
	}
	return nil
}

// within ends the search at the limit of time.
func (s *searchFlags) within(ctx context.Context) (context.Context, context.CancelFunc) {
	if s.limit == 0 {
		return context.WithCancel(ctx)
	}
	return context.WithTimeout(ctx, s.limit)
}

// effort is a choice on the command line.
type effort plan.Effort

func (e *effort) String() string { return plan.Effort(*e).String() }

func (e *effort) Type() string { return "effort" }

func (e *effort) Set(text string) error {
	named, ok := plan.EffortNamed(text)
	if !ok {
		return fmt.Errorf("write one of: quick, usual, long")
	}
	*e = effort(named)
	return nil
}

// passes are a number of them on the command line.
type passes int

func (p *passes) String() string { return "" }

func (p *passes) Type() string { return "number" }

func (p *passes) Set(text string) error {
	n, err := strconv.Atoi(text)
	switch {
	case err != nil:
		return fmt.Errorf("write a whole number such as 500")
	case n <= 0:
		return fmt.Errorf("the number of passes must be above 0")
	case n > limit.Passes.Most():
		return fmt.Errorf("the number of passes %s", limit.Passes.Sentence())
	}
	*p = passes(n)
	return nil
}

// span is a time on the command line.
type span time.Duration

// maxSpan is far above any use, and far below what a Duration holds.
const maxSpan = 7 * 24 * time.Hour

func (s *span) String() string {
	if *s == 0 {
		return ""
	}
	return time.Duration(*s).String()
}

func (s *span) Type() string { return "time" }

func (s *span) Set(text string) error {
	d, err := time.ParseDuration(text)
	if seconds, e := strconv.ParseFloat(text, 64); e == nil {
		d, err = time.Duration(min(seconds, 1e9)*float64(time.Second)), nil
	}
	switch {
	case err != nil:
		return fmt.Errorf("write a time such as 5s, 90s or 2m")
	case d <= 0:
		return fmt.Errorf("the time must be above 0")
	case d > maxSpan:
		return fmt.Errorf("the time cannot be over a week")
	}
	*s = span(d)
	return nil
}
