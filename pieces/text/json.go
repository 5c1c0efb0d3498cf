package text

import (
	"bytes"
	"fmt"
	"unicode/utf16"
)

// JSON is the same document with every rune that is not seen itself written as its
// number, so that a terminal that shows it is not steered. Line feeds between values
// stay.
func JSON(document []byte) []byte {
	if bytes.IndexFunc(document, isSteering) < 0 {
		return document
	}
	var out bytes.Buffer
	for _, r := range string(document) {
		if !isSteering(r) {
			out.WriteRune(r)
			continue
		}
		for _, unit := range utf16.AppendRune(nil, r) {
			fmt.Fprintf(&out, `\u%04x`, unit)
		}
	}
	return out.Bytes()
}

// isSteering tells what may stand in a string of JSON only from what stands between
// values.
func isSteering(r rune) bool { return r != '\n' && r != '\t' && r != '\r' && isUnseen(r) }
