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

const (
	// between two columns of a table, columns of the screen.
	between = 2
	// leastCell is the narrowest that a column is made, columns of the screen
	// [source.OwnChoice].
	leastCell = 5
)

// In gives the table for where it is written: cells of the widest columns are
// broken between words until it is no wider than a Writer; where that is not
// enough, each row is a line of its own, with the heads in it.
func (g *Grid) In(w io.Writer) string {
	limit, limited := w.(*Writer)
	if !limited {
		return g.Render()
	}
	widths := g.widths()
	most := map[int]int{}
	for sum(widths) > limit.width {
		widest := 0
		for i, width := range widths {
			if width > widths[widest] {
				widest = i
			}
		}
		if widths[widest] <= leastCell {
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

// widths of the columns as they come.
func (g *Grid) widths() []int {
	out := make([]int, len(g.heads))
	for _, row := range append([]table.Row{g.heads}, g.rows...) {
		for i, cell := range row {
			out[i] = max(out[i], text.LongestLineLen(fmt.Sprint(cell)))
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
		columns = append(columns, table.ColumnConfig{Number: i + 1, WidthMax: width, WidthMaxEnforcer: text.WrapSoft})
	}
	t.SetColumnConfigs(columns)
	head, rest, _ := strings.Cut(t.Render(), "\n-")
	rule, rows, _ := strings.Cut(rest, "\n")
	return head + "\n" + strings.TrimSuffix("-"+rule, strings.Repeat("-", between)) + "\n" + rows
}
