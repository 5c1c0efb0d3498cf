package svg

import (
	"bufio"
	"fmt"
	"math"
	"strconv"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/arrangement"
	"ellwand/pieces/drawing"
	"ellwand/pieces/geometry"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
	"ellwand/pieces/sheet"
)

// Widths of lines, mm [source.OwnChoice].
const (
	cuttingWidth = "0.5"
	foldWidth    = "0.9"
	sewWidth     = "0.3"
	markWidth    = "0.35"
)

type writer struct{ *bufio.Writer }

// attributes in turn: a name and its value; one without a value is left out.
type attributes []string

func (a attributes) String() string {
	var out strings.Builder
	for i := 0; i+1 < len(a); i += 2 {
		if a[i+1] != "" {
			fmt.Fprintf(&out, ` %s="%s"`, a[i], drawing.Escaped(a[i+1]))
		}
	}
	return out.String()
}

func yes(is bool) string {
	if is {
		return "yes"
	}
	return ""
}

func widthOf(mm float64) string {
	if mm == 0 {
		return ""
	}
	return number(mm)
}

// open the group of a piece: y runs up in it. One of its groups has all that is said of
// the piece.
func (w *writer) open(i int, p pieces.Piece, shift orb.Point, whole bool) {
	about := attributes{"data-piece", strconv.Itoa(i + 1)}
	if whole {
		about = append(about, "data-at", number(shift[0])+" "+number(shift[1]), "data-size", p.Size, "data-cloth", p.Cloth,
			"data-cut", strconv.Itoa(p.Cut), "data-pair", yes(p.Pair), "data-fold", p.Fold.String(), "data-kind", kindOf(p),
			"data-accuracy", widthOf(p.Accuracy), "data-approximate", yes(p.Approximate))
	}
	fmt.Fprintf(w, "<g transform=\"matrix(1 0 0 -1 %s %s)\"%s>\n<title>%s</title>\n", number(shift[0]),
		number(shift[1]), about, drawing.Escaped(p.Name))
}

func kindOf(p pieces.Piece) string {
	if p.Kind == pieces.Shell {
		return ""
	}
	return p.Kind.String()
}

// cut draws what is cut along: the edges that came as cutting lines, as they came, or
// the line that is derived from the seam line.
func (w *writer) cut(p pieces.Piece, f sheet.DrawnPiece) {
	derived := false
	for i, e := range p.Edges {
		derived = derived || !isCutting(e) && e.Name != p.Fold
		if isCutting(e) {
			w.edge(i, e, p, cuttingWidth)
		}
	}
	if !derived {
		return
	}
	ring := []orb.Point(f.Sizes[0].Cutting)
	if fold, ok := p.Edge(p.Fold); ok && p.Fold != seams.None {
		ring = pieces.OpenedAt(orb.Ring(ring), fold.Path.Start(), fold.Path.End())
	}
	w.derived(chain(ring), cuttingWidth, "")
}

// isCutting says that an edge came as a cutting line.
func isCutting(e pieces.Edge) bool { return e.Included > 0 || e.Unknown }

// sew draws the seam line: the edges that are drawn by it, or what is derived from
// cutting lines.
func (w *writer) sew(p pieces.Piece, f sheet.DrawnPiece) {
	seam := f.Sizes[0].Piece
	for i, e := range p.Edges {
		switch {
		case e.Name == p.Fold:
		case !isCutting(e):
			w.edge(i, e, p, sewWidth)
		case e.Included > 0:
			if at, ok := seam.Edge(e.Name); ok {
				w.derived(curves(at.Path), sewWidth, "4 2")
			}
		}
	}
}

// edge of a piece, with what is said of it.
func (w *writer) edge(i int, e pieces.Edge, p pieces.Piece, width string) {
	about := attributes{"data-edge", e.Name.String(), "data-order", strconv.Itoa(i + 1),
		"data-allowance", widthOf(e.Allowance), "data-included", widthOf(e.Included), "data-unknown", yes(e.Unknown),
		"data-hem", yes(e.Hem)}
	if width == sewWidth && e.Allowance > 0 {
		about = append(about, "stroke-dasharray", "4 2")
	}
	fmt.Fprintf(w, "<path d=\"%s\" stroke-width=\"%s\"%s/>\n", curves(e.Path), width, about)
}

// derived line: it follows from others, and is passed over when the drawing is read.
func (w *writer) derived(d, width, dashes string) {
	fmt.Fprintf(w, "<path d=\"%s\" stroke-width=\"%s\"%s/>\n", d, width,
		attributes{"stroke-dasharray", dashes, "data-derived", "yes"})
}

