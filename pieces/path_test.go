package pieces

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// hook runs 100 right, a quarter circle of radius 100 up, then a Bezier on.
var hook = Path{
	Line{orb.Point{0, 0}, orb.Point{100, 0}},
	Arc{orb.Point{100, 100}, 100, -math.Pi / 2, math.Pi / 2},
	Bezier{orb.Point{200, 100}, orb.Point{200, 150}, orb.Point{250, 150}, orb.Point{250, 200}},
}

func TestPath(t *testing.T) {
	quarter := 50 * math.Pi
	near(t, orb.Point{0, 0}, hook.At(-5), "before the start")
	near(t, orb.Point{40, 0}, hook.At(40), "on the line")
	near(t, orb.Point{100 + 50*math.Sqrt2, 100 - 50*math.Sqrt2}, hook.At(100+quarter/2), "middle of the arc")
	near(t, orb.Point{250, 200}, hook.At(1e6), "beyond the end")
	middle := 100 + quarter + hook[2].Length()/2
	near2(t, orb.Point{225, 150}, hook.At(middle), 1e-8)
	near(t, orb.Point{1, 0}, hook.Tangent(100), "where line and arc meet")
	near(t, orb.Point{0, 1}, hook.Tangent(100+quarter), "where arc and Bezier meet")
	near(t, hook.Start(), hook.Reverse().End(), "reverse")
	near(t, hook.At(60), hook.Reverse().At(hook.Length()-60), "reverse")
	near(t, MirrorX().Apply(hook.At(300)), hook.Map(MirrorX()).At(300), "map")
	flat := hook.Flatten(0.1)
	assert.Equal(t, hook.Start(), flat[0])
	assert.Equal(t, hook.End(), flat[len(flat)-1])
	for i := 1; i < len(flat); i++ {
		assert.NotEqual(t, flat[i-1], flat[i], "no point twice")
	}
}

func TestEmptyPath(t *testing.T) {
	var none Path
	assert.Zero(t, none.Length())
	assert.Equal(t, orb.Point{}, none.At(1))
	assert.Equal(t, orb.Point{}, none.Tangent(1))
	assert.Empty(t, none.Flatten(1))
	assert.Nil(t, none.Map(Identity()), "a point mark stays a point mark")
	assert.False(t, none.isStraight())
}

// At is the inverse of the length: the part of a path up to At(d) is d long.
func TestPathAtMeasuresAlongThePath(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := drawBezier(t)
		share := rapid.Float64Range(0, 1).Draw(t, "share")
		length := b.Length()
		at := parameterAt(b, share*length, length)
		assert.InDelta(t, share*length, b.lengthTo(at), 1e-6)
	})
}

func TestIsStraight(t *testing.T) {
	line := func(points ...orb.Point) (p Path) {
		for i := 1; i < len(points); i++ {
			p = append(p, Line{points[i-1], points[i]})
		}
		return p
	}
	assert.True(t, line(orb.Point{0, 0}, orb.Point{0, 50}, orb.Point{0, 90}).isStraight())
	assert.True(t, Path{Bezier{orb.Point{0, 0}, orb.Point{1, 0}, orb.Point{2, 0}, orb.Point{9, 0}}}.isStraight())
	assert.False(t, line(orb.Point{0, 0}, orb.Point{0.1, 50}, orb.Point{0, 90}).isStraight(), "bent")
	assert.False(t, line(orb.Point{0, 0}, orb.Point{0, 50}, orb.Point{0, 40}, orb.Point{0, 90}).isStraight(),
		"back and on")
	assert.False(t, hook.isStraight())
}

func TestMotions(t *testing.T) {
	p := orb.Point{3, 1}
	assert.Equal(t, p, Identity().Apply(p))
	assert.Equal(t, orb.Point{13, -4}, Move(10, -5).Apply(p))
	assert.Equal(t, orb.Point{-1, 3}, Turn(90).Apply(p), "counter-clockwise and exact")
	assert.Equal(t, p, Turn(180).Then(Turn(-180)).Apply(p))
	assert.Equal(t, orb.Point{-3, 1}, MirrorX().Apply(p))
	assert.Equal(t, orb.Point{3, -1}, MirrorY().Apply(p))
	near(t, orb.Point{1, 3}, MirrorAbout(orb.Point{0, 0}, orb.Point{5, 5}).Apply(p), "about the diagonal")
	near(t, orb.Point{7, 1}, MirrorAbout(orb.Point{5, 2}, orb.Point{5, -9}).Apply(p), "about x = 5")
	assert.Equal(t, orb.Point{1, 13}, Move(10, 0).Then(Turn(90)).Then(Move(2, 0)).Apply(p), "in the order written")
	assert.True(t, Turn(45).Then(MirrorY()).Mirrors())
	assert.False(t, MirrorX().Then(MirrorY()).Mirrors())
	assert.Equal(t, 1.0, Turn(37).Then(Turn(11)).scale())
	assert.InDelta(t, 2.5, Scale(2.5).Then(Turn(10)).scale(), 1e-12)
}
