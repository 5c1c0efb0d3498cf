package main

import (
	"context"
	"os"
	"os/exec"
	"slices"
)

// apart tries the changes that have no switch, most of them of constants: each is built
// by itself, and tried with the tests of all packages that can see it.
func (t *trial) apart(ctx context.Context, c *code) error {
	for _, d := range t.drawn {
		if d.switched || ctx.Err() != nil {
			continue
		}
		if err := t.alone(ctx, d, c.changed(d.mutant)); err != nil {
			return err
		}
	}
	return nil
}

func (t *trial) alone(ctx context.Context, d *drawn, text string) error {
	folder, err := os.MkdirTemp("", "mutate")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	overlay, err := writeOverlay(folder, map[string]string{d.file: text})
	if err != nil {
		return err
	}
	for _, name := range t.inOrder(d.of) {
		cmd := exec.CommandContext(ctx, "go", "test", "-count=1", "-vet=off", "-failfast",
			"-timeout", t.limit.String(), name)
		cmd.Dir = t.module
		cmd.Env = append(os.Environ(), "GOFLAGS="+os.Getenv("GOFLAGS")+" -overlay="+overlay)
		_, err := cmd.CombinedOutput()
		if ctx.Err() != nil {
			return nil
		}
		t.spent += used(cmd)
		if err != nil {
			t.caught(d, name)
			return nil
		}
	}
	return nil
}

// inOrder are the packages with tests that can see a change of one: itself, then the
// cheapest first. Those of tests that build the program do not import it, but come to
// other changes of it.
func (t *trial) inOrder(of string) []string {
	above := t.floors.above(of)
	var own, others []string
	for _, u := range cheapestFirst(t.units()) {
		name := u.ImportPath
		switch {
		case slices.Contains(own, name) || slices.Contains(others, name):
		case name == of:
			own = append(own, name)
		case above[name] || slices.ContainsFunc(t.drawn, func(d *drawn) bool { return d.of == of && u.reached[d.number] }):
			others = append(others, name)
		}
	}
	return append(own, others...)
}
