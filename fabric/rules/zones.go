package rules

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/nest/portable"
	"ellwand/pieces/geometry"
)

// Zones are the parts of the bed that may not be used: those of the rules, and the
// line where two selvedges meet. They reach as far as any layout can.
func Zones(b bed.Bed, c cloth.Cloth, far float64) ([]orb.Ring, error) {
	out, err := zonesOfRules(c, b, far)
	if err == nil && b.Kind == lay.BothSelvedgesIn {
		middle, half := b.Width/2, bed.MiddleStrip(c)
		out = append(out, geometry.Rectangle(0, middle-half, far, middle+half))
	}
	return out, err
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
		longest := portable.Hypot(size.Max[0]-size.Min[0], size.Max[1]-size.Min[1])
		far += float64(3 * float64(t.Copies) * (longest + c.Gap + c.Repeat.Along))
	}
	return far
}
