package main

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/limit"
)

// listed is so many entries in brackets, each with its number.
func listed(entries int, format string) string {
	var out strings.Builder
	for i := range entries {
		fmt.Fprintf(&out, format+", ", i)
	}
	return "[" + out.String() + "]"
}

// More of anything than the table of the limits allows is refused with its sentence,
// before any work is done. What bounds an instance is tried in cmd/nestbench, and
// the corners of a lay in cmd/ellwand/job.
func TestEveryLimitHolds(t *testing.T) {
	const (
		plain = "job: a\nunits: cm\ngarments: [{name: g, pieces: [{name: p, width: 9, height: 9}]}]\n" +
			"cloths: [{name: shell, width: 140}]\n"
		sized = "job: a\nunits: cm\ntable: women\nsize: 12\ngarments: [{name: g, skirt: {}}]\ncloths: [{name: shell, " +
			"width: 140}]\n"
		pieces = "pieces_file: 1\nunits: cm\n"
		cloth  = "job: a\nunits: cm\ncloths: [{name: shell, width: 140}]\n"
	)
	over := func(l limit.Limit, format string) string { return listed(l.Most()+1, format) }
	// many are the texts of an option with one entry too many.
	many := func(l limit.Limit) string { return strings.Repeat("1,", l.Most()) + "1" }
	tests := []struct {
		of   limit.Limit
		text string
		args []string
	}{
		{limit.JobSize, strings.Repeat("#", limit.JobSize.Most()+1), nil},
		{limit.Depth, "a: " + strings.Repeat("[", limit.Depth.Most()+1), nil},
		{limit.Text, "job: " + strings.Repeat("ä", limit.Text.Most()+1), nil},
		{limit.Paragraph, "quote: {terms: [" + strings.Repeat("a", limit.Paragraph.Most()+1) + "]}", nil},
		{limit.Wearers, "wearers: " + over(limit.Wearers, "{name: w%d}"), nil},
		{limit.Garments, "garments: " + over(limit.Garments, "{name: g%d}"), nil},
		{limit.Made, cloth + "wearers: [{name: a}, {name: b}]\n" +
			"garments: [{name: g, quantity: 5001, pieces: [{name: p, width: 1, height: 1}]}]", nil},
		{limit.Pieces, "garments: [{name: g, pieces: " + over(limit.Pieces, "{name: p%d}") + "}]", nil},
		{limit.Pieces, plain, []string{"export", "JOB", "-o", "OUT/p.yaml", "--piece", many(limit.Pieces)}},
		{limit.Pieces, plain, []string{"show", "JOB", "--piece", many(limit.Pieces)}},
		{limit.PiecesFile, pieces + strings.Repeat("#", limit.PiecesFile.Most()), []string{"show", "JOB"}},
		{limit.Points, pieces + "pieces: [{name: a, outline: " + over(limit.Points, "[%d, 1]") + "}]",
			[]string{"show", "JOB"}},
		{limit.Marks, pieces + "pieces: [{name: a, marks: " + over(limit.Marks, "{name: m%d}") + "}]",
			[]string{"show", "JOB"}},
		{limit.Parts, "garments: [{name: g, parts: " + over(limit.Parts, "{name: p%d}") + "}]", nil},
		{limit.Parts, "garments: [{name: g, linings: " + over(limit.Parts, "{name: p%d}") + "}]", nil},
		{limit.Parts, "garments: [{name: g, interfacings: " + over(limit.Parts, "{name: p%d}") + "}]", nil},
		{limit.Cloths, "cloths: " + over(limit.Cloths, "{name: c%d}"), nil},
		{limit.Widths, "cloths: [{widths: " + over(limit.Widths, "%d") + "}]", nil},
		{limit.Widths, plain, []string{"estimate", "JOB", "--widths", many(limit.Widths)}},
		{limit.Widths, plain, append([]string{"marker", "JOB", "-o", "OUT/plan.pdf"},
			strings.Fields(strings.Repeat("--width 140cm ", limit.Widths.Most()+1))...)},
		{limit.Offers, "cloths: [{offers: " + over(limit.Offers, "{name: o%d}") + "}]", nil},
		{limit.Offers, plain, []string{"quote", "JOB", "--offer", many(limit.Offers)}},
		{limit.Offers, plain, []string{"marker", "JOB", "-o", "OUT/plan.pdf", "--offer", many(limit.Offers)}},
		{limit.Remnants, "cloths: [{remnants: " + over(limit.Remnants, "%d") + "}]", nil},
		{limit.Flaws, "cloths: [{flaws: " + over(limit.Flaws, "{from: %d}") + "}]", nil},
		{limit.Corners, "cloths: [{flaws: [{outline: " + over(limit.Corners, "[%d, 1]") + "}]}]", nil},
		{limit.Sizes, sized, []string{"draft", "JOB", "-o", "OUT/pieces", "--sizes", many(limit.Sizes)}},
		{limit.Sizes, sized, []string{"print", "JOB", "-o", "OUT/pieces.pdf", "--sizes", many(limit.Sizes)}},
		{limit.Sizes, sized, []string{"estimate", "JOB", "--table", "--sizes", many(limit.Sizes)}},
		{limit.List, "body: {" + strings.Trim(over(limit.List, "m%d: 1"), "[]") + "}", nil},
		{limit.Outputs, plain, []string{"estimate", "JOB", "--table", "-o", many(limit.Outputs)}},
		{limit.Arguments, plain, strings.Fields("estimate JOB" + strings.Repeat(" --why", limit.Arguments.Most()))},
		{limit.Argument, plain, []string{"estimate", "JOB", "--lay", strings.Repeat("x", limit.Argument.Most()+1)}},
		{limit.PiecesOfLay, cloth + "garments: [{name: g, quantity: 2, pieces: [{name: p, width: 1, height: 1, " +
			"cut: 5001}]}]", nil},
		{limit.Faults, strings.NewReplacer("[", "", "]", "", ", ", "\n").Replace(listed(limit.Faults.Most()+1, "k%d: 1")),
			nil},
		{limit.LayoutSize, strings.Repeat("#", limit.LayoutSize.Most()+1), []string{"estimate", "OTHER", "--from", "JOB"}},
		{limit.Layouts, plain, []string{"estimate", "JOB", "--from", many(limit.Layouts)}},
		{limit.Workers, plain, []string{"estimate", "JOB", "--workers", fmt.Sprint(limit.Workers.Most() + 1)}},
		{limit.Passes, plain, []string{"estimate", "JOB", "--passes", fmt.Sprint(limit.Passes.Most() + 1)}},
	}
	tried := map[limit.Limit]bool{
		limit.CornersOfLay: true, limit.InstanceSize: true, limit.Items: true, limit.Demand: true, limit.Vertices: true,
		limit.Orientations: true, limit.VerticesOfAll: true,
	}
	t.Setenv("COLUMNS", "1000")
	for k, tt := range tests {
		tried[tt.of] = true
		t.Run(fmt.Sprint(k), func(t *testing.T) {
			folder := t.TempDir()
			job := filepath.Join(folder, "job.yaml")
			require.NoError(t, os.WriteFile(job, []byte(tt.text), 0o600))
			other := filepath.Join(folder, "other.yaml")
			require.NoError(t, os.WriteFile(other, []byte(plain), 0o600))
			args := []string{"estimate", job}
			if tt.args != nil {
				args = make([]string, len(tt.args))
				for i, arg := range tt.args {
					args[i] = strings.NewReplacer("JOB", job, "OUT", folder, "OTHER", other).Replace(arg)
				}
			}
			var out, errs bytes.Buffer
			status := run(context.Background(), args, &out, &errs)
			assert.Equal(t, statusBad, status)
			assert.Empty(t, out.String())
			assert.Contains(t, errs.String(), tt.of.Sentence().String(), tt.args)
		})
	}
	for l := limit.JobSize; l <= limit.VerticesOfAll; l++ {
		assert.True(t, tried[l], "no test goes over: %s", l.Sentence().String())
	}
}
