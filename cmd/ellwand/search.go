package main

import (
	"fmt"
	"strconv"
	"time"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/limit"
)

// searchFlags are the options of every command that looks for layouts.
type searchFlags struct {
	app.Search
	force bool
	flags *pflag.FlagSet
}

// register the options: what the time is for, and how long when it is not
// given.
func (s *searchFlags) register(cmd *cobra.Command, usual time.Duration, what string) {
	s.Time = usual
	flags := cmd.Flags()
	s.flags = flags
	flags.Var((*span)(&s.Time), "time", what)
	flags.Var((*passes)(&s.Search), "passes", "passes of each search, in place of a time: the same answer on any machine")
	s.Seed = 1
	flags.Var((*limit.Seed)(&s.Seed), "seed", "seed of the search; another seed may find another layout")
	flags.Var(limit.NumberOf(&s.Workers, limit.Workers), "workers", "processor cores to use; 0 is all of them")
	flags.BoolVar(&s.force, "force", false, "overwrite files that exist")
}

// check refuses what cannot be meant.
func (s *searchFlags) check() error {
	if s.Passes > 0 && s.flags.Changed("time") {
		return fmt.Errorf("--time and --passes both say how long to search; give one of them")
	}
	return nil
}

const (
	// eachLay says what the time is for, in most commands.
	eachLay = "time to search each lay: 5s, 2m, or a number of seconds"
	// usualTime to search each lay of a single job, and manyTime where there are
	// many to search.
	usualTime = 5 * time.Second
	manyTime  = 2 * time.Second
)

// layFlags are the options of the commands that give a layout.
type layFlags struct {
	searchFlags
	layout string // file or folder for the layout JSON, or empty
}

func (l *layFlags) register(cmd *cobra.Command, usual time.Duration, what string) {
	l.searchFlags.register(cmd, usual, what)
	cmd.Flags().StringVar(&l.layout, "layout", "", "file or folder to write the layout to, as JSON")
}

// manyFlags are the options of the commands that lay many problems at once.
type manyFlags struct {
	searchFlags
	noCache bool
}

func (m *manyFlags) register(cmd *cobra.Command) {
	m.searchFlags.register(cmd, manyTime, eachLay)
	cmd.Flags().BoolVar(&m.noCache, "no-cache", false, "search anew, and keep nothing of what is found")
}

func (m *manyFlags) budget() app.Budget { return app.Budget{Search: m.Search, Anew: m.noCache} }

// passes are a number of them on the command line; it takes the place of the
// time.
type passes app.Search

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
	p.Passes, p.Time = n, 0
	return nil
}

// span is a time on the command line.
type span time.Duration

// maxSpan is far above any use, and far below what a Duration holds.
const maxSpan = 7 * 24 * time.Hour

func (s *span) String() string { return time.Duration(*s).String() }

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
