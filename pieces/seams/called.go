package seams

import (
	"strconv"
	"strings"
)

// byWords finds the named seams by their words.
var byWords = func() map[string]Name {
	found := make(map[string]Name, len(named))
	for _, n := range named {
		found[n.String()] = n
	}
	return found
}()

// Called reads the name back from its words, as String has them. Words that are
// those of no seam here name one of people's own.
func Called(words string) Name {
	if n, ok := byWords[words]; ok {
		return n
	}
	rest, image := strings.CutSuffix(words, imageWords)
	rest, order := numbered(rest)
	kind := whole
	for _, p := range []extent{mouth, dart} {
		if before, ok := strings.CutSuffix(rest, extentWords[p]); ok {
			rest, kind = before, p
		}
	}
	if kind == whole && order > 0 {
		kind = stretch
	}
	of, ok := byWords[rest]
	if !ok {
		of = Name{text: rest}
	}
	if rest == "" || of.with(kind, order).String() != strings.TrimSuffix(words, imageWords) {
		return Name{text: words}
	}
	n := of.with(kind, order)
	n.image = image
	return n
}

// numbered cuts the number off the end of words; 0 where there is none.
func numbered(words string) (rest string, order int) {
	at := strings.LastIndexByte(words, ' ')
	if at < 0 {
		return words, 0
	}
	order, err := strconv.Atoi(words[at+1:])
	if err != nil || order < 1 {
		return words, 0
	}
	return words[:at], order
}
