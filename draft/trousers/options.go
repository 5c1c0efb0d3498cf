// Package trousers drafts trousers and shorts: a front and a back with waist
// darts, a fly extension, side-seam pockets or patch pockets.
//
// The leg, the forks and the darts follow the tailored trousers of a handbook
// [source.AldrichFromMemory]; their shares are made to suit every body and every
// length. Each point names its rule where it is set; how full the curves are
// drawn is our own choice. Lengths are millimetres. Both pieces are drawn with
// the crease line at the distance 0, the waist line at the height 0, and the
// centre line on the left.
package trousers

// Opening is where the trousers open.
type Opening int

const (
	// Fly opens at the centre front; both fronts have an extension.
	Fly Opening = iota
	// SideZip opens in the left outside leg.
	SideZip
	// ElasticWaist does not open: the waist is wide enough to pass over the
	// hips, without darts, and drawn in by an elastic in a casing cut on.
	ElasticWaist
)

// Pocket kinds.
type Pocket int

const (
	// NoPocket leaves the pockets out.
	NoPocket Pocket = iota
	// SidePocket is a bag in the outside leg seam.
	SidePocket
	// PatchPocket is a pocket sewn on to each back.
	PatchPocket
)

// Options of trousers. The zero value is full-length trousers with a fly.
type Options struct {
	// Length from the waist seam to the hem along the outside leg; to 2 cm
	// above the floor if 0. Shorts are trousers of a smaller length.
	Length float64
	// WaistEase is added to the whole waist girth; 15 mm if 0, and in an
	// elastic waist as much as lets the side run straight up from the hip.
	WaistEase float64
	// HipEase is added to the whole hip girth; 60 mm if 0, 100 mm with an
	// elastic waist.
	HipEase float64
	// HemWidth is the width of one leg all round at the hem. If 0 it is worked
	// out from the hip and the length.
	HemWidth float64
	Opening  Opening
	// Elastic is the width of the elastic of an elastic waist; 25 mm if 0.
	Elastic float64
	Pocket  Pocket
}

// Measures of the body that trousers are drafted from: at the waist seam,
// which may lie below the natural waist.
type Measures struct {
	Waist, Hip, WaistToHip, BodyRise, OutsideLeg float64
	// Lowered is how far the waist seam lies below the natural waist, from
	// which the wearer gives her lengths.
	Lowered float64
}
