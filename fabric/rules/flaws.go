package rules

import (
	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/pieces/geometry"
)

// This file is the rule of the flaws: nothing lies on one, in whichever ply.

var _ = register(rule{zones: flawed})

// flawed are the flaws of all plies of a bed.
func flawed(c cloth.Cloth, b bed.Bed, far float64) ([]orb.Ring, error) {
	if len(c.Flaws) > 0 && b.Kind.IsAcross() {
		return nil, lay.Reason{Of: lay.FlawsMove}
	}
	var out []orb.Ring
	for _, p := range b.PliesOn(c, 0) {
		back := motion.Inverse(p.Motion)
		for _, flaw := range c.Flaws {
			ring := make(orb.Ring, len(flaw.Outline))
			for i, q := range flaw.Outline {
				ring[i] = back.Apply(orb.Point{q[0], q[1] - c.Selvedge})
			}
			parts, err := motion.Clipped(geometry.Closed(ring), 0, p.Low, far, p.High)
			if err != nil {
				return nil, err
			}
			out = append(out, parts...)
		}
	}
	return out, nil
}
