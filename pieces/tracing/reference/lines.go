package reference

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/tracing/camera"
	"ellwand/pieces/tracing/raster"
)

// How wide the lines of a ground are [source.OwnChoice].
const (
	looks     = 400  // at so many crossings
	leastLine = 6.0  // levels by which a line differs from the ground
	rimOfLine = 0.25 // of that is left at the side of a line
	wider     = 0.9  // of the lines are narrower than what is taken
	blur      = 1.0  // pixels that are added to each side
	mostWide  = 0.25 // of a square, half the width
	usualWide = 0.1  // where none is seen clearly
)

// WithoutLines is the picture in which the lines of the ground are drawn over by what
// lies on both sides of them, so that a rim that crosses them goes on.
func (f Found) WithoutLines(g *raster.Grey, side float64) *raster.Grey {
	half := f.lineHalf(g, side)
	out := raster.New(g.Width, g.Height)
	for y := range g.Height {
		for x := range g.Width {
			i := y*g.Width + x
			out.Values[i] = g.Values[i]
			at := orb.Point{float64(x), float64(y)}
			p := f.Camera.ToPlane(at)
			off := orb.Point{offLine(p[0], side), offLine(p[1], side)}
			onColumn, onRow := math.Abs(off[0]) < half, math.Abs(off[1]) < half
			switch {
			case !onColumn && !onRow || !f.Box.Contains(p):
			case onColumn && onRow:
				out.Values[i] = float32(math.NaN())
			case onColumn:
				out.Values[i] = f.across(g, at, orb.Point{1, 0}, off[0], half)
			default:
				out.Values[i] = f.across(g, at, orb.Point{0, 1}, off[1], half)
			}
		}
	}
	return out.Filled()
}

// offLine is how far a coordinate lies above the nearest line, mm.
func offLine(at, side float64) float64 { return at - side*math.Round(at/side) }

// across a line from a pixel on it, which lies off its middle: between what lies at both
// of its sides.
func (f Found) across(g *raster.Grey, at, way orb.Point, off, half float64) float32 {
	u, v := f.Camera.Jacobian(at)
	det := u[0]*v[1] - u[1]*v[0]
	dx, dy := (way[0]*v[1]-way[1]*v[0])/det, (u[0]*way[1]-u[1]*way[0])/det // pixels a mm
	up, down := half-off, half+off
	above := g.Between(at[0]+up*dx, at[1]+up*dy)
	below := g.Between(at[0]-down*dx, at[1]-down*dy)
	return float32((above*down + below*up) / (up + down))
}

// OnLines says of places of the photo whether they lie on a line of the ground, or so few
// pixels beside one.
func (f *Found) OnLines(g *raster.Grey, side, margin float64) func(orb.Point) bool {
	half := f.lineHalf(g, side)
	return func(at orb.Point) bool {
		p := f.Camera.ToPlane(at)
		near := half + margin*f.Camera.Scale(at)
		return f.Box.Contains(p) && math.Min(math.Abs(offLine(p[0], side)), math.Abs(offLine(p[1], side))) < near
	}
}

// lineHalf is half the width of a line with its blur, mm.
func (f Found) lineHalf(g *raster.Grey, side float64) float64 {
	var all []float64
	for k := range looks {
		mark := f.Marks[k*len(f.Marks)/looks]
		at := f.Camera.ToPlane(mark)
		node := orb.Point{side * math.Round(at[0]/side), side * math.Round(at[1]/side)}
		for axis := range 2 {
			if half, ok := halfAcross(g, &f.Camera, mark, node, axis, side); ok {
				all = append(all, half)
			}
		}
	}
	half := usualWide * side
	if len(all) > 0 {
		slices.Sort(all)
		half = all[int(wider*float64(len(all)-1))]
	}
	half += blur * f.Camera.Scale(f.Camera.Middle)
	return math.Min(half, mostWide*side)
}

// halfAcross is half the width of a line midway between two crossings.
func halfAcross(g *raster.Grey, c *camera.Camera, mark, node orb.Point, axis int, side float64) (float64, bool) {
	const count = 20 // places to each side [source.OwnChoice]
	var values [2*count + 1]float64
	guess := mark
	for i := range values {
		place := node
		place[axis] += side / 2
		place[1-axis] += float64(i-count) / count * 0.45 * side
		at, ok := c.ToPicture(place, guess)
		if !ok || !g.Holds(at[0], at[1], 1) {
			return 0, false
		}
		guess = at
		values[i] = g.Between(at[0], at[1])
	}
	sorted := values
	slices.Sort(sorted[:])
	base := sorted[count]
	most := math.Abs(values[count] - base)
	if most < leastLine || sorted[2*count]-sorted[0] > 3*most {
		return 0, false
	}
	reach := 0
	for reach < count/2 && math.Max(math.Abs(values[count+reach]-base),
		math.Abs(values[count-reach]-base)) > rimOfLine*most {
		reach++
	}
	return float64(reach) / count * 0.45 * side, true
}
