package nofit

import "math"

// fillDepth computes the signed distance to the boundary of the region at
// every corner: positive inside. Corners of boundary cells measure the
// stretches there; from them the nearest stretch is handed on from corner to
// corner in two sweeps (Danielsson 1980, doi 10.1016/0146-664X(80)90054-4).
// What the sweeps miss is far below a cell and touches the severity only,
// never the answer to "do they overlap".
func (t *Table) fillDepth() {
	w, h := t.nx+1, t.ny+1
	nearest := make([]int32, w*h)
	distance := make([]float64, w*h)
	for i := range nearest {
		nearest[i], distance[i] = -1, math.Inf(1)
	}
	t.seed(nearest, distance)
	for iy := 0; iy < h; iy++ {
		for ix := 0; ix < w; ix++ {
			t.relax(nearest, distance, ix, iy, -1)
		}
	}
	for iy := h - 1; iy >= 0; iy-- {
		for ix := w - 1; ix >= 0; ix-- {
			t.relax(nearest, distance, ix, iy, 1)
		}
	}
	t.signCorners(distance)
	t.storeCorners(distance)
}

// signCorners takes the roots of the squared distances, negative for corners outside the
// region.
func (t *Table) signCorners(distance []float64) {
	w := t.nx + 1
	for i, d := range distance {
		distance[i] = math.Sqrt(d)
		if math.IsInf(d, 1) {
			distance[i] = 0
		}
		if !t.cornerInside(i%w, i/w) {
			distance[i] = -distance[i]
		}
	}
}

// storeCorners copies the depths into the cells, in units of the deepest.
func (t *Table) storeCorners(distance []float64) {
	w := t.nx + 1
	deepest := t.side
	for _, d := range distance {
		deepest = max(deepest, d)
	}
	t.unit = deepest / 16000
	for k := range t.cells {
		at := k/t.nx*w + k%t.nx
		for c, i := range [4]int{at, at + 1, at + w, at + w + 1} {
			t.cells[k].corners[c] = int16(max(-16000, math.Round(distance[i]/t.unit)))
		}
	}
	t.storeDepths(distance, deepest)
}

// storeDepths copies the depth at the low corner of each cell for fields, a
// byte each: from the cells, where they lie twelve bytes apart, BenchmarkField
// took a quarter more.
func (t *Table) storeDepths(distance []float64, deepest float64) {
	w := t.nx + 1
	t.depthUnit = deepest / math.MaxUint8
	t.depths = make([]uint8, len(t.cells))
	for k := range t.cells {
		if d := distance[k/t.nx*w+k%t.nx]; d > 0 {
			// The deepest may come out above the greatest by a rounding.
			t.depths[k] = uint8(min(math.MaxUint8, math.Ceil(d/t.depthUnit)))
		}
	}
}

// seed measures the corners of each boundary cell against its stretches.
func (t *Table) seed(nearest []int32, distance []float64) {
	w := t.nx + 1
	for _, s := range t.stretches {
		ix, iy := int(s.cell)%t.nx, int(s.cell)/t.nx
		for k := s.from; k < s.to; k++ {
			for _, c := range [4][2]int{{ix, iy}, {ix + 1, iy}, {ix, iy + 1}, {ix + 1, iy + 1}} {
				d := t.edges[k].squared(t.cornerX(c[0]), t.cornerY(c[1]))
				if i := c[1]*w + c[0]; d < distance[i] {
					distance[i], nearest[i] = d, k
				}
			}
		}
	}
}

// relax offers a corner the nearest stretches of the neighbours that a sweep
// in the given direction has already passed.
func (t *Table) relax(nearest []int32, distance []float64, ix, iy, way int) {
	w, h := t.nx+1, t.ny+1
	i := iy*w + ix
	x, y := t.cornerX(ix), t.cornerY(iy)
	for _, step := range [4][2]int{{way, 0}, {0, way}, {way, way}, {-way, way}} {
		jx, jy := ix+step[0], iy+step[1]
		if jx < 0 || jy < 0 || jx >= w || jy >= h {
			continue
		}
		k := nearest[jy*w+jx]
		if k < 0 || k == nearest[i] {
			continue
		}
		if d := t.edges[k].squared(x, y); d < distance[i] {
			distance[i], nearest[i] = d, k
		}
	}
}

// cornerInside reports whether a corner lies inside the region, by any of the
// cells around it.
func (t *Table) cornerInside(ix, iy int) bool {
	x, y := t.cornerX(ix), t.cornerY(iy)
	for _, c := range [4][2]int{{ix - 1, iy - 1}, {ix, iy - 1}, {ix - 1, iy}, {ix, iy}} {
		if c[0] < 0 || c[1] < 0 || c[0] >= t.nx || c[1] >= t.ny {
			continue
		}
		class := t.cells[c[1]*t.nx+c[0]].class
		if class == inside {
			return true
		}
		if class >= firstList && t.exactDepth(class-firstList, x, y) > 0 {
			return true
		}
	}
	return false
}
