package drawing

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/text"
)

// LayerSpace names what says that a group is a layer: no standard has it, and drawing
// programs read this one.
const LayerSpace = ` xmlns:inkscape="http://www.inkscape.org/namespaces/inkscape"`

// WriteSVG writes the page as an SVG document at true scale: one unit of its
// viewBox is 1 mm (SVG 1.1, section 7). Layers are groups that drawing programs show as
// layers. Words stay words, in any script; each
// line is held to the width it has in the PDF.
func WriteSVG(w io.Writer, title string, page Page) error {
	buffer := bufio.NewWriter(w)
	layers := layersOf(&page.Picture)
	space := ""
	if len(layers) > 0 {
		space = LayerSpace
	}
	fmt.Fprintf(buffer, `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg"%[4]s version="1.1" width="%[1]smm" height="%[2]smm" viewBox="0 0 %[1]s %[2]s" `+
		`font-family="'DejaVu Sans Condensed', 'DejaVu Sans', Arial, Helvetica, sans-serif" fill="none" `+
		`stroke-linejoin="round" stroke-linecap="round">
<title>%[3]s</title>
<rect width="%[1]s" height="%[2]s" fill="white"/>
`, number(page.Width), number(page.Height), escaped(title), space)
	out := &svgWriter{Writer: buffer}
	box := orb.Bound{Max: orb.Point{page.Width, page.Height}}
	if len(layers) == 0 {
		out.draw(&page.Picture, orb.Point{}, box)
	} else {
		out.draw(ofLayer(&page.Picture, ""), orb.Point{}, box)
	}
	for _, name := range layers {
		fmt.Fprintf(buffer, "<g id=\"%[1]s\" inkscape:groupmode=\"layer\" inkscape:label=\"%[1]s\">\n", escaped(name))
		out.draw(ofLayer(&page.Picture, name), orb.Point{}, box)
		buffer.WriteString("</g>\n")
	}
	buffer.WriteString("</svg>\n")
	return buffer.Flush()
}

// WriteLayerSVG writes what of a picture belongs to a layer, as elements of a document.
func WriteLayerSVG(w io.Writer, picture *Picture, layer string) error {
	buffer := bufio.NewWriter(w)
	one := ofLayer(picture, layer)
	(&svgWriter{Writer: buffer}).draw(one, orb.Point{}, one.Bound())
	return buffer.Flush()
}

// Escaped makes text safe for SVG; what must not go out, and what XML cannot hold, is
// left out.
func Escaped(words string) string { return escaped(words) }

type svgWriter struct {
	*bufio.Writer
	windows int
}

func (w *svgWriter) draw(picture *Picture, shift orb.Point, box orb.Bound) {
	for _, it := range picture.items {
		if !seen(it, shift, box) {
			continue
		}
		switch it := it.(type) {
		case heading:
			fmt.Fprintf(w, "<g>\n<title>%s</title>\n", escaped(it.title))
		case ending:
			w.WriteString("</g>\n")
		case stroke:
			w.stroke(it.pen, it.svgPath(shift))
		case area:
			fmt.Fprintf(w, `<path d="%s" fill="%s"/>`+"\n",
				thousandths.Chain(append(geometry.Moved(it.ring, shift), it.ring[0]), true), grey(it.grey))
		case Text:
			it.At = geometry.Add(it.At, shift)
			w.text(it)
		case window:
			w.windows++
			inner := movedBox(it.box, shift)
			fmt.Fprintf(w, `<clipPath id="window%d"><path d="%s"/></clipPath>`+"\n"+
				`<g clip-path="url(#window%[1]d)">`+"\n", w.windows, thousandths.Chain(geometry.Corners(inner), true))
			w.draw(it.picture, geometry.Add(shift, it.shift), inner)
			w.WriteString("</g>\n")
		}
	}
}

// svgPath is the line moved, its curves exact.
func (s stroke) svgPath(by orb.Point) string {
	if s.path != nil {
		return curvesOf(s.path.Map(pieces.Move(by[0], by[1])))
	}
	return thousandths.Chain(geometry.Moved(s.line, by), s.line[0] == s.line[len(s.line)-1])
}

func (w *svgWriter) stroke(pen Pen, path string) {
	fmt.Fprintf(w, `<path d="%s" stroke="%s" stroke-width="%s"`, path, grey(pen.Grey), number(pen.Width))
	if len(pen.Dashes) > 0 {
		texts := make([]string, len(pen.Dashes))
		for i, d := range pen.Dashes {
			texts[i] = number(d)
		}
		fmt.Fprintf(w, ` stroke-dasharray="%s"`, strings.Join(texts, " "))
	}
	if pen.Blunt {
		w.WriteString(` stroke-linecap="butt"`)
	}
	w.WriteString("/>\n")
}

func (w *svgWriter) text(t Text) {
	fmt.Fprintf(w, `<text x="%s" y="%s" font-size="%s" fill="%s"`,
		number(t.At[0]), number(t.At[1]), number(t.Points*Point), grey(t.Grey))
	if t.Bold {
		w.WriteString(` font-weight="bold"`)
	}
	if t.Align != Left {
		fmt.Fprintf(w, ` text-anchor="%s"`, [...]string{"start", "middle", "end"}[t.Align])
	}
	if Printable(t.Words) == t.Words {
		fmt.Fprintf(w, ` textLength="%s" lengthAdjust="spacingAndGlyphs"`, number(Width(t.Words, t.Points, t.Bold)))
	}
	if t.Angle != 0 {
		fmt.Fprintf(w, ` transform="rotate(%s %s %s)"`, number(-t.Angle), number(t.At[0]), number(t.At[1]))
	}
	fmt.Fprintf(w, ">%s</text>\n", escaped(t.Words))
}

func grey(g int) string {
	if g == 0 {
		return "black"
	}
	return fmt.Sprintf("#%02x%02[1]x%02[1]x", g)
}

// escaped makes text safe for XML; what must not go out, and what XML cannot
// hold, is left out.
func escaped(words string) string {
	words = strings.Map(func(r rune) rune {
		if r == 0xFFFE || r == 0xFFFF || r == '\uFFFD' {
			return -1
		}
		return r
	}, text.Line(words))
	return strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&quot;").Replace(words)
}
