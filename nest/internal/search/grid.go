package search

// grid finds the bodies near a place: each is entered in every cell that its
// bounding box reaches. The cost of a query grows with the neighbours, not
// with the pieces.
type grid struct {
	scale  float64 // cells a unit
	nx, ny int
	cells  [][]int32
	boxes  []cellBox // of each body
}

type cellBox struct{ x0, y0, x1, y1 int32 }

// reset enters all bodies in a grid with cells of the given size, about that
// of a body.
func (g *grid) reset(bodies []body, size, length, width float64) {
	g.empty(len(bodies), size, length, width)
	for i := range bodies {
		g.add(i, &bodies[i])
	}
}

// empty prepares a grid for so many bodies without entering them.
func (g *grid) empty(bodies int, size, length, width float64) {
	g.scale = 1 / size
	nx, ny := int(length*g.scale)+1, int(width*g.scale)+1
	if nx*ny > len(g.cells) {
		g.cells = make([][]int32, nx*ny)
	}
	g.nx, g.ny = nx, ny
	for i := range g.cells {
		g.cells[i] = g.cells[i][:0]
	}
	if len(g.boxes) != bodies {
		g.boxes = make([]cellBox, bodies)
	}
}

func (g *grid) box(x, y, hx, hy float64) cellBox {
	return cellBox{
		g.cellX(x - hx), g.cellY(y - hy), g.cellX(x + hx), g.cellY(y + hy),
	}
}

// whole reports whether a box reaches every cell.
func (g *grid) whole(c cellBox) bool {
	return c.x0 == 0 && c.y0 == 0 && int(c.x1) == g.nx-1 && int(c.y1) == g.ny-1
}

func (g *grid) cellX(x float64) int32 { return int32(min(max(int(x*g.scale), 0), g.nx-1)) }
func (g *grid) cellY(y float64) int32 { return int32(min(max(int(y*g.scale), 0), g.ny-1)) }

func (g *grid) add(i int, b *body) {
	c := g.box(b.x, b.y, b.hx, b.hy)
	g.boxes[i] = c
	for y := c.y0; y <= c.y1; y++ {
		for x := c.x0; x <= c.x1; x++ {
			k := int(y)*g.nx + int(x)
			g.cells[k] = append(g.cells[k], int32(i))
		}
	}
}

func (g *grid) remove(i int) {
	c := g.boxes[i]
	for y := c.y0; y <= c.y1; y++ {
		for x := c.x0; x <= c.x1; x++ {
			k := int(y)*g.nx + int(x)
			cell := g.cells[k]
			for at, j := range cell {
				if int(j) == i {
					cell[at] = cell[len(cell)-1]
					g.cells[k] = cell[:len(cell)-1]
					break
				}
			}
		}
	}
}

// owns reports whether cell (x, y) is the first that box and body share, so
// that each body of a query is met once.
func (g *grid) owns(x, y int32, c cellBox, j int32) bool {
	b := &g.boxes[j]
	return x == max(c.x0, b.x0) && y == max(c.y0, b.y0)
}
