package region

import (
	"image"

	"github.com/paulmach/orb"

	"ellwand/pieces/tracing/raster"
)

// Neck is where a blob falls into two of so many small pixels each when so many are
// taken from all its sides: two pieces that touch. It reports false where it does not.
func (b Blob) Neck(taken, least int) (orb.Point, bool) {
	kept := b.core(taken)
	size := b.Box.Size()
	labels := make([]int, len(kept))
	var centres []image.Point
	for start := range kept {
		if !kept[start] || labels[start] != 0 {
			continue
		}
		n, sum := flood(kept, labels, size, start, len(centres)+1)
		if n >= least {
			centres = append(centres, sum.Div(n))
		}
	}
	if len(centres) < 2 {
		return orb.Point{}, false
	}
	between := centres[0].Add(centres[1]).Div(2).Add(b.Box.Min)
	return orb.Point{raster.Grown(float64(between.X), b.of.Step), raster.Grown(float64(between.Y), b.of.Step)}, true
}

// core are the pixels of the box of the blob from which it reaches so far to all sides.
func (b Blob) core(taken int) []bool {
	size := b.Box.Size()
	kept := make([]bool, size.X*size.Y)
	for y := range size.Y {
		for x := range size.X {
			kept[y*size.X+x] = b.has(x+b.Box.Min.X, y+b.Box.Min.Y)
		}
	}
	for range taken {
		next := make([]bool, len(kept))
		for y := 1; y < size.Y-1; y++ {
			for x := 1; x < size.X-1; x++ {
				i := y*size.X + x
				next[i] = kept[i] && kept[i-1] && kept[i+1] && kept[i-size.X] && kept[i+size.X]
			}
		}
		kept = next
	}
	return kept
}

// flood labels what hangs together with a pixel, and counts and sums its places.
func flood(kept []bool, labels []int, size image.Point, start, label int) (n int, sum image.Point) {
	labels[start] = label
	stack := []int{start}
	for len(stack) > 0 {
		i := stack[len(stack)-1]
		stack = stack[:len(stack)-1]
		n++
		sum = sum.Add(image.Pt(i%size.X, i/size.X))
		for _, k := range [4]int{i - 1, i + 1, i - size.X, i + size.X} {
			if k >= 0 && k < len(kept) && kept[k] && labels[k] == 0 {
				labels[k] = label
				stack = append(stack, k)
			}
		}
	}
	return n, sum
}
