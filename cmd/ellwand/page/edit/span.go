package edit

import (
	"strings"

	"go.yaml.in/yaml/v3"
)

// end of a node: the byte behind its last one, comments apart.
func (d *document) end(n *yaml.Node) int {
	switch {
	case n.Kind == yaml.ScalarNode:
		return d.endOfScalar(n)
	case n.Kind == yaml.AliasNode || len(n.Content) == 0 && n.Style&yaml.FlowStyle == 0:
		return d.begin(n)
	case n.Style&yaml.FlowStyle != 0:
		return d.closing(d.begin(n)) + 1
	}
	return d.end(n.Content[len(n.Content)-1])
}

func (d *document) endOfScalar(n *yaml.Node) int {
	at := d.begin(n)
	switch {
	case n.Style&yaml.DoubleQuotedStyle != 0:
		return d.endOfQuoted(at, '"')
	case n.Style&yaml.SingleQuotedStyle != 0:
		return d.endOfQuoted(at, '\'')
	case n.Style&(yaml.LiteralStyle|yaml.FoldedStyle) != 0:
		return d.endOfBlock(at)
	case strings.HasPrefix(d.text[at:], n.Value):
		return at + len(n.Value)
	}
	return d.endOfPlain(at, n.Value)
}

// endOfQuoted is behind the mark that closes what begins at a byte.
func (d *document) endOfQuoted(at int, mark byte) int {
	for i := at + 1; i < len(d.text); i++ {
		switch {
		case d.text[i] == '\\' && mark == '"':
			i++
		case d.text[i] == mark && mark == '\'' && i+1 < len(d.text) && d.text[i+1] == mark:
			i++
		case d.text[i] == mark:
			return i + 1
		}
	}
	return len(d.text)
}

// endOfBlock is the end of the last line that belongs to a text below its key.
func (d *document) endOfBlock(at int) int {
	lead := strings.TrimRight(d.text[d.startOfLine(at):at], " ")
	indent := len(lead) - len(strings.TrimLeft(lead, " -")) // of the key that it stands behind
	if strings.HasSuffix(lead, "-") {
		indent = len(lead) - 1
	}
	end := d.endOfLine(at)
	for next := d.after(end); next < len(d.text); next = d.after(d.endOfLine(next)) {
		line := d.text[next:d.endOfLine(next)]
		if strings.TrimSpace(line) == "" {
			continue
		}
		if indentOf(line) <= indent {
			break
		}
		end = d.endOfLine(next)
	}
	return end
}

// endOfPlain is the end of a text without marks that runs over several lines.
func (d *document) endOfPlain(at int, value string) int {
	for _, word := range strings.Fields(value) {
		if next := strings.Index(d.text[at:], word); next >= 0 {
			at += next + len(word)
		}
	}
	return at
}

// closing is the bracket that closes the one at a byte.
func (d *document) closing(at int) int {
	depth := 0
	for i := at; i < len(d.text); i++ {
		switch c := d.text[i]; {
		case (c == '"' || c == '\'') && strings.IndexByte(" \t\n[{,:", d.text[i-1]) >= 0:
			i = d.endOfQuoted(i, c) - 1
		case c == '#' && (d.text[i-1] == ' ' || d.text[i-1] == '\n'):
			i = d.endOfLine(i)
		case c == '[' || c == '{':
			depth++
		case c == ']' || c == '}':
			if depth--; depth == 0 {
				return i
			}
		}
	}
	return len(d.text) - 1
}

// after the ending of a line.
func (d *document) after(endOfLine int) int {
	for endOfLine < len(d.text) && d.text[endOfLine] != '\n' {
		endOfLine++
	}
	return min(endOfLine+1, len(d.text))
}

func indentOf(line string) int { return len(line) - len(strings.TrimLeft(line, " ")) }
