package drawing

import (
	"math"

	"github.com/paulmach/orb"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"ellwand/pieces/geometry"
)

// outlines are the closed outlines of the letters of a text, in mm. The
// outside of a letter and its holes run opposite ways.
func (t Text) outlines() [][]orb.Point {
	f := faceFor(t.Bold)
	size := t.Points * Point
	sin, cos := math.Sincos(t.Angle * math.Pi / 180)
	x := -t.start()
	var out [][]orb.Point
	for _, r := range Printable(t.Words) {
		for _, ring := range f.glyph(r) {
			line := make([]orb.Point, len(ring))
			for i, p := range ring {
				u, v := x+p[0]*size, p[1]*size
				line[i] = orb.Point{t.At[0] + u*cos + v*sin, t.At[1] - u*sin + v*cos}
			}
			out = append(out, line)
		}
		width, _ := f.advance(r)
		x += width * size
	}
	return out
}

// glyph gives the outlines of a rune in ems, y down from the line it stands
// on.
func (f *face) glyph(r rune) [][]orb.Point {
	f.mutex.Lock()
	defer f.mutex.Unlock()
	if rings, known := f.glyphs[r]; known {
		return rings
	}
	var out [][]orb.Point
	units := fixed.Int26_6(f.font.UnitsPerEm()) << 6
	if index, err := f.font.GlyphIndex(&f.buffer, r); err == nil {
		if segments, err := f.font.LoadGlyph(&f.buffer, index, units, nil); err == nil {
			out = ringsOf(segments, float64(units))
		}
	}
	f.glyphs[r] = out
	return out
}

// curveSteps of a curve of a letter: fine enough for letters of 50 mm.
const curveSteps = 6

func ringsOf(segments sfnt.Segments, unit float64) [][]orb.Point {
	var out [][]orb.Point
	var ring []orb.Point
	finish := func() {
		if len(ring) > 2 {
			out = append(out, append(ring, ring[0]))
		}
		ring = nil
	}
	point := func(p fixed.Point26_6) orb.Point { return orb.Point{float64(p.X) / unit, float64(p.Y) / unit} }
	for _, s := range segments {
		switch s.Op {
		case sfnt.SegmentOpMoveTo:
			finish()
			ring = []orb.Point{point(s.Args[0])}
		case sfnt.SegmentOpLineTo:
			ring = append(ring, point(s.Args[0]))
		case sfnt.SegmentOpQuadTo:
			from, by, to := ring[len(ring)-1], point(s.Args[0]), point(s.Args[1])
			for i := 1; i <= curveSteps; i++ {
				k := float64(i) / curveSteps
				ring = append(ring, geometry.Between(geometry.Between(from, by, k), geometry.Between(by, to, k), k))
			}
		case sfnt.SegmentOpCubeTo: // TrueType fonts have none
			ring = append(ring, point(s.Args[2]))
		}
	}
	finish()
	return out
}
