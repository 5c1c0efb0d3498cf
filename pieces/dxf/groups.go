package dxf

import (
	"bytes"
	"math"
	"strconv"

	"ellwand/pieces/linework"
)

// group is a pair of lines: a code, which says what the value is, and the value, which
// is the bytes from begin to end.
type group struct {
	code       int32
	begin, end int32
	line       int32 // of the value, from 1
}

// commentCode heads a comment.
const commentCode = 999

// scanner reads groups one after the other.
type scanner struct {
	data []byte
	at   int
	line int
	err  error
}

func newScanner(data []byte) *scanner {
	s := &scanner{data: data}
	if bytes.HasPrefix(data, []byte("\xef\xbb\xbf")) {
		s.at = 3
	}
	return s
}

// readLine is the next line, blanks around it left out.
func (s *scanner) readLine() (begin, end int, ok bool) {
	if s.at >= len(s.data) {
		return 0, 0, false
	}
	begin, end = s.at, len(s.data)
	s.at = end
	if n := bytes.IndexByte(s.data[begin:], '\n'); n >= 0 {
		end = begin + n
		s.at = end + 1
	}
	s.line++
	for begin < end && isBlank(s.data[begin]) {
		begin++
	}
	for end > begin && isBlank(s.data[end-1]) {
		end--
	}
	return begin, end, true
}

func isBlank(b byte) bool { return b == ' ' || b == '\t' || b == '\r' }

// next group; false at the end, or where something is wrong, which err has.
func (s *scanner) next() (group, bool) {
	begin, end, ok := s.readLine()
	for ok && begin == end { // empty lines between groups
		begin, end, ok = s.readLine()
	}
	if !ok {
		return group{}, false
	}
	const longest = 5 // digits of a code, with its sign
	code, err := strconv.Atoi(string(s.data[begin:min(end, begin+longest+1)]))
	if err != nil || end-begin > longest {
		s.err = &linework.Fault{Of: linework.NoCode, Line: s.line}
		return group{}, false
	}
	begin, end, ok = s.readLine()
	if !ok {
		s.err = &linework.Fault{Of: linework.CutInGroup, Number: s.line}
		return group{}, false
	}
	return group{int32(code), int32(begin), int32(end), int32(s.line)}, true
}

func (s *scanner) is(g group, text string) bool { return string(s.data[g.begin:g.end]) == text }

func (s *scanner) text(g group) string { return string(s.data[g.begin:g.end]) }

// farthest is how large a number of a drawing may be [source.OwnChoice].
const farthest = 1e9

// number of a group.
func (s *scanner) number(g group) (float64, error) {
	const longest = 60 // bytes
	if g.end-g.begin <= longest {
		x, err := strconv.ParseFloat(s.text(g), 64)
		if err == nil && math.Abs(x) <= farthest {
			return x, nil
		}
	}
	return 0, &linework.Fault{Of: linework.FarNumber, Line: int(g.line), Text: s.text(g)}
}

// whole number of a group; 0 of what is none.
func (s *scanner) whole(g group) int {
	n, _ := strconv.Atoi(s.text(g))
	return n
}
