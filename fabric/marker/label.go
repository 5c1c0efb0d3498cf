package marker

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/pieces/drawing"
	"ellwand/pieces/geometry"
)

// shownPiece is a piece on one page, in mm of paper.
type shownPiece struct {
	number  int
	laid    lay.Laid
	outline []orb.Point
	visible orb.Ring // the part on this page
	arrow   [2]orb.Point
	darts   [][]orb.Point
	fine    [][]orb.Point // seam line and marks: kept clear where there is room
}

// label is a text block that has found its place.
type label struct {
	box    orb.Bound
	lines  []string // the first is bold
	inline bool     // the one line stands beside the disc, not below it
	plain  bool     // the number alone, without its disc
	points float64
	up     bool // reads upwards
	number int
	// leader, when set, is the place in the piece that the label points to.
	leader *orb.Point
}

// discSize is the diameter of the disc with the number, for a size of type.
func discSize(points float64) float64 { return points * drawing.Point * 1.75 }

// lineStep is the distance of two baselines, for a size of type.
func lineStep(points float64) float64 { return points * drawing.Point * 1.2 }

// texts of a label from the fullest to the shortest, without their places.
func (s *sheets) texts(piece shownPiece) []label {
	l := piece.laid
	copies := fmt.Sprintf("%d of %d", l.Copy, s.copies(l))
	full := []string{l.Name, copies}
	if garment := garmentOf(l); garment != "" {
		full[1] = garment + ", " + copies
	}
	if about := aboutCut(l); about != "" {
		full = append(full, about)
	}
	return []label{
		{lines: full},
		{lines: []string{l.Name + ", " + copies}, inline: true},
		{lines: []string{l.Name, copies}},
		{lines: []string{l.Name}, inline: true},
		{lines: []string{l.Name}},
	}
}

// aboutCut says what is not plain in how a piece is cut: from two plies, on
// the fold, face down.
func aboutCut(l lay.Laid) string {
	var parts []string
	switch {
	case l.OnFold:
		parts = append(parts, "on the fold")
	case l.Yields == 2, l.FromLower:
		parts = append(parts, gives(l))
	}
	if l.Mirrored {
		parts = append(parts, "face down")
	}
	return strings.Join(parts, ", ")
}

func (s *sheets) copies(l lay.Laid) int {
	n := 0
	for _, other := range s.plan.Pieces {
		if other.Name == l.Name && other.Garment == l.Garment && other.Size == l.Size {
			n++
		}
	}
	return n
}

// attempt is a label that may fit, and the lines that it keeps off.
type attempt struct {
	piece shownPiece
	label
}

// attempts at a label inside a piece, the best first.
func (s *sheets) attempts(piece shownPiece) []attempt {
	var out []attempt
	add := func(p shownPiece, l label, sizes ...float64) {
		for _, points := range sizes {
			l.points, l.up = points, false
			out = append(out, attempt{p, l})
			if len(l.lines) > 0 || l.plain { // a disc is as wide as it is high
				l.up = true
				out = append(out, attempt{p, l})
			}
		}
	}
	loose := piece
	loose.fine = nil
	texts := s.texts(piece)
	for _, text := range texts {
		add(piece, text, 9, 8, 7, 6)
	}
	for _, text := range texts {
		add(loose, text, 9, 8, 7, 6, 5.2)
	}
	return append(out, numbers(loose)...)
}

// numbers are attempts at the number alone, in its disc or without.
func numbers(piece shownPiece) []attempt {
	var out []attempt
	for _, points := range []float64{7, 6, 5} {
		out = append(out, attempt{piece, label{points: points}})
	}
	for _, points := range []float64{6, 5, 4.5} {
		out = append(out, attempt{piece, label{plain: true, points: points}},
			attempt{piece, label{plain: true, points: points, up: true}})
	}
	return out
}

// labelInside finds the first attempt, from the index given, that fits.
func (s *sheets) labelInside(piece shownPiece, from int) (label, int, bool) {
	for i, a := range s.attempts(piece)[from:] {
		if l, ok := s.place(a.piece, a.label); ok {
			return l, from + i, true
		}
	}
	return label{}, 0, false
}

// blockSize of a label that reads across.
func (s *sheets) blockSize(l label) (width, height float64) {
	if l.plain {
		s.Bold(l.points)
		return s.TextWidth(strconv.Itoa(l.number)) + 0.5, l.points*drawing.Point*0.75 + 0.4
	}
	width, height = discSize(l.points), discSize(l.points)
	if l.inline {
		s.lineFont(l, 0)
		return width + 0.7 + s.TextWidth(l.lines[0]) + 0.8, height + 0.8
	}
	for i, line := range l.lines {
		s.lineFont(l, i)
		width = math.Max(width, s.TextWidth(line))
		height += lineStep(l.points)
	}
	return width + 0.8, height + 0.8
}

func (s *sheets) lineFont(l label, i int) {
	if i == 0 {
		s.Bold(l.points)
		return
	}
	s.Plain(l.points * 0.85)
}

// gridSteps of the search for a place, each way; even, so that there is a middle.
const gridSteps = 22

// place looks for the place nearest to the middle of the piece; of equally near ones it
// takes the leftmost, and of those the highest.
func (s *sheets) place(piece shownPiece, l label) (label, bool) {
	l.number = piece.number
	width, height := s.blockSize(l)
	if l.up {
		width, height = height, width
	}
	bound := piece.visible.Bound()
	roomX, roomY := bound.Max[0]-bound.Min[0]-width, bound.Max[1]-bound.Min[1]-height
	if roomX < 0 || roomY < 0 {
		return label{}, false
	}
	middle, best, first := bound.Center(), math.Inf(1), 0
	for _, i := range fromMiddle {
		for _, j := range fromMiddle {
			x, y := bound.Min[0]+roomX*float64(i)/gridSteps, bound.Min[1]+roomY*float64(j)/gridSteps
			box := orb.Bound{Min: orb.Point{x, y}, Max: orb.Point{x + width, y + height}}
			away, rank := geometry.Distance(box.Center(), middle), i*(gridSteps+1)+j
			if (away < best || away == best && rank < first) && piece.hasRoom(box) {
				best, first, l.box = away, rank, box
			}
		}
	}
	return l, !math.IsInf(best, 1)
}

// fromMiddle are the steps of the grid from the middle outwards, so that what is found
// early leaves little to be tried.
var fromMiddle = func() []int {
	out := []int{gridSteps / 2}
	for i := 1; i <= gridSteps/2; i++ {
		out = append(out, gridSteps/2-i, gridSteps/2+i)
	}
	return out
}()

// hasRoom reports whether a box lies inside the piece and touches neither its
// grain arrow nor a dart nor the fold mark.
func (p shownPiece) hasRoom(box orb.Bound) bool {
	if !geometry.Inside(p.visible, box.Center()) || geometry.Crosses(p.visible, box) {
		return false
	}
	if geometry.Crosses(p.arrow[:], box.Pad(0.7)) {
		return false
	}
	for _, line := range append(p.darts[:len(p.darts):len(p.darts)], p.fine...) {
		if geometry.Crosses(line, box.Pad(0.3)) {
			return false
		}
	}
	return !p.laid.OnFold || box.Max[1] < p.foldLine()-3.4
}

// foldLine is the height of the fold on the page: the fold is the lowest edge.
func (p shownPiece) foldLine() float64 { return orb.Ring(p.outline).Bound().Max[1] }
