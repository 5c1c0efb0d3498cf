package dxf

import (
	"math"

	"ellwand/pieces/found"
)

// explosion draws entities with all blocks that they insert, counting as it goes.
type explosion struct {
	f      *file
	limits found.Limits
	out    []placed
	things int
	points int
	depth  int
}

// explode entities by a map.
func (f *file) explode(all []entity, by affine, limits found.Limits) ([]placed, error) {
	x := &explosion{f: f, limits: limits}
	err := x.draw(all, by, "")
	return x.out, err
}

// draw entities of a block; what stands on its layer 0 is on the layer of its insert.
func (x *explosion) draw(all []entity, by affine, layer string) error {
	if err := x.limits.Check(found.Nesting, x.depth); err != nil {
		return err
	}
	x.depth++
	defer func() { x.depth-- }()
	for _, e := range all {
		if layer != "" && e.layer == neutralLayer {
			e.layer = layer
		}
		if e.kind == insertKind {
			if err := x.insert(e, by); err != nil {
				return err
			}
			continue
		}
		x.things++
		x.points += len(e.path)
		if err := first(x.limits.Check(found.Things, x.things), x.limits.Check(found.Vertices, x.points)); err != nil {
			return err
		}
		one := placed{entity: e, path: by.path(e.path)}
		one.at = by.apply(e.at)
		one.height = e.height * by.scale()
		x.out = append(x.out, one)
	}
	return nil
}

func (x *explosion) insert(e entity, by affine) error {
	b := x.f.blocks[e.block]
	for _, m := range e.maps {
		if x.things++; x.things > x.limits[found.Things] {
			return &found.TooMuch{What: found.Things}
		}
		if b == nil {
			continue
		}
		m = by.after(m).after(affine{a: 1, d: 1, e: -b.base[0], f: -b.base[1]})
		if d := math.Abs(m.determinant()); !(d > 1e-18) || d > 1e18 {
			return errScale
		}
		if err := x.draw(b.entities, m, e.layer); err != nil {
			return err
		}
	}
	return nil
}
