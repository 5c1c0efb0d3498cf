package region

import (
	"image"

	"github.com/paulmach/orb"

	"ellwand/pieces/tracing/raster"
)

// Blob is a stretch of small pixels of one class that hang together by their sides.
type Blob struct {
	Area int // small pixels
	Box  image.Rectangle
	// Rim is how much of the rim of the picture it takes, small pixels.
	Rim   int
	first image.Point // the leftmost of its uppermost pixels
	label int32
	of    *Blobs
}

// Blobs of one class.
type Blobs struct {
	All           []Blob
	Width, Height int
	Step          int
	labels        []int32
}

// Blobs of the bright class, or of the dark one, of so many small pixels or more.
func (c Classes) Blobs(bright bool, least int) *Blobs {
	out := &Blobs{Width: c.Width, Height: c.Height, Step: c.Step, labels: make([]int32, len(c.Bright))}
	label := int32(0)
	for start := range c.Bright {
		if c.Bright[start] != bright || out.labels[start] != 0 {
			continue
		}
		label++
		if b := out.filled(c, bright, start, label); b.Area >= least {
			out.All = append(out.All, b)
		}
	}
	return out
}

// filled labels what hangs together with a pixel.
func (b *Blobs) filled(c Classes, bright bool, start int, label int32) Blob {
	at := image.Pt(start%b.Width, start/b.Width)
	blob := Blob{first: at, label: label, of: b, Box: image.Rectangle{at, at}}
	b.labels[start] = label
	stack := []int32{int32(start)}
	for len(stack) > 0 {
		i := int(stack[len(stack)-1])
		stack = stack[:len(stack)-1]
		x, y := i%b.Width, i/b.Width
		blob.Area++
		blob.Box = blob.Box.Union(image.Rect(x, y, x+1, y+1))
		for _, n := range [4]image.Point{{x - 1, y}, {x + 1, y}, {x, y - 1}, {x, y + 1}} {
			if n.X < 0 || n.Y < 0 || n.X >= b.Width || n.Y >= b.Height {
				blob.Rim++
				continue
			}
			k := n.Y*b.Width + n.X
			if b.labels[k] == 0 && c.Bright[k] == bright {
				b.labels[k] = label
				stack = append(stack, int32(k))
			}
		}
	}
	return blob
}

func (b Blob) has(x, y int) bool {
	return x >= 0 && y >= 0 && x < b.of.Width && y < b.of.Height && b.of.labels[y*b.of.Width+x] == b.label
}

// Step is how many pixels of the picture, each way, one of the blob stands for.
func (b Blob) Step() int { return b.of.Step }

// Border is the outer border of the blob, counter-clockwise as it is seen, along the sides
// of its pixels, in pixels of the picture (border following: Suzuki and Abe 1985,
// Topological structural analysis of digitized binary images). Holes are left out.
func (b Blob) Border() []orb.Point {
	var out []orb.Point
	at, way := b.first, 0 // to the right, below, to the left, above: the blob is at the right hand
	for {
		out = append(out, orb.Point{
			raster.Grown(float64(at.X)-0.5, b.of.Step), raster.Grown(float64(at.Y)-0.5, b.of.Step),
		})
		at = at.Add(ways[way])
		right, left := at.Add(rightOf[way]), at.Add(leftOf[way])
		switch {
		case !b.has(right.X, right.Y):
			way = (way + 1) % 4
		case b.has(left.X, left.Y):
			way = (way + 3) % 4
		}
		if at == b.first && way == 0 {
			break
		}
	}
	for i, j := 0, len(out)-1; i < j; i, j = i+1, j-1 {
		out[i], out[j] = out[j], out[i]
	}
	return out
}

// The ways along the sides of pixels, and the pixels that lie ahead of each, to the
// right and to the left, seen from the corner that was reached.
var (
	ways    = [4]image.Point{{1, 0}, {0, 1}, {-1, 0}, {0, -1}}   // [source.Geometry]
	rightOf = [4]image.Point{{0, 0}, {-1, 0}, {-1, -1}, {0, -1}} // [source.Geometry]
	leftOf  = [4]image.Point{{0, -1}, {0, 0}, {-1, 0}, {-1, -1}} // [source.Geometry]
)
