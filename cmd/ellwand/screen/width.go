package screen

import (
	"io"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"github.com/jedib0t/go-pretty/v6/text"
	"golang.org/x/term"
)

const (
	// pipedWidth is how wide what goes to no terminal is, columns
	// [source.OwnChoice].
	pipedWidth = 80
	// leastWidth is what a narrower terminal is taken for, columns
	// [source.OwnChoice].
	leastWidth = 40
)

// Width is how many columns there are to write on: those of the terminal that
// an output is, or 80 where it is none. The variable COLUMNS says it for both.
func Width(out io.Writer) int {
	if columns, err := strconv.Atoi(os.Getenv("COLUMNS")); err == nil && columns > 0 {
		return max(leastWidth, columns)
	}
	if file, ok := terminal(out); ok {
		if columns, _, err := term.GetSize(int(file.Fd())); err == nil && columns > 0 {
			return max(leastWidth, columns)
		}
	}
	return pipedWidth
}

// terminal returns an output that is one.
func terminal(out io.Writer) (*os.File, bool) {
	file, isFile := out.(*os.File)
	return file, isFile && term.IsTerminal(int(file.Fd()))
}

// IsReadTerminal says whether an input is a terminal, where somebody can be asked.
func IsReadTerminal(in io.Reader) bool {
	file, isFile := in.(*os.File)
	return isFile && term.IsTerminal(int(file.Fd()))
}

// IsTerminal says whether an output is a terminal that can redraw a line; one
// that calls itself dumb cannot.
func IsTerminal(out io.Writer) bool {
	_, is := terminal(out)
	return is && os.Getenv("TERM") != "dumb"
}

// Fill breaks each line of a text between words so that none is wider than so
// many columns; what follows a break is indented by as much as the line itself,
// and by hang more, or stands below the text beside a label. A single word that is
// wider is left whole.
func Fill(lines string, width, hang int) string {
	var out []string
	for _, line := range strings.Split(lines, "\n") {
		out = append(out, fillLine(line, width, hang)...)
	}
	return strings.Join(out, "\n")
}

// units stay on the line of their number, and so do fractions.
var units = []string{"mm", "cm", "m", "in", "yd", "%", "s"}

// wordsOf are the parts of a line between which it may be broken. A space that
// groups the digits of a number is none of ' '.
func wordsOf(line string) []string {
	var out []string
	for _, word := range strings.FieldsFunc(line, func(r rune) bool { return r == ' ' }) {
		last := len(out) - 1
		joins := slices.Contains(units, strings.TrimRight(word, ".,;:)")) || isFraction(word)
		if joins && last >= 0 && endsInDigit(out[last]) {
			out[last] += " " + word
			continue
		}
		out = append(out, word)
	}
	return out
}

// isFraction says that a word is a fraction, as of a mixed number: 1/4.
func isFraction(word string) bool {
	above, below, both := strings.Cut(word, "/")
	return both && above != "" && below != "" && strings.Trim(above+below, "0123456789") == ""
}

func endsInDigit(word string) bool {
	last := word[len(word)-1]
	return '0' <= last && last <= '9'
}

func fillLine(line string, width, hang int) []string {
	if text.StringWidth(line) <= width {
		return []string{line}
	}
	begin := label.FindString(line)
	column := text.StringWidth(begin)
	if column == 0 || column > width/2 { // beside a longer label there is no room
		begin = line[:len(line)-len(strings.TrimLeft(line, " "))]
		column = len(begin) + hang
	}
	var out []string
	current, empty := begin, true
	for _, word := range wordsOf(line[len(begin):]) {
		if !empty && text.StringWidth(current)+1+text.StringWidth(word) > width {
			out = append(out, current)
			current, empty = strings.Repeat(" ", column), true
		}
		if !empty {
			current += " "
		}
		current, empty = current+word, false
	}
	return append(out, current)
}

// label is what stands apart from the text to its right by two spaces or more, as in
// a list of commands.
var label = regexp.MustCompile(`^ *\S+(?: \S+)* {2,}`)
