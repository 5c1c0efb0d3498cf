package main

import (
	"cmp"
	"context"
	"fmt"
	"io"
	"slices"
)

// together is how many changes that the tests of their own packages have let pass are
// thrown at once. Most of them pass here as well, and so with one run; where it fails,
// halves are thrown until one alone makes it fail. One that another hides survives: never
// is a change said to be caught that is not, alone.
const together = 16

// trial tries changes with the tests that come to them.
type trial struct {
	*bench
	floors *floors
	out    io.Writer
	drawn  []*drawn
	suites []*suite
}

// all tries every change. Errors: tests do not build; the end of the context.
func (t *trial) all(ctx context.Context, c *code) error {
	if err := t.own(ctx); err != nil {
		return err
	}
	if err := t.above(ctx); err != nil {
		return err
	}
	return cmp.Or(t.apart(ctx, c), ctx.Err())
}

// own tries each change alone with the tests of its own package.
func (t *trial) own(ctx context.Context) error {
	for _, p := range t.floors.all {
		if !p.tested() || !slices.ContainsFunc(t.drawn, func(d *drawn) bool { return d.of == p.ImportPath }) {
			continue
		}
		s, err := t.opened(ctx, p)
		if err != nil {
			return err
		}
		for _, u := range cheapestFirst(s.units) {
			for _, d := range t.alive(u) {
				if d.of == p.ImportPath {
					t.group(ctx, u, []*drawn{d})
				}
			}
		}
	}
	return nil
}

// above tries what is left with the tests of all other packages: first of those that
// have changes themselves, and each time the cheapest first.
func (t *trial) above(ctx context.Context) error {
	t.others(ctx, t.units())
	known := len(t.suites)
	for _, p := range t.floors.all {
		if p.tested() && !slices.ContainsFunc(t.suites, func(s *suite) bool { return s.ImportPath == p.ImportPath }) {
			if _, err := t.opened(ctx, p); err != nil {
				return err
			}
		}
	}
	t.others(ctx, unitsOf(t.suites[known:]))
	return nil
}

// others tries changes with tests that are not of their own packages.
func (t *trial) others(ctx context.Context, units []*unit) {
	for _, u := range cheapestFirst(units) {
		some := slices.DeleteFunc(t.alive(u), func(d *drawn) bool { return d.of == u.ImportPath })
		for group := range slices.Chunk(some, together) {
			t.group(ctx, u, group)
		}
	}
}

func (t *trial) units() []*unit { return unitsOf(t.suites) }

func unitsOf(suites []*suite) []*unit {
	var out []*unit
	for _, s := range suites {
		out = append(out, s.units...)
	}
	return out
}

func cheapestFirst(units []*unit) []*unit {
	return slices.SortedStableFunc(slices.Values(units), func(a, b *unit) int { return cmp.Compare(a.cost, b.cost) })
}

func (t *trial) opened(ctx context.Context, p listed) (*suite, error) {
	s, err := t.open(ctx, p)
	if err != nil || ctx.Err() != nil {
		return nil, cmp.Or(ctx.Err(), err)
	}
	t.suites = append(t.suites, s)
	if len(s.broken) > 0 {
		fmt.Fprintf(t.out, "LEFT OUT  tests of %s that fail with nothing changed: %q\n", p.ImportPath, s.broken)
	}
	for _, u := range s.units {
		fmt.Fprintf(t.out, "          %s %q: %d changes, %.1f s\n", p.ImportPath, u.tests, len(u.reached), u.cost.Seconds())
	}
	return s, nil
}

// alive are the switched changes that some tests come to and none has caught.
func (t *trial) alive(u *unit) []*drawn {
	var out []*drawn
	for _, d := range t.drawn {
		if d.switched && d.caughtBy == "" && u.reached[d.number] {
			out = append(out, d)
		}
	}
	return out
}

// group finds those of some changes that a unit catches.
func (t *trial) group(ctx context.Context, u *unit, some []*drawn) {
	if len(some) == 0 || ctx.Err() != nil {
		return
	}
	end := t.run(ctx, u, some, u.tests)
	if end.passed || ctx.Err() != nil {
		return
	}
	if len(some) == 1 {
		t.caught(some[0], u.ImportPath)
		return
	}
	t.blame(ctx, u, some, end.failed)
	left := slices.DeleteFunc(slices.Clone(some), func(d *drawn) bool { return d.caughtBy != "" })
	if len(left) < len(some) {
		t.group(ctx, u, left)
		return
	}
	// No test that failed fails again by one alone.
	t.group(ctx, u, some[:len(some)/2])
	t.group(ctx, u, some[len(some)/2:])
}

// blame finds those of some changes by which, each alone, some tests fail.
func (t *trial) blame(ctx context.Context, u *unit, some []*drawn, tests []string) {
	if len(tests) == 0 || ctx.Err() != nil {
		return
	}
	for _, half := range [][]*drawn{some[:len(some)/2], some[len(some)/2:]} {
		end := t.run(ctx, u, half, tests)
		switch {
		case end.passed || ctx.Err() != nil:
		case len(half) == 1:
			t.caught(half[0], u.ImportPath)
		default:
			t.blame(ctx, u, half, tests)
		}
	}
}

func (t *trial) caught(d *drawn, by string) {
	d.caughtBy = by
	fmt.Fprintf(t.out, "caught    %s, by %s\n", t.floors.say(d.mutant), by)
}
