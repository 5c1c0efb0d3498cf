package construct

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"

	"ellwand/pieces"
	"ellwand/pieces/measure"
)

// A quarter circle is drawn by a spline through points on it within a few
// thousandths of its radius; its length is pi r / 2 (geometry).
func TestThroughFollowsACircle(t *testing.T) {
	var points []orb.Point
	for i := range 5 {
		sin, cos := math.Sincos(float64(i) * math.Pi / 8)
		points = append(points, orb.Point{100 * cos, 100 * sin})
	}
	path := Through(orb.Point{0, 1}, points, orb.Point{-1, 0})
	assert.InDelta(t, 50*math.Pi, path.Length(), 0.1)
	for _, p := range path.Flatten(0.01) {
		assert.InDelta(t, 100, math.Hypot(p[0], p[1]), 0.1)
	}
}

func TestThroughBendsWithoutAJump(t *testing.T) {
	path := Through(orb.Point{1, 0}, []orb.Point{{0, 0}, {30, 20}, {50, 10}, {90, 40}}, orb.Point{0, 1})
	for i := 1; i < len(path); i++ {
		before, after := path[i-1].(pieces.Bezier), path[i].(pieces.Bezier)
		assert.InDelta(t, 0, Distance(before.Tangent(1), after.Tangent(0)), 1e-9, "direction at point %d", i)
		assert.InDelta(t, bend(before, 1), bend(after, 0), 1e-6, "bend at point %d", i)
	}
	assert.InDelta(t, 0, Distance(orb.Point{1, 0}, path[0].Tangent(0)), 1e-9)
	assert.InDelta(t, 0, Distance(orb.Point{0, 1}, path[2].Tangent(1)), 1e-9)
}

// bend is the curvature at an end, from the control points (geometry).
func bend(b pieces.Bezier, t float64) float64 {
	p, q, r := b.P0, b.P1, b.P2
	if t == 1 {
		p, q, r = b.P3, b.P2, b.P1
	}
	cross := (q[0]-p[0])*(r[1]-q[1]) - (q[1]-p[1])*(r[0]-q[0])
	if t == 1 {
		cross = -cross
	}
	return 2. / 3 * cross / math.Pow(Distance(p, q), 3)
}

// Folding the paper along the first leg must bring the mouth onto the seam
// beside it, and along the middle line its two halves onto each other
// (geometry of the fold).
func TestDartMouthFoldsOntoTheSeam(t *testing.T) {
	first, apex := orb.Point{-20, 3}, orb.Point{5, 150}
	second := pieces.MirrorAbout(apex, Between(first, orb.Point{31, 6}, 0.5)).Apply(first)
	seam := Direction(first, orb.Point{-90, -8})
	mouth := DartMouth(first, apex, second, seam)

	peak := mouth[0].End()
	folded := pieces.MirrorAbout(first, apex).Apply(peak)
	assert.InDelta(t, 0, Distance(Direction(first, folded), seam), 1e-9, "the folded mouth lies along the seam")
	assert.InDelta(t, Distance(first, peak), Distance(second, peak), 1e-9)
	assert.Equal(t, second, mouth.End())
	assert.Greater(t, Distance(apex, peak), Distance(apex, Between(first, second, 0.5)), "the mouth stands out")
}

func TestStepsReadAsInstructions(t *testing.T) {
	s := Sheet{Piece: "square"}
	one := s.Start(0, 0, "the corner")
	two := s.Down(one, 215, "scye depth and 5 mm")
	three := s.Along(one, two, 100, "")
	four := s.Turn(two, one, 90, "open the dart")
	s.Draw("draw the neck "+Numbers(three, four), "square to the fold")
	var text []string
	for _, step := range s.Steps {
		text = append(text, step.Text(measure.Centimetre))
	}
	assert.Equal(t, []string{
		"mark 1: the corner",
		"square down from 1 by 21.5 cm to 2: scye depth and 5 mm",
		"on the line 1-2, 10 cm from 1, mark 3",
		"swing 2 about 1 counter-clockwise by 30.4 cm to 4: open the dart",
		"draw the neck 3-4: square to the fold",
	}, text)
	assert.InDelta(t, 215, four.X(), 1e-9)
	assert.Equal(t, "square down from 1 by 8 7/16 in to 2: scye depth and 3/16 in", s.Steps[1].Text(measure.Inch))
	assert.Equal(t, []Point{one, two, three, four}, s.Points)
}
