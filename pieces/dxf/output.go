package dxf

import (
	"bufio"
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"

	"github.com/paulmach/orb"
)

// output writes groups of DXF R12, which every reader knows. Its buffer keeps the
// first error.
type output struct{ to *bufio.Writer }

func (w *output) group(code int, value string) { fmt.Fprintf(w.to, "%3d\n%s\n", code, value) }

func (w *output) real(code int, x float64) { w.group(code, real(x)) }

// real is a number of mm to a ten-thousandth, always with a point.
func real(x float64) string {
	text := strconv.FormatFloat(math.Round(x*1e4)/1e4+0, 'f', -1, 64)
	for _, c := range text {
		if c == '.' {
			return text
		}
	}
	return text + ".0"
}

func (w *output) at(p orb.Point) {
	w.real(10, p[0])
	w.real(20, p[1])
}

// begin an entity on a layer.
func (w *output) begin(entity string, on layer) {
	w.group(0, entity)
	w.group(8, strconv.Itoa(int(on)))
}

// polyline through points; one whose last is its first is closed.
func (w *output) polyline(on layer, points []orb.Point) {
	closed := 0
	if n := len(points); n > 2 && points[0] == points[n-1] {
		points, closed = points[:n-1], 1
	}
	w.begin("POLYLINE", on)
	w.group(66, "1")
	w.at(orb.Point{})
	w.group(70, strconv.Itoa(closed))
	for _, p := range points {
		w.begin("VERTEX", on)
		w.at(p)
	}
	w.begin("SEQEND", on)
}

func (w *output) line(on layer, a, b orb.Point) {
	w.begin("LINE", on)
	w.at(a)
	w.real(11, b[0])
	w.real(21, b[1])
}

func (w *output) point(on layer, p orb.Point) {
	w.begin("POINT", on)
	w.at(p)
}

// textHeight, mm [source.OwnChoice].
const textHeight = 5

func (w *output) text(on layer, at orb.Point, words string) {
	w.begin("TEXT", on)
	w.at(at)
	w.real(40, textHeight)
	w.group(1, coded(words))
}

// coded is a text in one line of ASCII: other letters by their numbers.
func coded(words string) string {
	var out strings.Builder
	for _, r := range words {
		switch {
		case r < ' ' || r == 0x7f || unicode.IsControl(r):
			out.WriteByte(' ')
		case r <= '~':
			out.WriteRune(r)
		case r <= 0xffff:
			fmt.Fprintf(&out, `\U+%04X`, r)
		default:
			out.WriteByte('?')
		}
	}
	return out.String()
}

// head of a file with its layers.
func (w *output) head(layers []layer) {
	w.section("HEADER")
	w.group(9, "$ACADVER")
	w.group(1, "AC1009")
	w.group(9, "$INSUNITS")
	w.group(70, "4")
	w.group(0, "ENDSEC")
	w.section("TABLES")
	w.group(0, "TABLE")
	w.group(2, "LAYER")
	w.group(70, strconv.Itoa(len(layers)))
	for _, l := range layers {
		w.group(0, "LAYER")
		w.group(2, strconv.Itoa(int(l)))
		w.group(70, "0")
		w.group(62, "7")
		w.group(6, "CONTINUOUS")
	}
	w.group(0, "ENDTAB")
	w.group(0, "ENDSEC")
}

func (w *output) section(name string) {
	w.group(0, "SECTION")
	w.group(2, name)
}

// beginBlock of a name; its base is the origin.
func (w *output) beginBlock(name string) {
	w.begin("BLOCK", boundaryLayer)
	w.group(2, name)
	w.group(70, "0")
	w.at(orb.Point{})
	w.group(3, name)
}

func (w *output) endBlock() { w.begin("ENDBLK", boundaryLayer) }

func (w *output) insert(name string, at orb.Point) {
	w.begin("INSERT", boundaryLayer)
	w.group(2, name)
	w.at(at)
}
