package pdfin

import (
	"bytes"
	"strconv"
)

// token is an operand or an operator of what a page draws.
type token struct {
	kind   kind
	number float64
	text   []byte  // of a name, a string, an operator
	list   []token // of an array; of a dictionary keys and values in turn
}

type kind int

const (
	ending kind = iota
	operator
	numeric
	name
	text
	array
	dictionary
	closing // of an array or a dictionary
)

// lexer parts the content of a page into tokens [source.PDF17].
type lexer struct {
	data  []byte
	at    int
	depth int
}

func isWhite(c byte) bool { return c == 0 || c == 9 || c == 10 || c == 12 || c == 13 || c == 32 }

func isDelimiter(c byte) bool { return bytes.IndexByte([]byte("()<>[]{}/%"), c) >= 0 }

func (l *lexer) skip() {
	for l.at < len(l.data) {
		c := l.data[l.at]
		if c == '%' {
			for l.at < len(l.data) && l.data[l.at] != '\n' && l.data[l.at] != '\r' {
				l.at++
			}
			continue
		}
		if !isWhite(c) {
			return
		}
		l.at++
	}
}

// next token; what cannot be made out is passed over.
func (l *lexer) next() token {
	l.skip()
	if l.at >= len(l.data) {
		return token{}
	}
	switch c := l.data[l.at]; c {
	case '/':
		l.at++
		return token{kind: name, text: l.nameText()}
	case '(':
		return token{kind: text, text: l.literal()}
	case '[':
		l.at++
		return token{kind: array, list: l.list()}
	case '<':
		if l.at+1 < len(l.data) && l.data[l.at+1] == '<' {
			l.at += 2
			return token{kind: dictionary, list: l.list()}
		}
		return token{kind: text, text: l.hexadecimal()}
	case ']', '}', ')', '{':
		l.at++
		return token{kind: closing}
	case '>':
		l.at++
		if l.at < len(l.data) && l.data[l.at] == '>' {
			l.at++
		}
		return token{kind: closing}
	}
	word := l.word()
	if x, err := strconv.ParseFloat(string(word), 64); err == nil && isNumber(word) {
		return token{kind: numeric, number: x}
	}
	return token{kind: operator, text: word}
}

func (l *lexer) word() []byte {
	begin := l.at
	for l.at < len(l.data) && !isWhite(l.data[l.at]) && !isDelimiter(l.data[l.at]) {
		l.at++
	}
	if l.at == begin {
		l.at++
	}
	return l.data[begin:l.at]
}

// isNumber keeps out what only other languages read as numbers.
func isNumber(word []byte) bool {
	for _, c := range word {
		if (c < '0' || c > '9') && c != '+' && c != '-' && c != '.' {
			return false
		}
	}
	return true
}

// nameText with its #xx read.
func (l *lexer) nameText() []byte {
	if l.at >= len(l.data) || isWhite(l.data[l.at]) || isDelimiter(l.data[l.at]) {
		return nil // the empty name
	}
	word := l.word()
	if bytes.IndexByte(word, '#') < 0 {
		return word
	}
	var out []byte
	for i := 0; i < len(word); i++ {
		if word[i] == '#' && i+2 < len(word) {
			if c, err := strconv.ParseUint(string(word[i+1:i+3]), 16, 8); err == nil {
				out, i = append(out, byte(c)), i+2
				continue
			}
		}
		out = append(out, word[i])
	}
	return out
}

// mostList of an array, and how deep arrays lie in arrays [source.OwnChoice].
const (
	mostList  = 100_000
	mostDepth = 20
)

func (l *lexer) list() []token {
	var out []token
	l.depth++
	defer func() { l.depth-- }()
	for l.depth <= mostDepth && len(out) < mostList {
		t := l.next()
		if t.kind == ending || t.kind == closing {
			return out
		}
		out = append(out, t)
	}
	return out
}

// literal text in brackets.
func (l *lexer) literal() []byte {
	var out []byte
	l.at++
	for depth := 1; l.at < len(l.data); l.at++ {
		c := l.data[l.at]
		switch c {
		case '(':
			depth++
		case ')':
			if depth--; depth == 0 {
				l.at++
				return out
			}
		case '\\':
			out = l.escaped(out)
			continue
		}
		out = append(out, c)
	}
	return out
}

// escaped letter after a backslash, that the lexer stands on.
func (l *lexer) escaped(out []byte) []byte {
	l.at++
	if l.at >= len(l.data) {
		return out
	}
	c := l.data[l.at]
	if i := bytes.IndexByte([]byte("nrtbf"), c); i >= 0 {
		return append(out, "\n\r\t\b\f"[i])
	}
	if c == '\n' || c == '\r' {
		return out
	}
	if c < '0' || c > '7' {
		return append(out, c)
	}
	value := 0
	for n := 0; n < 3 && l.at < len(l.data) && l.data[l.at] >= '0' && l.data[l.at] <= '7'; n++ {
		value = value*8 + int(l.data[l.at]-'0')
		l.at++
	}
	l.at--
	return append(out, byte(value))
}

func (l *lexer) hexadecimal() []byte {
	l.at++
	var digits []byte
	for l.at < len(l.data) && l.data[l.at] != '>' {
		if c := l.data[l.at]; !isWhite(c) {
			digits = append(digits, c)
		}
		l.at++
	}
	l.at++
	if len(digits)%2 == 1 {
		digits = append(digits, '0')
	}
	var out []byte
	for i := 0; i+1 < len(digits); i += 2 {
		c, err := strconv.ParseUint(string(digits[i:i+2]), 16, 8)
		if err != nil {
			return out
		}
		out = append(out, byte(c))
	}
	return out
}

// skipImage passes over a picture that stands among the operators, after BI.
func (l *lexer) skipImage() {
	for t := l.next(); t.kind != ending; t = l.next() {
		if t.kind == operator && string(t.text) == "ID" {
			break
		}
	}
	for l.at < len(l.data) {
		at := bytes.Index(l.data[l.at:], []byte("EI"))
		if at < 0 {
			l.at = len(l.data)
			return
		}
		begin, end := l.at+at, l.at+at+2
		l.at = end
		if begin > 0 && isWhite(l.data[begin-1]) && (end >= len(l.data) || isWhite(l.data[end])) {
			return
		}
	}
}
