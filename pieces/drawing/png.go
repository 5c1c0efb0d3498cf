package drawing

import (
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"io"
	"math"

	"github.com/paulmach/orb"
	"golang.org/x/image/vector"

	"ellwand/pieces/geometry"
)

// WritePNG writes the page as a grey picture with so many pixels a mm.
func WritePNG(w io.Writer, page Page, pixelsPerMM float64) error {
	return png.Encode(w, Paint(page, pixelsPerMM))
}

// Paint makes the page an image with so many pixels a mm, edges softened.
func Paint(page Page, pixelsPerMM float64) *image.Gray {
	size := image.Rect(0, 0, int(math.Ceil(page.Width*pixelsPerMM)), int(math.Ceil(page.Height*pixelsPerMM)))
	img := image.NewGray(size)
	draw.Draw(img, size, image.White, image.Point{}, draw.Src)
	p := painter{image: img, scale: pixelsPerMM, raster: vector.NewRasterizer(0, 0)}
	p.draw(&page.Picture, orb.Point{}, orb.Bound{Max: orb.Point{page.Width, page.Height}})
	return img
}

type painter struct {
	image  *image.Gray
	scale  float64
	raster *vector.Rasterizer
}

func (p painter) draw(picture *Picture, shift orb.Point, box orb.Bound) {
	for _, it := range picture.items {
		if !seen(it, shift, box) {
			continue
		}
		switch it := it.(type) {
		case stroke:
			for _, line := range dashed(geometry.Moved(it.line, shift), it.pen.Dashes) {
				p.stroke(line, it.pen, box)
			}
		case area:
			p.fill(it.grey, [][]orb.Point{geometry.Moved(it.ring, shift)}, box)
		case Text:
			it.At = geometry.Add(it.At, shift)
			p.fill(it.Grey, it.outlines(), box)
		case window:
			p.draw(it.picture, geometry.Add(shift, it.shift), geometry.Common(box, movedBox(it.box, shift)))
		}
	}
}

// run is the longest stretch of a line that is painted at once, mm: the raster
// takes the box around it, which for a long slanting line is mostly empty.
const run = 10.0

// stroke paints a line, one run after the other.
func (p painter) stroke(line []orb.Point, pen Pen, box orb.Bound) {
	last := len(line) - 1
	for i := 1; i <= last; i++ {
		a, b := line[i-1], line[i]
		n := max(1, int(math.Ceil(geometry.Distance(a, b)/run)))
		for k := range n {
			from, to := geometry.Between(a, b, float64(k)/float64(n)), geometry.Between(a, b, float64(k+1)/float64(n))
			bluntFrom := pen.Blunt && i == 1 && k == 0
			bluntTo := pen.Blunt && i == last && k == n-1
			p.fill(pen.Grey, bar(from, to, math.Max(pen.Width, 0.05)/2, bluntFrom, bluntTo), box)
		}
	}
}

// Bars is how many bars the lines of the page are painted of, about.
func (p Page) Bars() int {
	n := 0
	p.Strokes(func(line []orb.Point) {
		for i := 1; i < len(line); i++ {
			n += max(1, int(math.Ceil(geometry.Distance(line[i-1], line[i])/run)))
		}
	})
	return n
}

// bar is what a pen covers from one point to another: a bar with a disc at
// each end that is not blunt, all in one sense of rotation, so that they add up
// without holes.
func bar(a, b orb.Point, half float64, bluntA, bluntB bool) [][]orb.Point {
	var out [][]orb.Point
	if !bluntA {
		out = append(out, circle(a, half))
	}
	if !bluntB {
		out = append(out, circle(b, half))
	}
	if length := geometry.Distance(a, b); length > 0 {
		x, y := (a[1]-b[1])/length*half, (b[0]-a[0])/length*half
		out = append(out, []orb.Point{{a[0] - x, a[1] - y}, {b[0] - x, b[1] - y}, {b[0] + x, b[1] + y},
			{a[0] + x, a[1] + y}})
	}
	return out
}

// fill paints what lies inside the rings, as far as the box shows it.
func (p painter) fill(grey int, rings [][]orb.Point, box orb.Bound) {
	all := orb.Bound{Min: orb.Point{math.Inf(1), math.Inf(1)}, Max: orb.Point{math.Inf(-1), math.Inf(-1)}}
	for _, ring := range rings {
		all = all.Union(orb.LineString(ring).Bound())
	}
	seen := geometry.Common(all, box)
	area := image.Rect(int(math.Floor(seen.Min[0]*p.scale)), int(math.Floor(seen.Min[1]*p.scale)),
		int(math.Ceil(seen.Max[0]*p.scale)), int(math.Ceil(seen.Max[1]*p.scale))).Intersect(p.image.Rect)
	if len(rings) == 0 || area.Empty() {
		return
	}
	p.raster.Reset(area.Dx(), area.Dy())
	for _, ring := range rings {
		for i, q := range ring {
			x, y := float32(q[0]*p.scale-float64(area.Min.X)), float32(q[1]*p.scale-float64(area.Min.Y))
			if i == 0 {
				p.raster.MoveTo(x, y)
			} else {
				p.raster.LineTo(x, y)
			}
		}
		p.raster.ClosePath()
	}
	p.raster.Draw(p.image, area, image.NewUniform(color.Gray{Y: uint8(grey)}), image.Point{})
}
