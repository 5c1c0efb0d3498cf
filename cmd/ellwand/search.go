package main

import (
	"fmt"
	"strconv"
	"time"

	"github.com/spf13/cobra"
)

// search holds the options of the commands that lay pieces.
type search struct {
	time    time.Duration
	seed    uint64
	workers int
	layout  string // file or folder for the layout JSON, or empty
	force   bool
}

func (s *search) register(cmd *cobra.Command) {
	s.time = 5 * time.Second
	flags := cmd.Flags()
	flags.Var((*span)(&s.time), "time", "time to search each lay: 5s, 2m, or a number of seconds")
	flags.Uint64Var(&s.seed, "seed", 1, "seed of the search; another seed may find another layout")
	flags.IntVar(&s.workers, "workers", 0, "processor cores to use; 0 is all of them")
	flags.StringVar(&s.layout, "layout", "", "file or folder to write the layout to, as JSON")
	flags.BoolVar(&s.force, "force", false, "overwrite files that exist")
}

// check refuses what cannot be meant.
func (s *search) check() error {
	if s.workers < 0 {
		return fmt.Errorf("--workers is %d; it cannot be negative (0 uses every core)", s.workers)
	}
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
