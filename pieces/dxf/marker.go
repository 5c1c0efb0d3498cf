package dxf

import (
	"bufio"
	"fmt"
	"io"
	"slices"
	"strconv"

	"github.com/paulmach/orb"
)

// Marker is pieces in their places on a cloth: x along the warp, y across.
type Marker struct {
	Title string
	// Cloth is the rectangle that they lie on.
	Cloth  orb.Bound
	Pieces []MarkerPiece
}

// MarkerPiece is one of them; a piece that lies twice is there twice.
type MarkerPiece struct {
	// Name, Size and Cloth may be empty.
	Name, Size, Cloth string
	// Cutting line, and Seam line where it is known, closed.
	Cutting, Seam orb.Ring
	// Grain from its lower end to its upper.
	Grain [2]orb.Point
	// Fold that the piece lies on, where it does.
	Fold *[2]orb.Point
	// Notches on the cutting line; Lines and Points inside.
	Notches []orb.Point
	Lines   []orb.LineString
	Points  []orb.Point
}

// clothLayer has the edges of the cloth: no layer of a piece.
const clothLayer layer = 0

// WriteMarker writes a marker at true size, in mm: each piece as a block in its place,
// on the layers of ASTM D6673, and the cloth as a rectangle on layer 0. The error is
// that of writing.
func WriteMarker(w io.Writer, m Marker) error {
	out := &output{bufio.NewWriter(w)}
	out.head(append([]layer{clothLayer}, layers...))
	out.section("BLOCKS")
	for i, p := range m.Pieces {
		out.markerPiece(i, p)
	}
	out.group(0, "ENDSEC")
	out.section("ENTITIES")
	box := m.Cloth
	out.polyline(clothLayer, []orb.Point{box.Min, {box.Max[0], box.Min[1]}, box.Max, {box.Min[0], box.Max[1]}, box.Min})
	for i, words := range []string{styleNameKey + ": " + m.Title, unitsKey + ": METRIC"} {
		out.text(boundaryLayer, orb.Point{box.Min[0], box.Min[1] - float64(i+1)*lineHeight}, words)
	}
	for i := range m.Pieces {
		out.insert(markerBlock(i), orb.Point{})
	}
	out.group(0, "ENDSEC")
	out.group(0, "EOF")
	return out.to.Flush()
}

func markerBlock(i int) string { return "PIECE_" + strconv.Itoa(i+1) }

func (w *output) markerPiece(i int, p MarkerPiece) {
	w.beginBlock(markerBlock(i))
	at := p.Cutting.Bound().Center()
	words := []string{fmt.Sprintf("%s: %d %s", pieceNameKey, i+1, p.Name)}
	if p.Size != "" {
		words = append(words, sizeKey+": "+p.Size)
	}
	words = append(words, quantityKey+": 1")
	if p.Cloth != "" {
		words = append(words, materialKey+": "+p.Cloth)
	}
	for k, line := range words {
		w.text(boundaryLayer, orb.Point{at[0], at[1] - float64(k*lineHeight)}, line)
	}
	w.polyline(boundaryLayer, closed(apart(p.Cutting)))
	for _, n := range p.Notches {
		w.point(notchLayer, n)
	}
	if p.Fold != nil {
		w.line(mirrorLayer, p.Fold[0], p.Fold[1])
	}
	w.line(grainLayer, p.Grain[0], p.Grain[1])
	for _, line := range p.Lines {
		w.polyline(internalLayer, slices.Clone(line))
	}
	for _, q := range p.Points {
		w.point(drillLayer, q)
	}
	if len(p.Seam) > 2 {
		w.polyline(sewLayer, closed(apart(p.Seam)))
	}
	w.endBlock()
}
