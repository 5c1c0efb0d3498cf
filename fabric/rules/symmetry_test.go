package rules

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/motion"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

func shape(lie pieces.GrainLie, points ...orb.Point) pieces.Piece {
	p := pieces.Piece{Name: "shape", Cut: 2}
	for i, q := range points {
		p.Edges = append(p.Edges, pieces.Edge{Name: seams.Called(string(rune('a' + i))),
			Path: pieces.Path{pieces.Line{From: q, To: points[(i+1)%len(points)]}}})
	}
	p.Grain = pieces.Grain{From: orb.Point{40, 10}, To: orb.Point{40, 60}, Lie: lie}
	return p
}

// TestMirrorAlike: the grain runs up the page. A triangle standing on its
// base is its own image about the grain; lying on its side, about a line
// across the grain, which turns the nap round.
func TestMirrorAlike(t *testing.T) {
	rectangle := []orb.Point{{0, 0}, {80, 0}, {80, 120}, {0, 120}}
	standing := []orb.Point{{0, 0}, {80, 0}, {40, 120}}
	lying := []orb.Point{{0, 0}, {120, 40}, {0, 80}}
	askew := []orb.Point{{0, 0}, {80, 0}, {70, 120}, {0, 90}}
	for _, c := range []struct {
		name        string
		lie         pieces.GrainLie
		points      []orb.Point
		either, one bool
	}{
		{"rectangle", pieces.StraightGrain, rectangle, true, true},
		{"rectangle on the cross grain", pieces.CrossGrain, rectangle, true, true},
		{"rectangle on the bias", pieces.Bias, rectangle, true, true},
		{"standing triangle", pieces.StraightGrain, standing, true, true},
		{"lying triangle", pieces.StraightGrain, lying, true, false},
		{"standing triangle on the cross grain", pieces.CrossGrain, standing, true, false},
		{"lying triangle on the cross grain", pieces.CrossGrain, lying, true, true},
		{"askew", pieces.StraightGrain, askew, false, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := shape(c.lie, c.points...)
			outline := p.SeamOutline(0.1)
			_, either := mirrorAlike(p, outline, cloth.EitherWay)
			_, one := mirrorAlike(p, outline, cloth.OneWay)
			assert.Equal(t, c.either, either)
			assert.Equal(t, c.one, one)
		})
	}
}

func TestNotchesDecideAlikeness(t *testing.T) {
	p := shape(pieces.StraightGrain, []orb.Point{{0, 0}, {80, 0}, {80, 120}, {0, 120}}...)
	outline := p.SeamOutline(0.1)
	p.Notches = []pieces.Notch{{Edge: seams.Called("a"), At: 40, Count: 1}}
	_, ok := mirrorAlike(p, outline, cloth.OneWay)
	assert.True(t, ok, "a notch in the middle")
	p.Notches = []pieces.Notch{{Edge: seams.Called("a"), At: 20, Count: 1}}
	_, ok = mirrorAlike(p, outline, cloth.OneWay)
	assert.False(t, ok, "a notch on one side")
	p.Notches = append(p.Notches, pieces.Notch{Edge: seams.Called("a"), At: 60, Count: 1})
	_, ok = mirrorAlike(p, outline, cloth.OneWay)
	assert.True(t, ok, "a notch on each side")
}

func TestEvened(t *testing.T) {
	ring := circle(50, 37)
	image := motion.Reflection(orb.Point{0, 0}, 90)
	out := evened(ring, image)
	for _, p := range out {
		q := image.Apply(p)
		assert.InDelta(t, 0, geometry.Distance(q, geometry.Nearest(out, q)), 1e-9)
	}
	assert.InEpsilon(t, geometry.Area(ring), geometry.Area(out), 0.01)
}
