// Package dxf reads drawings and pieces from DXF files and writes them: plain drawings
// of lines and curves, R12 to 2018 in ASCII, and sewn-product patterns as ASTM D6673
// (earlier ANSI/AAMA-292) lays them down in layers and texts [source.D6673].
//
// Lengths are millimetres.
package dxf

import (
	"bytes"

	"ellwand/pieces/found"
	"ellwand/pieces/linework"
)

// binaryMark stands in the first bytes of a binary DXF file.
var binaryMark = []byte("Binary DXF\r\n\x1a\x00")

// Is says by its beginning that a file is one of DXF.
func Is(beginning []byte) bool {
	if bytes.Contains(beginning[:min(len(beginning), 40)], binaryMark) {
		return true
	}
	const comments = 50 // pairs that may stand before the first section
	s := newScanner(beginning)
	for range comments {
		g, ok := s.next()
		if !ok {
			return false
		}
		if g.code != commentCode {
			return g.code == 0 && s.is(g, "SECTION")
		}
	}
	return false
}

// Read finds the pieces in a DXF file. The errors are *found.TooMuch, *found.NeedUnit
// or *linework.Fault.
func Read(data []byte, o found.Options) (found.Drawing, error) {
	if err := o.Limits.Check(found.Bytes, len(data)); err != nil {
		return found.Drawing{}, err
	}
	if bytes.Contains(data[:min(len(data), 40)], binaryMark) {
		return found.Drawing{}, &linework.Fault{Of: linework.Binary}
	}
	f, err := parse(data, o.Limits)
	if err != nil {
		return found.Drawing{}, err
	}
	if f.isPattern() {
		return f.pattern(o)
	}
	return f.plain(o)
}
