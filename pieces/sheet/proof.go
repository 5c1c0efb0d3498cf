package sheet

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/drawing"
)

// sizeTolerance, mm, is by how much a line round a piece may be off on paper: less than
// any printer is [source.OwnChoice].
const sizeTolerance = 0.05

// Proven holds what is printed against the figures that were asked for: each is there
// once, in its size and not turned over, and the squares by which the print is measured
// have their sides. It measures with arithmetic of its own.
func (l Layout) Proven(asked []DrawnPiece, pages []drawing.Page) error {
	left := map[string][]measured{}
	for _, f := range l.Figures {
		for _, m := range f.measured() {
			left[m.name] = append(left[m.name], m)
		}
	}
	for _, f := range asked {
		for _, want := range f.measured() {
			found := left[want.name]
			if len(found) == 0 {
				return fmt.Errorf("%s is not printed", want.name)
			}
			left[want.name] = found[1:]
			if err := want.against(found[0]); err != nil {
				return fmt.Errorf("%s: %w", want.name, err)
			}
		}
	}
	for name, more := range left {
		if len(more) > 0 {
			return fmt.Errorf("%s is printed once too often", name)
		}
	}
	return squaresMeasured(pages)
}

// measured is a piece as it lies somewhere: the length of its cutting line and of its
// seam line, mm, and on which side of its cutting line it lies.
type measured struct {
	name          string
	cutting, seam float64
	area          float64 // with its sign
}

func (f DrawnPiece) measured() []measured {
	var out []measured
	for _, d := range f.Sizes {
		out = append(out, measured{
			name:    fmt.Sprintf("%s, %s, %s", d.Piece.Name, d.Piece.Garment, d.Piece.Size),
			cutting: walked(d.Cutting), seam: walked(d.Piece.Boundary(tolerance)), area: swept(d.Cutting),
		})
	}
	return out
}

// against compares a piece as it was drafted with it on the plane, which turns y down.
func (m measured) against(printed measured) error {
	switch {
	case !(math.Abs(m.cutting-printed.cutting) <= sizeTolerance):
		return fmt.Errorf("%.2f mm of cutting line are printed as %.2f mm", m.cutting, printed.cutting)
	case !(math.Abs(m.seam-printed.seam) <= sizeTolerance):
		return fmt.Errorf("%.2f mm of seam line are printed as %.2f mm", m.seam, printed.seam)
	case m.area*printed.area > 0:
		return fmt.Errorf("it is printed turned over")
	}
	return nil
}

// walked is the length of a line.
func walked(line []orb.Point) float64 {
	sum := 0.0
	for i := 1; i < len(line); i++ {
		sum += math.Hypot(line[i][0]-line[i-1][0], line[i][1]-line[i-1][1])
	}
	return sum
}

// swept is twice the area that a closed line encloses, by the trapezia below its chords.
func swept(line []orb.Point) float64 {
	sum := 0.0
	for i := 1; i < len(line); i++ {
		sum += (line[i-1][0] - line[i][0]) * (line[i-1][1] + line[i][1])
	}
	return sum
}

// squaresMeasured looks on the pages for a square of 10 cm and one of 4 in.
func squaresMeasured(pages []drawing.Page) error {
	for _, side := range []float64{100, 4 * 25.4} {
		found := false
		for _, page := range pages {
			page.Strokes(func(line []orb.Point) { found = found || isSquare(line, side) })
		}
		if !found {
			return fmt.Errorf("there is no square of %.1f mm to measure the print by", side)
		}
	}
	return nil
}

func isSquare(line []orb.Point, side float64) bool {
	if len(line) != 5 || line[0] != line[4] {
		return false
	}
	for i := 1; i < len(line); i++ {
		if math.Abs(math.Hypot(line[i][0]-line[i-1][0], line[i][1]-line[i-1][1])-side) > sizeTolerance {
			return false
		}
	}
	diagonal := math.Hypot(line[2][0]-line[0][0], line[2][1]-line[0][1])
	return math.Abs(diagonal-side*math.Sqrt2) <= sizeTolerance
}
