package app

import (
	"ellwand/pieces/dxf"
	"ellwand/pieces/found"
	"ellwand/pieces/tidy"
	"ellwand/pieces/tracing"
)

// importFormat is a kind of file that pieces are read from.
type importFormat struct {
	name string
	// is says by how a file begins that it is one.
	is func(beginning []byte) bool
	// read what was drawn in it. Its errors are *found.TooMuch, *found.NeedUnit, or
	// sentences.
	read func(data []byte, o found.Options) (found.Drawing, error)
}

// importFormats are those that are read; the first whose beginning a file has is its.
var importFormats = []importFormat{
	{"PDF", tidy.IsPDF, tidy.PDF},
	{"SVG", tidy.IsSVG, tidy.SVG},
	{"DXF", dxf.Is, dxf.Read},
	{"a photo in JPEG or PNG", tracing.Is, tracing.Read},
}
