package raster

// Median is the picture of which each pixel is the median of the square about it, that
// reaches so far to each side: thin lines are gone from it, and edges stay. A histogram
// that moves along the rows (Huang, Yang and Tang 1979: A fast two-dimensional median
// filtering algorithm).
func (g *Grey) Median(reach int) *Grey {
	out := New(g.Width, g.Height)
	side := 2*reach + 1
	half := side*side/2 + 1
	for y := range g.Height {
		var counts [256]int
		column := func(x, change int) {
			for j := y - reach; j <= y+reach; j++ {
				counts[level(g.At(x, j))] += change
			}
		}
		for x := -reach; x < reach; x++ {
			column(x, 1)
		}
		for x := range g.Width {
			column(x+reach, 1)
			sum, at := 0, 0
			for sum += counts[at]; sum < half; sum += counts[at] {
				at++
			}
			out.Values[y*g.Width+x] = float32(at)
			column(x-reach, -1)
		}
	}
	return out
}

func level(v float32) int { return min(max(int(v+0.5), 0), 255) }
