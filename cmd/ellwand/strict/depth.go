package strict

import (
	"bytes"

	"ellwand/cmd/ellwand/limit"
)

// tooDeep is the line, from 1, on which a YAML text is nested deeper than the
// limit; 0 where it never is. Its reader takes memory without bound for deep
// nesting, so that this looks before: at what is indented or stands after dashes,
// and at brackets that a value may begin with. Brackets in quotation marks count
// as well, so that it sees too much rather than too little.
func tooDeep(yaml []byte) int {
	brackets := 0
	var columns []int // of what the line stands under
	for i, line := range bytes.Split(yaml, []byte("\n")) {
		columns = indented(columns, line)
		for at, r := range line {
			switch {
			case (r == '[' || r == '{') && opens(line[:at]):
				brackets++
			case (r == ']' || r == '}') && brackets > 0:
				brackets--
			}
			if brackets > limit.Depth.Most() {
				return i + 1
			}
		}
		if len(columns) > limit.Depth.Most() {
			return i + 1
		}
	}
	return 0
}

// indented are the columns of the values that a line is in: each dash before its
// text is one, and so is the text.
func indented(columns []int, line []byte) []int {
	for at, r := range line {
		if r == ' ' {
			continue
		}
		for len(columns) > 0 && columns[len(columns)-1] >= at {
			columns = columns[:len(columns)-1]
		}
		columns = append(columns, at)
		isDash := r == '-' || r == '?' || r == ':'
		if !isDash || at+1 < len(line) && line[at+1] != ' ' {
			break
		}
	}
	return columns
}

// opens reports whether a bracket may open a list after what stands before it on
// the line, and is no part of a word.
func opens(before []byte) bool {
	return len(before) == 0 || bytes.IndexByte([]byte(" \t[]{},:-?\"'"), before[len(before)-1]) >= 0
}
