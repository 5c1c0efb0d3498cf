// Package screen prints results and progress for people at a terminal.
package screen

import (
	"fmt"
	"io"
	"strings"

	"github.com/jedib0t/go-pretty/v6/table"
	"github.com/jedib0t/go-pretty/v6/text"
)

// Grid is a plain table: two spaces between columns, a rule of dashes under the
// heads, no colours.
type Grid struct {
	heads table.Row
	rows  []table.Row
}

// Table begins a table.
func Table(heads ...any) *Grid { return &Grid{heads: heads} }

// Row of a table.
func Row(cells ...any) []any { return cells }

// AppendRow adds a row.
func (g *Grid) AppendRow(cells []any) { g.rows = append(g.rows, cells) }

// Render gives the table as wide as it comes.
func (g *Grid) Render() string { return g.render(nil) }

// between two columns of a table, columns of the screen.
const between = 2

// In gives the table for where it is written: cells of the widest columns are
// broken between words until it is no wider than a Writer; where that is not
// enough, each row is a line of its own, with the heads in it. No word is broken.
func (g *Grid) In(w io.Writer) string {
	limit, limited := w.(*Writer)
	if !limited {
		return g.Render()
	}
	widths, least := g.widths(lineOf), g.widths(longestWord)
	most := map[int]int{}
	for sum(widths) > limit.width {
		widest := -1
		for i, width := range widths {
			if width > least[i] && (widest < 0 || width > widths[widest]) {
				widest = i
			}
		}
		if widest < 0 {
			return g.listed()
		}
		widths[widest]--
		most[widest] = widths[widest]
	}
	return g.render(most)
}

// listed gives each row in words: "open: plies 1, cuts 14".
func (g *Grid) listed() string {
	var out []string
	for _, row := range g.rows {
		var cells []string
		for i, cell := range row {
			text, head := fmt.Sprint(cell), ""
			if i > 0 && i < len(g.heads) {
				head = fmt.Sprint(g.heads[i])
			}
			if text != "" {
				cells = append(cells, strings.TrimSpace(head+" "+text))
			}
		}
		out = append(out, strings.Join(cells, ", "))
	}
	return strings.Join(out, "\n")
}

// lineOf is how wide a cell comes.
func lineOf(cell string) int { return text.LongestLineLen(cell) }

// longestWord is the narrowest that a cell can be made.
func longestWord(cell string) int {
	longest := 0
	for _, line := range strings.Split(cell, "\n") {
		for _, word := range wordsOf(line) {
			longest = max(longest, text.StringWidth(word))
		}
	}
	return longest
}

// widths of the columns, by the widest of their cells.
func (g *Grid) widths(of func(cell string) int) []int {
	out := make([]int, len(g.heads))
	for _, row := range append([]table.Row{g.heads}, g.rows...) {
		for i, cell := range row {
			out[i] = max(out[i], of(fmt.Sprint(cell)))
		}
	}
	return out
}

func sum(widths []int) int {
	sum := between * (len(widths) - 1)
	for _, width := range widths {
		sum += width
	}
	return sum
}

// filled breaks a cell between words.
func filled(cell string, width int) string { return Fill(cell, width, 0) }

// render with the most that some columns, by their index, may be wide.
func (g *Grid) render(most map[int]int) string {
	t := table.NewWriter()
	style := table.StyleDefault
	style.Name = "plain"
	style.Box.PaddingLeft, style.Box.PaddingRight = "", strings.Repeat(" ", between)
	style.Box.MiddleSeparator = ""
	style.Options = table.Options{SeparateHeader: true}
	style.Format.Header = text.FormatDefault
	style.Box.MiddleHorizontal = "-"
	t.SetStyle(style)
	t.SuppressTrailingSpaces()
	t.AppendHeader(g.heads)
	for _, row := range g.rows {
		t.AppendRow(row)
	}
	var columns []table.ColumnConfig
	for i, width := range most {
		columns = append(columns, table.ColumnConfig{Number: i + 1, WidthMax: width, WidthMaxEnforcer: filled})
	}
	t.SetColumnConfigs(columns)
	head, rest, _ := strings.Cut(t.Render(), "\n-")
	rule, rows, _ := strings.Cut(rest, "\n")
	return head + "\n" + strings.TrimSuffix("-"+rule, strings.Repeat("-", between)) + "\n" + rows
}
