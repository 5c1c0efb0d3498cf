package drawing

import (
	"fmt"
	"io"
	"math"
	"slices"
	"time"

	"github.com/jung-kurt/gofpdf"
	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// LongestPage of a PDF that viewers show, mm: 200 in [source.PDF17].
const LongestPage = 5080.0

// WritePDF writes the pages as a PDF with that title. The same pages give the
// same bytes. It refuses pages that no viewer shows whole.
func WritePDF(w io.Writer, title string, pages []Page) error {
	return WriteDatedPDF(w, title, time.Time{}, pages)
}

// noDate stands for the date of a document without one, since a file that had
// the hour in it would differ from run to run.
var noDate = time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)

// WriteDatedPDF does the same with the date of the document; the zero time is
// none.
func WriteDatedPDF(w io.Writer, title string, date time.Time, pages []Page) error {
	return writePDF(w, title, date, pages, nil)
}

// WriteLayeredPDF does the same with the layers of the pages as layers of the document
// (optional content), which a viewer shows and hides; those that are hidden at first are
// named.
func WriteLayeredPDF(w io.Writer, title string, pages []Page, hidden ...string) error {
	layers := map[string]int{}
	return writePDF(w, title, time.Time{}, pages, func(pdf *gofpdf.Fpdf) map[string]int {
		for _, page := range pages {
			for _, name := range layersOf(&page.Picture) {
				if _, known := layers[name]; !known {
					layers[name] = pdf.AddLayer(Printable(name), !slices.Contains(hidden, name))
				}
			}
		}
		return layers
	})
}

func writePDF(w io.Writer, title string, date time.Time, pages []Page,
	layersOf func(*gofpdf.Fpdf) map[string]int) error {
	if date.IsZero() {
		date = noDate
	}
	for i, page := range pages {
		if longest := math.Max(page.Width, page.Height); longest > LongestPage+1e-6 {
			return fmt.Errorf("page %d is %.0f mm long; a page of a PDF can be %.0f mm at most", i+1, longest,
				LongestPage)
		}
	}
	pdf := gofpdf.NewCustom(&gofpdf.InitType{OrientationStr: "P", UnitStr: "mm",
		Size: gofpdf.SizeType{Wd: 210, Ht: 297}})
	pdf.SetCreationDate(date)
	pdf.SetModificationDate(date)
	pdf.SetCatalogSort(true)
	pdf.SetMargins(0, 0, 0)
	pdf.SetAutoPageBreak(false, 0)
	pdf.SetTitle(Printable(title), true)
	pdf.SetLineJoinStyle("round")
	AddFonts(pdf)
	var layers map[string]int
	if layersOf != nil {
		layers = layersOf(pdf)
	}
	for _, page := range pages {
		pdf.AddPageFormat("P", gofpdf.SizeType{Wd: page.Width, Ht: page.Height})
		out := &pdfWriter{pdf: pdf, layers: layers}
		out.forget()
		out.draw(&page.Picture, orb.Point{}, orb.Bound{Max: orb.Point{page.Width, page.Height}})
	}
	return pdf.Output(w)
}

// pdfWriter remembers what the file has set, to set nothing twice.
type pdfWriter struct {
	pdf    *gofpdf.Fpdf
	layers map[string]int // by their names; nil where none are told apart
	pen    Pen
	fill   int
	points float64
	bold   bool
}

// forget what is set: the end of a window, and a new page, bring back
// something earlier.
func (w *pdfWriter) forget() {
	w.pen, w.fill, w.points = Pen{Width: -1}, -1, -1
}

func (w *pdfWriter) draw(picture *Picture, shift orb.Point, box orb.Bound) {
	for _, it := range picture.items {
		if !seen(it, shift, box) {
			continue
		}
		switch it := it.(type) {
		case stroke:
			w.usePen(it.pen)
			w.path(geometry.Moved(it.line, shift), "D")
		case area:
			w.useFill(it.grey)
			w.path(geometry.Moved(it.ring, shift), "F")
		case Text:
			it.At = geometry.Add(it.At, shift)
			w.write(it)
		case layerMark:
			if id, ok := w.layers[it.name]; ok {
				w.pdf.BeginLayer(id)
			}
		case layerEnd:
			if w.layers != nil {
				w.pdf.EndLayer()
			}
		case window:
			inner := movedBox(it.box, shift)
			w.pdf.ClipRect(inner.Min[0], inner.Min[1], inner.Max[0]-inner.Min[0], inner.Max[1]-inner.Min[1], false)
			w.draw(it.picture, geometry.Add(shift, it.shift), inner)
			w.pdf.ClipEnd()
			w.forget()
		}
	}
}

// seen reports whether an item reaches into the box, with the width of any
// line.
func seen(it item, shift orb.Point, box orb.Bound) bool {
	const widest = 3.0
	b := movedBox(it.bound(), shift)
	return b.Min[0] <= box.Max[0]+widest && b.Max[0] >= box.Min[0]-widest && b.Min[1] <= box.Max[1]+widest &&
		b.Max[1] >= box.Min[1]-widest
}

func movedBox(box orb.Bound, by orb.Point) orb.Bound {
	return orb.Bound{Min: geometry.Add(box.Min, by), Max: geometry.Add(box.Max, by)}
}

func (w *pdfWriter) usePen(pen Pen) {
	if w.pen.Width != pen.Width {
		w.pdf.SetLineWidth(pen.Width)
	}
	if w.pen.Width < 0 || w.pen.Grey != pen.Grey {
		w.pdf.SetDrawColor(pen.Grey, pen.Grey, pen.Grey)
	}
	if w.pen.Width < 0 || len(w.pen.Dashes) > 0 || len(pen.Dashes) > 0 {
		w.pdf.SetDashPattern(pen.Dashes, 0)
	}
	if w.pen.Width < 0 || w.pen.Blunt != pen.Blunt {
		style := "round"
		if pen.Blunt {
			style = "butt"
		}
		w.pdf.SetLineCapStyle(style)
	}
	w.pen = pen
}

func (w *pdfWriter) useFill(grey int) {
	if w.fill != grey {
		w.pdf.SetFillColor(grey, grey, grey)
		w.fill = grey
	}
}

func (w *pdfWriter) path(line []orb.Point, style string) {
	closed := style == "F" || line[0] == line[len(line)-1]
	if line[0] == line[len(line)-1] && len(line) > 2 {
		line = line[:len(line)-1]
	}
	w.pdf.MoveTo(line[0][0], line[0][1])
	for _, p := range line[1:] {
		w.pdf.LineTo(p[0], p[1])
	}
	if closed {
		w.pdf.ClosePath()
	}
	w.pdf.DrawPath(style)
}

// write sets everything before the turn, whose end would bring back what was
// set before it.
func (w *pdfWriter) write(t Text) {
	if w.points != t.Points || w.bold != t.Bold {
		style := ""
		if t.Bold {
			style = "B"
		}
		w.pdf.SetFont(Family, style, t.Points)
		w.pdf.SetFontSize(t.Points)
		w.points, w.bold = t.Points, t.Bold
	}
	// gofpdf writes the colour of a text only where it differs from the fill.
	w.useFill(t.Grey)
	w.pdf.SetTextColor(t.Grey, t.Grey, t.Grey)
	x := t.At[0] - t.start()
	if t.Angle == 0 {
		w.pdf.Text(x, t.At[1], Printable(t.Words))
		return
	}
	w.pdf.TransformBegin()
	w.pdf.TransformRotate(t.Angle, t.At[0], t.At[1])
	w.pdf.Text(x, t.At[1], Printable(t.Words))
	w.pdf.TransformEnd()
}
