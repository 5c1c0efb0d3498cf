package screen

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"github.com/jedib0t/go-pretty/v6/text"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func TestFill(t *testing.T) {
	tests := []struct {
		name, line string
		width      int
		want       string
	}{
		{"short enough", "  a b", 5, "  a b"},
		{"between words", "one two three", 8, "one two\n  three"},
		{"indented", "  one two three", 9, "  one two\n    three"},
		{"a word too long", "a unbreakable", 8, "a\n  unbreakable"},
		{"a number keeps its unit", "takes 1.27 m of it", 10, "takes\n  1.27 m\n  of it"},
		{"a mixed number", "buy 2 1/4 yd (2.00 m) now", 12, "buy 2 1/4 yd\n  (2.00 m)\n  now"},
		{"and its digits", "in all 1\u202f224.47", 10, "in all\n  1\u202f224.47"},
		{"several lines", "one two\nthree four", 8, "one two\nthree\n  four"},
		{"beside a label", " ab  one two three", 13, " ab  one two\n     three"},
		{"beside a long label", "abcdefgh  one two", 13, "abcdefgh one\n  two"},
		{"wide letters", "布 布 布", 5, "布 布\n  布"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) { assert.Equal(t, tt.want, Fill(tt.line, tt.width, 2)) })
	}
}

func TestWidthOfWhatIsNoTerminal(t *testing.T) {
	t.Setenv("COLUMNS", "")
	assert.Equal(t, 80, Width(&bytes.Buffer{}))
	t.Setenv("COLUMNS", "120")
	assert.Equal(t, 120, Width(&bytes.Buffer{}))
	t.Setenv("COLUMNS", "12")
	assert.Equal(t, 40, Width(&bytes.Buffer{}))
}

// Where a table is broken, no word of it is; where that is not enough, its rows are
// listed.
func TestTablesBreakNoWords(t *testing.T) {
	grid := Table("lay", "efficiency", "to buy")
	grid.AppendRow(Row("folded along the warp", "78.7 %", "1.10 m (1 1/4 yd)"))
	in := func(width int) string {
		var out bytes.Buffer
		w := NewWriter(&out, width)
		fmt.Fprintln(w, grid.In(w))
		return out.String()
	}
	assert.Equal(t, "lay          efficiency  to buy\n"+strings.Repeat("-", 36)+"\nfolded       78.7 %      1.10 m\n"+
		"along the                (1 1/4 yd)\nwarp\n", in(36))
	assert.Equal(t, "folded along the warp,\n  efficiency 78.7 %, to buy\n  1.10 m (1 1/4 yd)\n", in(28))
}

// No line is wider than the screen.
func TestNothingIsWiderThanTheScreen(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		width := rapid.IntRange(40, 200).Draw(t, "width")
		cell := rapid.StringMatching(`([a-z]{1,9} ){0,6}[a-z]{1,9}`)
		columns := rapid.IntRange(1, 8).Draw(t, "columns")
		row := func(label string) []any {
			out := make([]any, columns)
			for i := range out {
				out[i] = cell.Draw(t, label)
			}
			return out
		}
		grid := Table(row("head")...)
		for range rapid.IntRange(1, 4).Draw(t, "rows") {
			grid.AppendRow(row("cell"))
		}
		var out bytes.Buffer
		w := NewWriter(&out, width)
		fmt.Fprintln(w, grid.In(w))
		for _, line := range strings.Split(out.String(), "\n") {
			if text.StringWidth(line) > width {
				t.Fatalf("%d columns of %d: %s", text.StringWidth(line), width, line)
			}
		}
	})
}
