package patternfile

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"math"
	"reflect"
	"regexp"
	"strconv"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/outline"
	"ellwand/pieces/seams"
)

// Write writes pieces as a file of pieces, in mm to a ten-thousandth. Read again and
// written again it is the same to the last byte. Pieces that differ in their cloth
// and count alone are written as one; their garments are not written.
func Write(w io.Writer, name string, all []pieces.Piece) error {
	out := &writer{to: bufio.NewWriter(w)}
	out.line("pieces_file: %s", Version)
	if name != "" {
		out.line("name: %s", text(name))
	}
	out.line("units: mm")
	out.line("pieces:")
	for i, p := range all {
		if i > 0 && IsSame(all[i-1], p) {
			continue
		}
		last := i + 1
		for last < len(all) && IsSame(p, all[last]) {
			last++
		}
		out.piece(p, all[i:last])
	}
	return out.to.Flush()
}

// IsSame says that pieces differ in their cloth and how many are cut alone.
func IsSame(a, b pieces.Piece) bool {
	a.Cloth, a.Cut, a.Pair, a.Garment = b.Cloth, b.Cut, b.Pair, b.Garment
	return reflect.DeepEqual(a, b)
}

// writer keeps the first error in its buffer.
type writer struct{ to *bufio.Writer }

func (w *writer) line(format string, args ...any) { fmt.Fprintf(w.to, format+"\n", args...) }

func (w *writer) piece(p pieces.Piece, cut []pieces.Piece) {
	w.line("  - name: %s", text(p.Name))
	if p.Size != "" {
		w.line("    size: %s", text(p.Size))
	}
	w.line("    cut: %s", cutOf(cut))
	for _, one := range cut {
		if one.Pair {
			w.line("    pair: yes")
			break
		}
	}
	if p.Fold != seams.None {
		w.line("    fold: %s", text(p.Fold.String()))
	}
	if p.Kind != pieces.Shell {
		w.line("    kind: %s", p.Kind)
	}
	w.line("    grain: %s", p.Grain.Lie)
	w.line("    grain_line: [%s, %s]", point(p.Grain.From), point(p.Grain.To))
	if p.Accuracy > 0 {
		w.line("    accuracy: %s", number(p.Accuracy))
	}
	if p.Approximate {
		w.line("    approximate: yes")
	}
	w.line("    outline:")
	for _, e := range p.Edges {
		w.nodes("      ", e.Path, e.Name)
	}
	w.allowances(p)
	w.notches(p)
	w.darts(p)
	w.marks(p)
}

func cutOf(all []pieces.Piece) string {
	if len(all) == 1 && all[0].Cloth == "" {
		return strconv.Itoa(all[0].Cut)
	}
	var out []string
	for _, p := range all {
		out = append(out, fmt.Sprintf("%s: %d", text(p.Cloth), p.Cut))
	}
	return "{" + strings.Join(out, ", ") + "}"
}

// shortest, mm, of a curve that is written: shorter ones are a single point in the
// file.
const shortest = 0.002

// nodes writes a path but for its end, as the edge of a name or, without one, as the
// beginning of a line.
func (w *writer) nodes(indent string, path pieces.Path, edge seams.Name) {
	first := true
	for _, c := range halvedArcs(path) {
		if c.Length() < shortest {
			continue
		}
		kind, rest := "curve", ""
		switch c := c.(type) {
		case pieces.Arc:
			if rise := number(outline.RiseOf(c)); rise != "0" {
				rest = ", arc: " + rise
			}
		case pieces.Bezier:
			rest = fmt.Sprintf(", bezier: [%s, %s]", point(c.P1), point(c.P2))
		}
		if first || rest == "" {
			kind = "corner"
		}
		if kind == "corner" && edge != seams.None {
			rest = ", edge: " + text(edge.String()) + rest
		}
		w.line("%s- {%s: %s%s}", indent, kind, point(c.Start()), rest)
		first = false
	}
}

