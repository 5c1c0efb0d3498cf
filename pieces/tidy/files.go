package tidy

import (
	"bytes"

	"ellwand/pieces/found"
	"ellwand/pieces/linework"
	"ellwand/pieces/pdfin"
	"ellwand/pieces/svg"
	"ellwand/pieces/svgin"
)

// IsSVG says by how a file begins that it is a drawing in SVG.
func IsSVG(beginning []byte) bool {
	text := bytes.TrimLeft(bytes.TrimPrefix(beginning, []byte("\xef\xbb\xbf")), " \t\r\n")
	return bytes.HasPrefix(text, []byte("<")) && bytes.Contains(text, []byte("<svg"))
}

// IsPDF says by how a file begins that it is a PDF file.
func IsPDF(beginning []byte) bool {
	return bytes.Contains(beginning[:min(len(beginning), 1024)], []byte("%PDF-"))
}

// SVG reads the pattern in a drawing in SVG. The errors are *found.NeedUnit,
// *found.TooMuch, *linework.Fault, or those of package svg.
func SVG(data []byte, o found.Options) (found.Drawing, error) {
	lines, err := svgin.Lines(data, o)
	if err != nil {
		return found.Drawing{}, err
	}
	if svg.IsOwn(lines) {
		return own(lines)
	}
	if lines.Unsized && o.Unit == 0 {
		box := lines.Pages[0].Box
		return found.Drawing{}, &found.NeedUnit{Across: box.Max[0] / svgin.Pixel, Up: box.Max[1] / svgin.Pixel}
	}
	if len(lines.Lines) == 0 && lines.Pictures > 0 {
		return found.Drawing{}, &linework.Fault{Of: linework.DotsOnly}
	}
	out, err := Drawing(lines, o)
	if err == nil && lines.InPixels && o.Unit == 0 {
		out.Notes = append(out.Notes, found.Note{Kind: found.PixelsAssumed, Count: 1})
	}
	return out, err
}

// own drawing of this program, which says all of its pieces.
func own(lines linework.Drawing) (found.Drawing, error) {
	all, err := svg.Read(lines)
	if err != nil {
		return found.Drawing{}, err
	}
	out := found.Drawing{Title: lines.Title}
	for _, p := range all {
		one := found.Piece{Name: p.Name, Size: p.Size, Whole: &p}
		for _, e := range p.Edges {
			for _, c := range e.Path {
				one.Outline = append(one.Outline, found.Step{Curve: c})
			}
		}
		out.Pieces = append(out.Pieces, one)
	}
	return out, nil
}

// PDF reads the pattern on the pages of a PDF file. The errors are *found.TooMuch or
// *linework.Fault.
func PDF(data []byte, o found.Options) (found.Drawing, error) {
	lines, err := pdfin.Lines(data, o)
	if err != nil {
		return found.Drawing{}, err
	}
	return Drawing(lines, o)
}
