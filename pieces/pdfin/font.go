package pdfin

import (
	"unicode/utf16"

	"github.com/pdfcpu/pdfcpu/pkg/pdfcpu/types"
	"golang.org/x/text/encoding/charmap"
)

// font says which letters the codes of a text stand for.
type font struct {
	wide    bool // two bytes a letter
	letters map[int]string
}

// mostLetters of a font [source.PDF17, annex C: 65,535 codes].
const mostLetters = 1 << 16

// fontOf the resources by its name.
func (d *document) fontOf(resources types.Dict, name string) (*font, error) {
	dict := d.dict(d.named(resources, "Font", name))
	out := &font{}
	if dict == nil {
		return out, nil
	}
	sub, _ := dict.Find("Subtype")
	out.wide = d.name(sub) == "Type0"
	table, ok := dict.Find("ToUnicode")
	if !ok {
		return out, nil
	}
	content, err := d.content(table)
	if err != nil {
		return out, err
	}
	out.letters = lettersOf(content)
	return out, nil
}

// lettersOf a table of codes [source.PDF17, 9.10.3].
func lettersOf(content []byte) map[int]string {
	out := map[int]string{}
	l := &lexer{data: content}
	var before operands
	for t := l.next(); t.kind != ending; t = l.next() {
		if t.kind != operator {
			if len(before) < mostLetters {
				before = append(before, t)
			}
			continue
		}
		switch string(t.text) {
		case "endbfchar":
			for i := 0; i+1 < len(before); i += 2 {
				set(out, code(before[i].text), lettersIn(before[i+1].text))
			}
		case "endbfrange":
			for i := 0; i+2 < len(before); i += 3 {
				setRange(out, code(before[i].text), code(before[i+1].text), before[i+2])
			}
		}
		before = before[:0]
	}
	return out
}

func set(out map[int]string, code int, letters string) {
	if len(out) < mostLetters {
		out[code] = letters
	}
}

func setRange(out map[int]string, from, to int, target token) {
	if target.kind == array {
		for i, t := range target.list {
			set(out, from+i, lettersIn(t.text))
		}
		return
	}
	first := []rune(lettersIn(target.text))
	if len(first) == 0 {
		return
	}
	for c := from; c <= to && c-from < mostLetters; c++ {
		last := len(first) - 1
		letters := append([]rune{}, first...)
		letters[last] += rune(c - from)
		set(out, c, string(letters))
	}
}

func code(text []byte) int {
	n := 0
	for _, c := range text[:min(len(text), 4)] {
		n = n<<8 | int(c)
	}
	return n
}

func lettersIn(text []byte) string {
	var units []uint16
	for i := 0; i+1 < len(text) && i < 64; i += 2 {
		units = append(units, uint16(text[i])<<8|uint16(text[i+1]))
	}
	return string(utf16.Decode(units))
}

// words of a text in the font. Codes that no table explains are those of Windows, or
// nothing in a font of two bytes a letter.
func (f *font) words(text []byte) string {
	if f == nil {
		f = &font{}
	}
	out := ""
	step := 1
	if f.wide {
		step = 2
	}
	for i := 0; i+step <= len(text); i += step {
		c := code(text[i : i+step])
		if letters, ok := f.letters[c]; ok {
			out += letters
		} else if !f.wide && f.letters == nil {
			out += string(charmap.Windows1252.DecodeByte(byte(c)))
		}
	}
	return out
}
