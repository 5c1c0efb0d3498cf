package steps

import (
	"fmt"
	"io"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/paper"
	"ellwand/pieces/seams"
	"ellwand/pieces/sheet"
)

// The tables of a nest, mm.
const (
	inchWider   = 1.3 // figures in inches are longer
	nestTallest = 0.5
)

// grading is how wide the columns of a table are: the names, and each size.
type grading struct{ names, size float64 }

var (
	pointTable = grading{9, 21}
	seamTable  = grading{45, 16}
)

// WriteNestPDF writes the sizes of a job as PDF: for each piece a page or more
// with all its sizes one over the other, told apart by their dashes, and tables
// of where its points lie and how long its seams are in each.
func WriteNestPDF(w io.Writer, n Nest, on paper.Paper) error {
	return drawing.WritePDF(w, "Sizes: "+n.Documents[0].Title, n.pages(on))
}

func (n Nest) pages(on paper.Paper) []drawing.Page {
	s := newSheets(n.Documents[0], on)
	for i, garment := range n.Documents[0].Garments {
		for _, p := range n.pieces(i) {
			s.nestPage(garment, p)
		}
	}
	return s.finish()
}

func (s *sheets) nestPage(garment Garment, p nested) {
	s.title = [2]string{p.all[0].head, garment.Name + ": " + p.all[0].cut}
	s.addPage()
	height, scale := p.draw(s.On, margin, figureTop-4, s.Inner(), s.Height*nestTallest)
	note := fmt.Sprintf("Drawn at 1 : %.4g, seam lines only. The numbers stand at size %s.", scale, p.sizes[0])
	s.note(figureTop+height, note)
	s.startColumns(figureTop + height + 6)
	s.key(p.sizes)
	s.wide(2 * lineStep)
	for _, line := range drawing.Wrapped(placesNote, textSize, false, s.Inner()) {
		s.wide(lineStep)
		s.write(line, margin, textSize, false, drawing.Left)
		s.Y += lineStep
	}
	for _, group := range p.alike() {
		s.grades("Points", pointTable, group.sizes, group.places(s.document.Unit))
	}
	s.grades("Seams, darts closed", seamTable, p.sizes, p.seamTable())
}

// draw puts every size into a place of a width at an upper edge, no taller than
// given, and returns the height that it took and its scale.
func (p nested) draw(to *drawing.Picture, left, top, width, tallest float64) (height, scale float64) {
	box := p.all[0].bound()
	for _, c := range p.all[1:] {
		box = box.Union(c.piece.SeamOutline(1).Bound())
	}
	f, height := placed(p.all[0], box, to, left, top, width, tallest)
	for i, c := range p.all {
		f.outline(c.piece, sizePen(i))
	}
	f.drawGrain()
	f.drawNumbers()
	return height, f.scale
}

// sizePen is the line of the size with an index, lighter and shorter in its
// dashes than at full size.
func sizePen(i int) drawing.Pen {
	pen := sheet.LineOf(i)
	pen.Width *= 0.6
	dashes := make([]float64, len(pen.Dashes))
	for k, length := range pen.Dashes {
		dashes[k] = 0.5 * length
	}
	pen.Dashes = dashes
	return pen
}

// outline draws the seam line of a piece in one stroke, so that its dashes run
// on round the corners, and its darts.
func (f *pieceDrawing) outline(piece pieces.Piece, pen drawing.Pen) {
	var line []orb.Point
	for _, e := range piece.Edges {
		for _, p := range e.Path.Flatten(0.05 * f.scale) {
			line = append(line, f.at(p))
		}
	}
	f.line(pen, append(line, line[0])...)
	pen.Width /= 2
	for _, d := range piece.Darts {
		f.line(pen, f.at(d.Start), f.at(d.Apex), f.at(d.End))
		if d.Mouth == seams.None {
			f.line(pen, f.at(d.Start), f.at(d.OtherApex), f.at(d.End))
		}
	}
}

// key shows the line of each size.
func (s *sheets) key(sizes []string) {
	const sample, gap = 18.0, 6.0
	x := margin
	for i, size := range sizes {
		words := "size " + size
		wide := sample + 2 + drawing.Width(words, textSize, true) + gap
		if x+wide > s.Right() {
			x, s.Y = margin, s.Y+lineStep+1
		}
		s.On.Line(sizePen(i), orb.Point{x, s.Y - 1}, orb.Point{x + sample, s.Y - 1})
		s.write(words, x+sample+2, textSize, true, drawing.Left)
		x += wide
	}
	s.Y += lineStep + 3
}

// wide makes room for words over the whole width.
func (s *sheets) wide(height float64) {
	if s.HasRoom(height + footHeight) {
		return
	}
	s.title[1] = "continued"
	s.addPage()
}

// grades writes a table with a column for each size, as many at a time as the
// page is wide, and after the last the rule of a row.
func (s *sheets) grades(head string, g grading, sizes []string, rows []gradeRow) {
	if isInch(s.document.Unit) {
		g.size *= inchWider
	}
	most := int((s.Inner() - g.names) / g.size)
	for from := 0; from < len(sizes); from += most {
		to := min(from+most, len(sizes))
		right := margin + g.names + float64(to-from)*g.size
		s.wide(4 * lineStep)
		s.Y += 2.5
		s.write(head, margin, headSize, true, drawing.Left)
		s.Y += lineStep + 1
		for i, size := range sizes[from:to] {
			s.write(size, margin+g.names+float64(i+1)*g.size, textSize, true, drawing.Right)
		}
		s.Y += lineStep + 0.4
		for _, row := range rows {
			s.wide(lineStep)
			s.write(row.name, margin, textSize, g.names < g.size, drawing.Left)
			for i, figure := range row.figures[from:to] {
				s.write(figure, margin+g.names+float64(i+1)*g.size, textSize, false, drawing.Right)
			}
			if room := s.Right() - right - 4; room > 20 {
				s.write(drawing.Shortened(strings.TrimSpace(row.rule), 7, false, room), right+4, 7, false, drawing.Left)
			}
			s.Y += lineStep + 0.4
		}
	}
}

// write puts words on the line at a place across the page.
func (s *sheets) write(words string, x, size float64, bold bool, align drawing.Align) {
	s.On.Write(drawing.Text{Words: words, At: orb.Point{x, s.Y}, Points: size, Bold: bold, Align: align})
}