// halvedArcs has no arc of more than half a circle.
func halvedArcs(path pieces.Path) pieces.Path {
	var out pieces.Path
	for _, c := range path {
		if a, ok := c.(pieces.Arc); ok && math.Abs(a.Sweep) > math.Pi {
			before, after := a.Split(0.5)
			out = append(out, before, after)
			continue
		}
		out = append(out, c)
	}
	return out
}

// allowances writes one for all edges, where it is the same.
func (w *writer) allowances(p pieces.Piece) {
	var keys, hems []string
	same := ""
	for _, e := range p.Edges {
		if e.Name == p.Fold {
			continue
		}
		said := number(e.Allowance)
		switch {
		case e.Unknown:
			said = "unknown"
		case e.Included > 0:
			said = "included " + number(e.Included)
		}
		if len(keys) == 0 {
			same = said
		} else if said != same {
			same = ""
		}
		keys = append(keys, text(e.Name.String())+": "+said)
		if e.Hem {
			hems = append(hems, text(e.Name.String()))
		}
	}
	switch {
	case same != "":
		w.line("    allowance: %s", same)
	case len(keys) > 0:
		w.line("    allowance: {%s}", strings.Join(keys, ", "))
	}
	if len(hems) > 0 {
		w.line("    hems: [%s]", strings.Join(hems, ", "))
	}
}

func (w *writer) notches(p pieces.Piece) {
	if len(p.Notches) > 0 {
		w.line("    notches:")
	}
	for _, n := range p.Notches {
		rest := ""
		if n.Count != 1 {
			rest = fmt.Sprintf(", strokes: %d", n.Count)
		}
		if n.Match != marks.None {
			rest += ", match: " + text(n.Match.String())
		}
		w.line("      - {edge: %s, at: %s%s}", text(n.Edge.String()), number(n.At), rest)
	}
}

func (w *writer) darts(p pieces.Piece) {
	if len(p.Darts) > 0 {
		w.line("    darts:")
	}
	for _, d := range p.Darts {
		if d.Mouth != seams.None {
			w.line("      - {name: %s, mouth: %s, apex: %s}", text(d.Name.String()), text(d.Mouth.String()), point(d.Apex))
			continue
		}
		w.line("      - {name: %s, apex: %s, start: %s, end: %s, other_apex: %s}", text(d.Name.String()), point(d.Apex),
			point(d.Start), point(d.End), point(d.OtherApex))
	}
}

func (w *writer) marks(p pieces.Piece) {
	if len(p.Marks) > 0 {
		w.line("    marks:")
	}
	for _, m := range p.Marks {
		if m.Path == nil {
			w.line("      - {name: %s, at: %s}", text(m.Name.String()), point(m.At))
			continue
		}
		w.line("      - name: %s", text(m.Name.String()))
		w.line("        line:")
		w.nodes("          ", m.Path, seams.None)
		w.line("          - {corner: %s}", point(m.Path.End()))
	}
}

func point(p orb.Point) string { return "[" + number(p[0]) + ", " + number(p[1]) + "]" }

// number is a length in mm to a ten-thousandth, without idle zeros.
func number(mm float64) string {
	return strconv.FormatFloat(math.Round(mm*1e4)/1e4+0, 'f', -1, 64)
}

// plainText needs no quotation marks in YAML, wherever it stands.
var plainText = regexp.MustCompile(`^[A-Za-z][A-Za-z0-9]*([ _-][A-Za-z0-9]+)*$`)

// words that YAML readers take for something else.
var words = map[string]bool{"yes": true, "no": true, "true": true, "false": true, "null": true, "on": true, "off": true,
	"y": true, "n": true}

func text(s string) string {
	if plainText.MatchString(s) && !words[strings.ToLower(s)] {
		return s
	}
	quoted, err := json.Marshal(s)
	if err != nil { // no text makes one
		return strconv.Quote(s)
	}
	return string(quoted)
}