// marks draws the fold, notches, darts, marks and the grainline.
func (w *writer) marks(p pieces.Piece, f sheet.DrawnPiece) {
	for i, e := range p.Edges {
		if e.Name == p.Fold {
			w.edge(i, e, p, foldWidth)
		}
	}
	seam := f.Sizes[0].Piece
	for _, n := range p.Notches {
		strokes := ""
		if n.Count != 1 {
			strokes = strconv.Itoa(n.Count)
		}
		match := ""
		if n.Match != marks.None {
			match = n.Match.String()
		}
		fmt.Fprintf(w, "<path d=\"%s\" stroke-width=\"%s\"%s/>\n", notch(seam, p, n), cuttingWidth,
			attributes{"data-notch", n.Edge.String(), "data-at", number(n.At), "data-strokes", strokes, "data-match", match})
	}
	for _, d := range p.Darts {
		line := []orb.Point{d.Start, d.Apex, d.End}
		if d.Mouth == seams.None {
			line = append(line, d.OtherApex, d.Start)
		}
		fmt.Fprintf(w, "<path d=\"%s\" stroke-width=\"%s\" stroke-dasharray=\"2.5 1.5\"%s/>\n", chain(line), markWidth,
			attributes{"data-dart", d.Name.String(), "data-mouth", d.Mouth.String()})
	}
	for _, m := range p.Marks {
		w.mark(m)
	}
	g := p.Grain
	fmt.Fprintf(w, "<path d=\"%s\" stroke-width=\"%s\" data-grain=\"%s\"><title>grain</title></path>\n",
		chain([]orb.Point{g.From, g.To}), markWidth, g.Lie)
	w.derived(chain(head(g)), markWidth, "")
}

// mark is its line, or a cross at its point.
func (w *writer) mark(m pieces.Mark) {
	d, at := "", ""
	if m.Path != nil {
		d = curves(m.Path)
	} else {
		d, at = cross(m.At), pair(m.At)
	}
	fmt.Fprintf(w, "<path d=\"%s\" stroke-width=\"0.25\"%s/>\n", d,
		attributes{"data-mark", m.Name.String(), "data-point", at})
}

func cross(p orb.Point) string {
	const reach = 2
	return chain([]orb.Point{{p[0] - reach, p[1]}, {p[0] + reach, p[1]}}) +
		chain([]orb.Point{{p[0], p[1] - reach}, {p[0], p[1] + reach}})
}

// notch is as many strokes over the allowance, or into the piece where there is none;
// several are 6 mm apart.
func notch(seam, p pieces.Piece, n pieces.Notch) string {
	out := ""
	own, _ := p.Edge(n.Edge)
	e, ok := seam.Edge(n.Edge)
	if !ok {
		e = own
	}
	share := 1.0 // of the seam line, where that is derived, to the line that the notch is measured along
	if length := own.Path.Length(); length > 0 {
		share = e.Path.Length() / length
	}
	for k := range n.Count {
		at := n.At*share + 6*(float64(k)-float64(n.Count-1)/2)
		from, u := e.Path.At(at), e.Path.Tangent(at)
		reach := e.Allowance
		if reach < 2 {
			reach = -5
		}
		out += chain([]orb.Point{from, geometry.Add(from, geometry.Times(geometry.Left(u), -reach))})
	}
	return out
}

// head of the grainline, at the end that points up.
func head(g pieces.Grain) []orb.Point {
	length := geometry.Distance(g.From, g.To)
	size := math.Min(9, length/4)
	along := geometry.Times(geometry.Sub(g.From, g.To), size/math.Max(length, 1e-9))
	neck, side := geometry.Add(g.To, along), geometry.Times(geometry.Left(along), 1.0/3)
	return []orb.Point{geometry.Add(neck, side), g.To, geometry.Sub(neck, side)}
}

// words that stand on the pieces, and the scale line.
func (w *writer) words(places arrangement.Arrangement) error {
	fmt.Fprintf(w, "<g id=\"%[1]s\" inkscape:groupmode=\"layer\" inkscape:label=\"%[1]s\">\n", drawing.WordsLayer)
	page := places.Page()
	if err := drawing.WriteLayerSVG(w, &page.Picture, drawing.WordsLayer); err != nil {
		return err
	}
	w.WriteString("</g>\n")
	return nil
}
