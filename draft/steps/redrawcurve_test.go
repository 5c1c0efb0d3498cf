package steps

import (
	"bytes"
	"fmt"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/construct"
	"ellwand/pieces/measure"
)

// redrawnWithin is how near to the outline a curve comes out that is drawn from
// the text, in mm: in cm to the millimetre, and in inches to the nearest 1/16,
// whose rounding is by so much coarser.
var redrawnWithin = map[measure.Unit]float64{measure.Centimetre: 1.5, measure.Inch: 1.5 * 25.4 / 16}

// The long curves come out from the text all the way, not only at their marks:
// the edges that are drawn with a flexible curve laid on the marks.
func TestLongCurvesAreRedrawnFromTheText(t *testing.T) {
	long := []string{"sleeve head", "pocket edge", "facing edge"}
	found := map[string]int{}
	for name, garment := range everything(t) {
		for unit, within := range redrawnWithin {
			var text bytes.Buffer
			require.NoError(t, WriteText(&text, Document{Title: "Redrawn", Unit: unit, Garments: []Garment{garment}}))
			sheets := readSheet(t, text.String(), unit)
			for _, c := range garment.contents(unit) {
				r, line := sheets[c.head], c.piece.SeamOutline(0.02)
				r.moveTo(c.sheet.Points[0].At)
				for _, edge := range long {
					for _, p := range r.draw(edge) {
						found[edge]++
						off := offLine(line, p)
						assert.LessOrEqual(t, off, within,
							fmt.Sprintf("%s in %s: %s: %s at %.0f", name, unit, c.head, edge, p))
					}
				}
			}
		}
	}
	for _, edge := range long {
		assert.Greater(t, found[edge], 100, edge)
	}
}

// moveTo moves the redrawn points, the first of which lies at the origin.
func (r *redrawn) moveTo(first orb.Point) {
	for n, at := range r.at {
		r.at[n] = orb.Point{at[0] + first[0], at[1] + first[1]}
	}
}

// draw draws the strokes of a seam one after another: straight ones with a
// ruler, those between with a flexible curve laid on all their marks, which
// leaves and arrives along the straight strokes beside it.
func (r *redrawn) draw(seam string) []orb.Point {
	var out, marks []orb.Point
	var leaving *orb.Point
	finish := func(arriving *orb.Point) {
		if len(marks) > 1 {
			out = append(out, flexed(leaving, marks, arriving)...)
		}
		marks = nil
	}
	for _, s := range r.outline {
		if s.name != seam {
			continue
		}
		a, b := r.at[s.from], r.at[s.to]
		if _, curved := r.curveOf(s); !curved {
			way := construct.Direction(a, b)
			finish(&way)
			leaving = &way
			out = append(out, a, construct.Between(a, b, 0.25), construct.Between(a, b, 0.5),
				construct.Between(a, b, 0.75), b)
			continue
		}
		if len(marks) > 0 && marks[len(marks)-1] != a {
			finish(nil)
			leaving = nil
		}
		on := r.marks(s)
		if len(marks) == 0 {
			marks = append(marks, a)
		}
		marks = append(append(marks, on[2:]...), b)
	}
	finish(nil)
	return out
}

// flexed is the curve through marks, by many points. An end whose direction is
// not known goes on as the circle through the three marks there does.
func flexed(leaving *orb.Point, marks []orb.Point, arriving *orb.Point) []orb.Point {
	if leaving == nil {
		way := circling(marks[0], marks[1], marks[2])
		leaving = &way
	}
	if arriving == nil {
		last := len(marks) - 1
		way := construct.Back(circling(marks[last], marks[last-1], marks[last-2]))
		arriving = &way
	}
	var out []orb.Point
	for _, curve := range construct.Through(*leaving, marks, *arriving) {
		for i := range 8 {
			out = append(out, curve.At(float64(i)/8))
		}
	}
	return out
}

// circling is the direction at a of the circle through three points: the line a-b
// turned back by as much as b-c is turned off a-c (geometry: the angle between a
// tangent and a chord is that over the chord).
func circling(a, b, c orb.Point) orb.Point {
	ab, bc, ac := construct.Direction(a, b), construct.Direction(b, c), construct.Direction(a, c)
	along, across := bc[0]*ac[0]+bc[1]*ac[1], ac[0]*bc[1]-ac[1]*bc[0]
	return orb.Point{ab[0]*along + ab[1]*across, ab[1]*along - ab[0]*across}
}
