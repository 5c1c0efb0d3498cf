package dxf

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/linework"
)

// kind of an entity.
type kind int

const (
	ignored kind = iota
	lineKind
	textKind
	pointKind
	insertKind
)

// entity is something that is drawn, in the units and the place of its block.
type entity struct {
	kind  kind
	layer string
	// path of a line or a curve.
	path pieces.Path
	// at is the place of a point or of words.
	at orb.Point
	// words and their height.
	words  string
	height float64
	// block that is inserted, and how.
	block string
	maps  []affine
}

// record is the groups of one entity, as they stand.
type record struct {
	s      *scanner
	groups []group
}

func (r record) find(code int32) (group, bool) {
	for _, g := range r.groups {
		if g.code == code {
			return g, true
		}
	}
	return group{}, false
}

func (r record) text(code int32) string {
	if g, ok := r.find(code); ok {
		return r.s.text(g)
	}
	return ""
}

func (r record) whole(code int32) int {
	if g, ok := r.find(code); ok {
		return r.s.whole(g)
	}
	return 0
}

// number of a code; the usual one where it has none.
func (r record) number(code int32, usual float64) (float64, error) {
	if g, ok := r.find(code); ok {
		return r.s.number(g)
	}
	return usual, nil
}

// numbers of several codes, which are 0 where there are none.
func (r record) numbers(codes ...int32) ([]float64, error) {
	out := make([]float64, len(codes))
	for i, code := range codes {
		x, err := r.number(code, 0)
		if err != nil {
			return nil, err
		}
		out[i] = x
	}
	return out, nil
}

func (r record) point(x, y int32) (orb.Point, error) {
	n, err := r.numbers(x, y)
	if err != nil {
		return orb.Point{}, err
	}
	return orb.Point{n[0], n[1]}, nil
}

// line of the file that the entity begins at.
func (r record) line() int {
	if len(r.groups) == 0 {
		return 0
	}
	return int(r.groups[0].line)
}

// fault of the entity, with its line.
func (r record) fault(of linework.Defect, size float64) error {
	return &linework.Fault{Of: of, Line: r.line(), Size: size}
}

// plane is how the plane that an entity is drawn in lies on the drawing; false where
// it is tilted.
func (r record) plane() (affine, bool) {
	n, err := r.numbers(210, 220)
	z, errZ := r.number(230, 1)
	const level = 1e-6
	switch {
	case err != nil || errZ != nil || n[0]*n[0]+n[1]*n[1] > level:
		return identity, false
	case z < 0:
		return affine{a: -1, d: 1}, true
	}
	return identity, true
}

// decoded is the text of a value: of files before 2007 in the letters of Western
// Europe, with letters by their number as \U+00E4.
func decoded(text string) string {
	const longest = 1000 // bytes of words that are read [source.OwnChoice]
	text = text[:min(len(text), longest)]
	if !utf8.ValidString(text) {
		runes := make([]rune, len(text))
		for i := range len(text) {
			runes[i] = rune(text[i])
		}
		text = string(runes)
	}
	for {
		at := strings.Index(text, `\U+`)
		if at < 0 || at+7 > len(text) {
			return text
		}
		var r rune
		if n, err := fmt.Sscanf(text[at+3:at+7], "%04X", &r); n != 1 || err != nil {
			return text
		}
		text = text[:at] + string(r) + text[at+7:]
	}
}
