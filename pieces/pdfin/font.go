package pdfin

import (
	"cmp"
	"slices"
	"sort"
	"unicode/utf16"

	"github.com/pdfcpu/pdfcpu/pkg/pdfcpu/types"
	"golang.org/x/text/encoding/charmap"
)

// font says which letters the codes of a text stand for.
type font struct {
	wide  bool    // two bytes a letter
	table []coded // in the order of the codes; nil where the file has none
}

// coded are letters that stand one after the other for codes: the letters of the first,
// of which the last goes on.
type coded struct {
	from, to int
	letters  []rune
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
	out.table = tableOf(content)
	return out, nil
}

// tableOf codes [source.PDF17, 9.10.3].
func tableOf(content []byte) []coded {
	out := []coded{}
	l := &lexer{data: content}
	var before operands
	for t := l.next(); t.kind != ending && len(out) < mostLetters; t = l.next() {
		if t.kind != operator {
			if len(before) < mostLetters {
				before = append(before, t)
			}
			continue
		}
		switch string(t.text) {
		case "endbfchar":
			for i := 0; i+1 < len(before); i += 2 {
				c := code(before[i].text)
				out = append(out, coded{c, c, lettersIn(before[i+1].text)})
			}
		case "endbfrange":
			for i := 0; i+2 < len(before); i += 3 {
				out = append(out, rangeOf(code(before[i].text), code(before[i+1].text), before[i+2])...)
			}
		}
		before = before[:0]
	}
	slices.SortStableFunc(out, func(a, b coded) int { return cmp.Compare(a.from, b.from) })
	return out
}

func rangeOf(from, to int, target token) []coded {
	if target.kind != array {
		return []coded{{from, to, lettersIn(target.text)}}
	}
	var out []coded
	for i, t := range target.list[:min(len(target.list), max(0, to-from+1))] {
		out = append(out, coded{from + i, from + i, lettersIn(t.text)})
	}
	return out
}

func code(text []byte) int {
	n := 0
	for _, c := range text[:min(len(text), 4)] {
		n = n<<8 | int(c)
	}
	return n
}

func lettersIn(text []byte) []rune {
	var units []uint16
	for i := 0; i+1 < len(text) && i < 64; i += 2 {
		units = append(units, uint16(text[i])<<8|uint16(text[i+1]))
	}
	return utf16.Decode(units)
}

// words of a text in the font. Codes that no table explains are those of Windows, or
// nothing in a font of two bytes a letter.
func (f *font) words(text []byte) string {
	if f == nil {
		f = &font{}
	}
	var out []rune
	step := 1
	if f.wide {
		step = 2
	}
	for i := 0; i+step <= len(text); i += step {
		c := code(text[i : i+step])
		if f.table != nil {
			out = append(out, f.letters(c)...)
		} else if !f.wide {
			out = append(out, charmap.Windows1252.DecodeByte(byte(c)))
		}
	}
	return string(out)
}

// letters of a code by the table.
func (f *font) letters(c int) []rune {
	i := sort.Search(len(f.table), func(i int) bool { return f.table[i].from > c }) - 1
	if i < 0 || c > f.table[i].to || len(f.table[i].letters) == 0 {
		return nil
	}
	first := f.table[i]
	out := slices.Clone(first.letters)
	out[len(out)-1] += rune(c - first.from)
	return out
}
