package dxf

import (
	"bufio"
	"fmt"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// layers that pieces are written on, in their order.
var layers = []layer{boundaryLayer, turnLayer, curveLayer, notchLayer, mirrorLayer, grainLayer, internalLayer,
	stripeLayer,
	plaidLayer, cutoutLayer, drillLayer, sewLayer, annotationLayer}

// Write writes pieces as ASTM D6673 has it: a block each, in mm, their cutting line as
// the boundary, within 0.01 mm; read and written again, the same to the last byte. The
// grainline is drawn along the warp. Names of edges and of matches are not written, nor
// which allowances fold up.
//
// The error is that of a piece without a cutting outline, or of writing.
func Write(w io.Writer, title string, all []pieces.Piece) error {
	out := &output{bufio.NewWriter(w)}
	out.head(layers)
	out.section("BLOCKS")
	taken := map[string]bool{}
	var names []string
	for _, p := range all {
		name := blockName(p, taken)
		names = append(names, name)
		if err := out.piece(name, p); err != nil {
			return err
		}
	}
	out.group(0, "ENDSEC")
	out.section("ENTITIES")
	for i, words := range []string{styleNameKey + ": " + title, unitsKey + ": METRIC"} {
		out.text(boundaryLayer, orb.Point{0, -float64(i+1) * lineHeight}, words)
	}
	for _, name := range names {
		out.insert(name, orb.Point{})
	}
	out.group(0, "ENDSEC")
	out.group(0, "EOF")
	return out.to.Flush()
}

// blockName is one that R12 allows, and that no other block has.
func blockName(p pieces.Piece, taken map[string]bool) string {
	const longest = 24
	plain := func(words string) string {
		return strings.Map(func(r rune) rune {
			if r >= 'A' && r <= 'Z' || r >= '0' && r <= '9' {
				return r
			}
			return '_'
		}, strings.ToUpper(words))
	}
	name := plain(p.Name)
	if p.Size != "" {
		name += "_" + plain(p.Size)
	}
	name = name[:min(len(name), longest)]
	for out, n := name, 2; ; n++ {
		if !taken[out] {
			taken[out] = true
			return out
		}
		out = name + "-" + strconv.Itoa(n)
	}
}

const lineHeight = 8 // mm, of words below each other [source.OwnChoice]

func (w *output) piece(name string, p pieces.Piece) error {
	r, err := rimOf(p)
	if err != nil {
		return err
	}
	w.beginBlock(name)
	w.words(p, orb.LineString(r.points).Bound().Center())
	w.polyline(boundaryLayer, append(slices.Clone(r.points), r.points[0]))
	for i, q := range r.points {
		if r.turns[i] {
			w.point(turnLayer, q)
		}
	}
	for i, q := range r.points {
		if !r.turns[i] {
			w.point(curveLayer, q)
		}
	}
	w.notches(p, r)
	if from, to, ok := r.fold(p); ok {
		w.line(mirrorLayer, from, to)
	}
	from, to := warp(p.Grain)
	w.line(grainLayer, rounded(from), rounded(to))
	w.inner(p)
	w.endBlock()
	return nil
}

// words that say what the piece is, in its middle.
func (w *output) words(p pieces.Piece, at orb.Point) {
	lines := []string{pieceNameKey + ": " + p.Name}
	if p.Size != "" {
		lines = append(lines, sizeKey+": "+p.Size)
	}
	if p.Grain.Lie == pieces.EitherGrain {
		lines = append(lines, annotationKey+": "+eitherGrain)
	}
	if p.Accuracy > 0 {
		lines = append(lines, fmt.Sprintf("%s: %s%s mm", annotationKey, accuracy,
			strconv.FormatFloat(p.Accuracy, 'f', -1, 64)))
	}
	lines = append(lines, quantityKey+": "+quantityOf(p))
	if p.Cloth != "" {
		lines = append(lines, materialKey+": "+p.Cloth)
	}
	lines = append(lines, categoryKey+": "+p.Kind.String())
	at = rounded(at)
	for i, line := range lines {
		w.text(boundaryLayer, orb.Point{at[0], at[1] - float64(i*lineHeight)}, line)
	}
}

// warp is the grainline drawn along the warp.
func warp(g pieces.Grain) (from, to orb.Point) {
	turn := map[pieces.GrainLie]float64{pieces.CrossGrain: math.Pi / 2, pieces.Bias: math.Pi / 4}[g.Lie]
	if turn == 0 {
		return g.From, g.To
	}
	middle, half := geometry.Between(g.From, g.To, 0.5), geometry.Times(geometry.Sub(g.To, g.From), 0.5)
	sin, cos := math.Sincos(turn)
	half = orb.Point{float64(half[0]*cos) - float64(half[1]*sin), float64(half[0]*sin) + float64(half[1]*cos)}
	return geometry.Sub(middle, half), geometry.Add(middle, half)
}

// notches on the cutting line, those of two strokes as two.
func (w *output) notches(p pieces.Piece, r rim) {
	for _, n := range p.Notches {
		e, ok := p.Edge(n.Edge)
		if kind := n.Match.Kind(); !ok || kind == marks.StripeLine || kind == marks.PlaidLine {
			continue // a stripe is written as its line
		}
		out := geometry.Times(geometry.Right(e.Path.Tangent(n.At)), e.Allowance)
		turn, along := r.place(geometry.Add(e.Path.At(n.At), out))
		along = math.Round(along/notchGrid) * notchGrid
		if n.Count < 2 {
			w.notch(r, turn, along)
			continue
		}
		length := r.length(turn)
		first := math.Max(0, math.Min(along-strokesApart/2, length-strokesApart))
		w.notch(r, turn, first)
		w.notch(r, turn, math.Min(length, first+strokesApart))
	}
}

// notch with the direction in which it is cut.
func (w *output) notch(r rim, turn int, along float64) {
	at, direction := r.at(turn, along)
	w.point(notchLayer, at)
	w.real(50, math.Round(math.Mod(direction+90+360, 360)))
}

// mark is something inside that is written.
type mark struct {
	on   layer
	line []orb.Point // nil for a point
	at   orb.Point
	name marks.Name
}

// inner writes what lies inside: lines by their layers, then points, then the sew
// line, and names at the beginning of each.
func (w *output) inner(p pieces.Piece) {
	lines, points, sew := innerOf(p)
	var all []mark
	for _, on := range []layer{internalLayer, stripeLayer, plaidLayer, cutoutLayer} {
		for _, m := range lines {
			if m.on == on {
				w.polyline(on, m.line)
				all = append(all, m)
			}
		}
	}
	for _, m := range points {
		w.point(drillLayer, m.at)
		all = append(all, m)
	}
	if sew != nil {
		w.polyline(sewLayer, sew)
	}
	for _, m := range all {
		if !isUnnamed(m.name) {
			w.text(annotationLayer, m.at, m.name.String())
		}
	}
}

// layersOf marks that have one of their own.
var layersOf = map[marks.Name]layer{marks.StripeLine: stripeLayer, marks.PlaidLine: plaidLayer,
	marks.Cutout: cutoutLayer}

func isUnnamed(n marks.Name) bool {
	kind := n.Kind()
	return kind == marks.None || kind == marks.InternalLine || kind == marks.DrillHole || layersOf[kind] != 0
}

func innerOf(p pieces.Piece) (lines, points []mark, sew []orb.Point) {
	for _, d := range p.Darts {
		legs := []orb.Point{rounded(d.Start), rounded(d.Apex), rounded(d.End)}
		if d.Mouth == seams.None {
			legs = append(legs, rounded(d.OtherApex), legs[0])
		}
		lines = append(lines, mark{on: internalLayer, line: legs, at: legs[0]})
	}
	for _, m := range p.Marks {
		if m.Path == nil {
			points = append(points, mark{at: rounded(m.At), name: m.Name})
			continue
		}
		line := pointsOf(m.Path)
		if len(line) < 2 {
			continue
		}
		if m.Name.Kind() == marks.SewLine {
			sew = line
			continue
		}
		on := layersOf[m.Name.Kind()]
		if on == 0 {
			on = internalLayer
		}
		lines = append(lines, mark{on: on, line: line, at: line[0], name: m.Name})
	}
	if sew == nil && hasSeam(p) {
		sew = closed(apart(p.Seam().Boundary(written)))
	}
	return lines, points, sew
}

// pointsOf a line; one that is closed ends where it begins.
func pointsOf(path pieces.Path) []orb.Point {
	line := path.Flatten(written)
	out := apart(line)
	if geometry.Distance(line[0], line[len(line)-1]) <= grid/2 && len(out) > 2 {
		return closed(out)
	}
	return out
}

func closed(points []orb.Point) []orb.Point { return append(points, points[0]) }

// hasSeam says that a piece has a seam line apart from its cutting line, all round.
func hasSeam(p pieces.Piece) bool {
	apart := false
	for _, e := range p.Edges {
		if e.Unknown {
			return false
		}
		apart = apart || e.Allowance > 0 || e.Included > 0
	}
	return apart
}
