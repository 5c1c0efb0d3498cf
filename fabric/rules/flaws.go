package rules

import (
	"errors"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/geometry"
)

// This file is the rule of the flaws: nothing lies on one, in whichever ply.

var _ = register(rule{zones: flawed})

// flawed are the flaws of all plies of a bed.
func flawed(c cloth.Cloth, b bed.Bed, far float64) ([]orb.Ring, error) {
	if len(c.Flaws) > 0 && b.Kind.IsAcross() {
		return nil, errors.New("the cloth has flaws, and where the fold or cut across it falls depends on the length, " +
			"so that they would lie elsewhere each time; lay it open or folded along the warp")
	}
	var out []orb.Ring
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
	return out, nil
}
