package svgin

import (
	"strconv"

	"ellwand/pieces/linework"
)

// scanner reads numbers and letters off a text, as SVG parts them: by white space, a
// comma, or nothing where the next sign or point tells them apart.
type scanner struct {
	text string
	at   int
}

func (s *scanner) space() {
	for s.at < len(s.text) && isSpace(s.text[s.at]) {
		s.at++
	}
}

func isSpace(c byte) bool { return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f' }

// comma and white space about it.
func (s *scanner) comma() {
	s.space()
	if s.at < len(s.text) && s.text[s.at] == ',' {
		s.at++
		s.space()
	}
}

func (s *scanner) done() bool {
	s.space()
	return s.at >= len(s.text)
}

// peek at the next byte; 0 at the end.
func (s *scanner) peek() byte {
	if s.at >= len(s.text) {
		return 0
	}
	return s.text[s.at]
}

// startsNumber says that a number comes next.
func (s *scanner) startsNumber() bool {
	c := s.peek()
	return c >= '0' && c <= '9' || c == '+' || c == '-' || c == '.'
}

func (s *scanner) digits() (n int) {
	for s.at < len(s.text) && s.text[s.at] >= '0' && s.text[s.at] <= '9' {
		s.at++
		n++
	}
	return n
}

// number by the grammar of SVG, which knows neither hexadecimal ones nor infinity.
func (s *scanner) number() (float64, error) {
	begin := s.at
	if c := s.peek(); c == '+' || c == '-' {
		s.at++
	}
	digits := s.digits()
	if s.peek() == '.' {
		s.at++
		digits += s.digits()
	}
	if digits == 0 {
		return 0, &linework.Fault{Of: linework.NumberMissing, Text: s.from(begin)}
	}
	if c := s.peek(); c == 'e' || c == 'E' {
		back := s.at
		s.at++
		if c := s.peek(); c == '+' || c == '-' {
			s.at++
		}
		if s.digits() == 0 { // as in 2em
			s.at = back
		}
	}
	x, err := strconv.ParseFloat(s.text[begin:s.at], 64)
	if err != nil {
		return 0, &linework.Fault{Of: linework.NumberTooLarge, Text: s.text[begin:s.at]}
	}
	return x, nil
}

// flag is a single 0 or 1.
func (s *scanner) flag() (bool, error) {
	c := s.peek()
	if c != '0' && c != '1' {
		return false, &linework.Fault{Of: linework.BitMissing, Text: s.from(s.at)}
	}
	s.at++
	return c == '1', nil
}

// from is the text there, a few letters of it.
func (s *scanner) from(at int) string {
	rest := s.text[min(at, len(s.text)):]
	return rest[:min(len(rest), 12)]
}

// numbers of a list.
func numbers(text string) ([]float64, error) {
	s := scanner{text: text}
	var out []float64
	for !s.done() {
		x, err := s.number()
		if err != nil {
			return nil, err
		}
		out = append(out, x)
		s.comma()
	}
	return out, nil
}
