package model

import "ellwand/nest/internal/outline"

// Coarser is the same problem with outlines of fewer vertices, which contain those of
// m and have grown by up to the tolerance, and tables of so many cells on the long side.
// Boxes and shapes are the same: a layout of it is one of m.
func (m *Model) Coarser(tolerance float64, cells int) *Model {
	c := *m
	c.Bases, c.byPoints, c.Shapes, c.solids = nil, nil, nil, nil
	c.tables, c.cells = &tables{shared: m.tables.shared}, cells
	bases := make([]int, len(m.Bases))
	for i, b := range m.Bases {
		bases[i], _ = c.AddBase(outline.Simplify(b.Points, tolerance), b.Obstacle)
	}
	for _, s := range m.Shapes {
		s.Base = bases[s.Base]
		c.AddShape(s)
	}
	return &c
}

// Size is the number of outlines of the pieces, and of the convex parts of those.
func (m *Model) Size() (outlines, parts int) {
	met := map[int]bool{}
	for _, piece := range m.Pieces {
		for _, k := range piece.Shapes {
			if base := m.Shapes[k].Base; !met[base] {
				met[base] = true
				parts += len(m.Bases[base].Parts)
			}
		}
	}
	return len(met), parts
}
