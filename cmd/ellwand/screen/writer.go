package screen

import (
	"bytes"
	"fmt"
	"io"
	"strings"
)

// Writer writes for a screen of so many columns: lines that are wider are broken
// between words. What is written last ends in a new line.
type Writer struct {
	to    io.Writer
	width int
	line  bytes.Buffer // what has no end yet
}

// NewWriter writes to an output in so many columns.
func NewWriter(to io.Writer, width int) *Writer { return &Writer{to: to, width: width} }

// hang is by how much what follows a break is indented, columns
// [source.OwnChoice].
const hang = 2

// Write writes the lines that are whole.
func (w *Writer) Write(text []byte) (int, error) {
	w.line.Write(text)
	end := bytes.LastIndexByte(w.line.Bytes(), '\n')
	if end < 0 {
		return len(text), nil
	}
	whole := string(w.line.Next(end + 1))
	if _, err := io.WriteString(w.to, Fill(whole, w.width, hang)); err != nil {
		return 0, err
	}
	return len(text), nil
}

// beside sets a text in a column beside its label, within a Writer's columns.
func beside(w io.Writer, label string, column int, text string) string {
	label = fmt.Sprintf("%-*s", column, label)
	limit, limited := w.(*Writer)
	if !limited || len(label) > column {
		return label + text
	}
	lines := Fill(strings.Repeat(" ", column)+text, limit.width, 0)
	return label + lines[column:]
}
