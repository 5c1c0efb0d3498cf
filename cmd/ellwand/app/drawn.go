package app

import (
	"io"

	"ellwand/pieces/arrangement"
	"ellwand/pieces/drawing"
	"ellwand/pieces/svg"
	piecewords "ellwand/pieces/words"
)

// WriteSVG writes the pieces at true size, in layers.
func (c Collection) WriteSVG(w io.Writer) error {
	return piecewords.Refused(svg.Write(w, c.Title, apart(c.Pieces)...))
}

// WritePDF writes the pieces at true size on one page, in layers.
func (c Collection) WritePDF(w io.Writer) error {
	places, err := arrangement.Of(apart(c.Pieces)...)
	if err != nil {
		return piecewords.Refused(err)
	}
	return drawing.WriteLayeredPDF(w, c.Title, []drawing.Page{places.Page()})
}
