// Package text makes what people have written fit to go out: to a terminal,
// the title of a document, or the name of a file.
package text

import (
	"regexp"
	"strings"
	"unicode"
	"unicode/utf8"
)

// sequence is an escape sequence of ECMA-48 (5th edition, 5.3, 5.4 and 5.6),
// begun by ESC or by the one control character that stands for ESC and a
// letter: a control string to its end, a control sequence, or any other.
var sequence = regexp.MustCompile("(?:\x1b[PX\\]^_]|[\u0090\u0098\u009d\u009e\u009f])" +
	"[^\x07\x1b\u009c]*(?:\x07|\x1b\\\\|\u009c)?" +
	"|(?:\x1b\\[|\u009b)[0-?]*[ -/]*[@-~]?" +
	"|\x1b[ -/]*[0-~]?")

// breaks are what ends a line or stands for room in it.
var breaks = regexp.MustCompile("[\t-\r\u0085\u2028\u2029]+")

// Line is a text as one line: escape sequences, control characters, what
// steers the direction of writing and bytes that are no UTF-8 are left out;
// tabs and breaks become a blank. Every letter of every script stays.
func Line(text string) string {
	if isClean(text) { // nearly always, and words are measured again and again
		return text
	}
	return without(breaks.ReplaceAllString(unsequenced(text), " "))
}

// Lines does the same and keeps line feeds and tabs.
func Lines(text string) string {
	lines := strings.Split(unsequenced(text), "\n")
	for i, line := range lines {
		cells := strings.Split(line, "\t")
		for k, cell := range cells {
			cells[k] = without(strings.TrimRight(cell, "\r"))
		}
		lines[i] = strings.Join(cells, "\t")
	}
	return strings.Join(lines, "\n")
}

// isClean reports whether there is nothing to leave out.
func isClean(text string) bool {
	return utf8.ValidString(text) && strings.IndexFunc(text, isUnseen) < 0
}

// unsequenced is valid UTF-8 without escape sequences.
func unsequenced(text string) string {
	return sequence.ReplaceAllString(strings.ToValidUTF8(text, ""), "")
}

// without the runes that are not seen themselves.
func without(text string) string {
	return strings.Map(func(r rune) rune {
		if isUnseen(r) {
			return -1
		}
		return r
	}, text)
}

// isUnseen reports whether a rune is a control character or a break, or changes
// how what stands about it is seen: marks, embeddings, overrides and isolates
// of direction (Unicode Standard Annex 9, table 4), byte-order marks,
// annotations and tags.
func isUnseen(r rune) bool {
	return unicode.IsControl(r) || unicode.Is(unicode.Bidi_Control, r) ||
		r == '\u2028' || r == '\u2029' || r == '\ufeff' ||
		r >= '\ufff9' && r <= '\ufffb' || r >= 0xe0000 && r <= 0xe007f
}

// mostOfName is the longest part of a file name, in bytes: file systems take
// 255 for the whole, which has other parts as well.
const mostOfName = 80

// FileName is a part of a file name made of a name: its letters, with the marks
// on them, and its digits in small letters, with hyphens for the rest. It is
// never empty, and holds no separator, dot or blank.
func FileName(name string) string {
	words := strings.FieldsFunc(strings.ToLower(Line(name)), func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r) && !unicode.IsMark(r)
	})
	joined := strings.Join(words, "-")
	if len(joined) > mostOfName {
		joined = strings.TrimRight(strings.ToValidUTF8(joined[:mostOfName], ""), "-")
	}
	if joined == "" {
		return "unnamed"
	}
	return joined
}
