package bed

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/motion"
)

// Band is what a flaw takes across a bed for its whole length, such as a crease, mm:
// from one place to another of one of its plies, which it may reach beyond.
type Band struct {
	From, To float64
	Ply      Ply
}

// Bands of the flaws of a cloth, ply by ply.
func (b Bed) Bands(c cloth.Cloth) []Band {
	var out []Band
	for _, ply := range b.PliesOn(c, 0) {
		back := motion.Inverse(ply.Motion)
		for _, flaw := range c.Flaws {
			box := flaw.Outline.Bound()
			if box.Min[0] > -cloth.Endless || box.Max[0] < cloth.Endless {
				continue
			}
			y0 := back.Apply(orb.Point{0, box.Min[1] - c.Selvedge})[1]
			y1 := back.Apply(orb.Point{0, box.Max[1] - c.Selvedge})[1]
			out = append(out, Band{From: math.Min(y0, y1), To: math.Max(y0, y1), Ply: ply})
		}
	}
	return out
}
