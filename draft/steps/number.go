package steps

import (
	"math"
	"strconv"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces/drawing"
	"ellwand/pieces/geometry"
)

const numberSize = 8.0 // points

// spot is a place on paper with the numbers of all points that fall on it.
type spot struct {
	at      orb.Point
	numbers []string
}

// spots of the draft; points nearer than this on paper share one.
func (f *pieceDrawing) spots() []spot {
	const near = 0.7
	var out []spot
next:
	for _, p := range f.sheet.Points {
		at, number := f.at(p.At), strconv.Itoa(p.Number)
		for i := range out {
			if construct.Distance(out[i].at, at) < near {
				out[i].numbers = append(out[i].numbers, number)
				continue next
			}
		}
		out = append(out, spot{at, []string{number}})
	}
	return out
}

// drawNumbers marks every point and writes its number beside it, where it
// covers least.
func (f *pieceDrawing) drawNumbers() {
	all := f.spots()
	for _, s := range all {
		f.to.Disc(0, s.at, 0.6)
		f.taken = append(f.taken, geometry.Box(s.at, orb.Point{0.8, 0.8}))
	}
	for _, s := range all {
		words := strings.Join(s.numbers, ", ")
		half := orb.Point{drawing.Width(words, numberSize, true)/2 + 0.3, 0.36*numberSize*drawing.Point + 0.3}
		centre := f.freest(s.at, half)
		box := geometry.Box(centre, half)
		f.taken = append(f.taken, box)
		f.to.Write(drawing.Text{Words: words, At: orb.Point{centre[0], centre[1] + 0.36*numberSize*drawing.Point},
			Points: numberSize, Bold: true, Align: drawing.Centre})
	}
}

// freest is the place beside a point where a box of that half size covers
// least; nearer ones are taken of equally free ones.
func (f *pieceDrawing) freest(at, half orb.Point) orb.Point {
	best, least := at, math.Inf(1)
	for _, gap := range []float64{0.9, 2, 3.2} {
		for i := range 16 {
			sin, cos := math.Sincos(2 * math.Pi * float64(i) / 16)
			reach := math.Min((half[0]+gap)/math.Max(math.Abs(cos), 1e-9), (half[1]+gap)/math.Max(math.Abs(sin), 1e-9))
			p := orb.Point{at[0] + reach*cos, at[1] + reach*sin}
			if cost := f.covered(geometry.Box(p, half)) + gap/2; cost < least-1e-9 {
				best, least = p, cost
			}
		}
	}
	return best
}

// covered is what a box covers: words and points count for more than lines.
func (f *pieceDrawing) covered(box orb.Bound) float64 {
	cost := 0.0
	for _, t := range f.taken {
		if t.Intersects(box) {
			cost += 10
		}
	}
	for _, l := range f.lines {
		if geometry.Crosses(l[:], box) {
			cost += 2
		}
	}
	return cost
}
