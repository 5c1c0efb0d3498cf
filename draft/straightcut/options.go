// Package straightcut drafts garments of rectangles and simple curves: kaftan,
// kimono shape, wrapper, apron and bag. Each formula is stated beside its
// point. That they are straight breadths of the loom is as old as weaving
// [source.Burnham]; the figures, and how full the curves are drawn, are our own
// choice. Lengths are millimetres.
package straightcut

// Shape of a straight-cut garment.
type Shape int

const (
	// Kaftan is a front and a back with straight shoulders, flaring to the
	// hem, and straight sleeves.
	Kaftan Shape = iota
	// Kimono is an open robe of straight pieces that wraps over, with a band
	// along its front edges and a belt.
	Kimono
	// Wrapper is a cloth to wrap round the hips, with ties.
	Wrapper
	// Apron has a bib, a neck strap, ties and a pocket.
	Apron
	// Bag is a bag with boxed corners and two handles.
	Bag
)

// Options of a straight-cut garment. What is 0 takes the usual value of the
// shape.
type Options struct {
	Shape Shape
	// Length is finished: from the neck point (kaftan 1200 mm, kimono 1100),
	// from the waist (wrapper 1000, apron 500), or the height of a bag (400).
	Length float64
	// Ease is added to the fuller of bust and hip: 300 mm in a kaftan, 200 in
	// a kimono.
	Ease float64
	// Width is the finished width of a wrapper (1.6 times the hip), an apron
	// (four fifths of the hip) or a bag (380).
	Width float64
	// Depth is that of a bag's bottom (100).
	Depth float64
	// Flat leaves out a bag's bottom.
	Flat bool
}
