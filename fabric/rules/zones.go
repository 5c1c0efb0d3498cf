package rules

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/geometry"
	"ellwand/fabric/lay"
)

// Zones are the parts of the bed that may not be used: the flaws of all plies,
// and the line where two selvedges meet. They reach as far as any layout can.
func Zones(b bed.Bed, c cloth.Cloth, far float64) ([]orb.Ring, error) {
	var out []orb.Ring
	if len(c.Flaws) > 0 && b.Kind.IsAcross() {
		return nil, fmt.Errorf("the cloth has flaws, and where the fold or cut across it falls depends on the length, so that they would lie elsewhere each time; lay it open or folded along the warp")
	}
	for _, p := range b.PliesOn(c, 0) {
		back := geometry.Inverse(p.Motion)
		for _, flaw := range c.Flaws {
			ring := make(orb.Ring, len(flaw.Outline))
			for i, q := range flaw.Outline {
				ring[i] = geometry.Apply(back, orb.Point{q[0], q[1] - c.Selvedge})
			}
			parts, err := geometry.Clipped(geometry.Closed(ring), 0, p.Low, far, p.High)
			if err != nil {
				return nil, err
			}
			out = append(out, parts...)
		}
	}
	if b.Kind == lay.BothSelvedgesIn {
		middle, half := b.Width/2, bed.MiddleStrip(c)
		out = append(out, geometry.Rectangle(0, middle-half, far, middle+half))
	}
	return out, nil
}

// farEnd is a length that no layout of the search exceeds: three times all the
// templates one behind the other, behind the last flaw.
func farEnd(c cloth.Cloth, templates []Template) float64 {
	far := 1000.0
	for _, flaw := range c.Flaws {
		if end := flaw.Outline.Bound().Max[0]; end < cloth.Endless/2 {
			far = math.Max(far, end)
		}
	}
	for _, t := range templates {
		size := t.Outline.Bound()
		far += 3 * float64(t.Copies) * (math.Hypot(size.Max[0]-size.Min[0], size.Max[1]-size.Min[1]) + c.Gap + c.Repeat.Along)
	}
	return far
}
