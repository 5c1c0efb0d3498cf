// Package screen prints results and progress for people at a terminal.
package screen

import (
	"github.com/jedib0t/go-pretty/v6/table"
	"github.com/jedib0t/go-pretty/v6/text"
)

// Table begins a plain table: two spaces between columns, a rule of dashes
// under the heads, no colours.
func Table(heads ...any) table.Writer {
	t := table.NewWriter()
	style := table.StyleDefault
	style.Name = "plain"
	style.Box.PaddingLeft, style.Box.PaddingRight = "", "  "
	style.Box.MiddleSeparator = ""
	style.Options = table.Options{SeparateHeader: true}
	style.Format.Header = text.FormatDefault
	style.Box.MiddleHorizontal = "-"
	t.SetStyle(style)
	t.SuppressTrailingSpaces()
	t.AppendHeader(heads)
	return t
}

// Row of a table.
func Row(cells ...any) table.Row { return cells }
