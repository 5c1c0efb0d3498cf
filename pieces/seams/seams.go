// Package seams names the seams of garments and the edges of pieces by what they
// are. A name is a value: it is compared, not searched. What people read is made
// from it by String, and read back by Called; both use the tables of words.go.
package seams

import (
	"cmp"
	"strconv"
	"strings"
)

// Name is the name of a seam: what it does, and on which side. With a part it
// names an edge: a stretch of the seam between darts, the mouth of a dart, or
// the dart itself. Names are compared with ==; the zero Name is None.
type Name struct {
	role role
	side Side
	part extent
	// order numbers the parts along the seam from 1; 0 when there is but one.
	order int
	// image is set on the mirror image of an edge, on a piece laid whole.
	image bool
	// text is what people call a seam that has no role of ours.
	text string
}

// extent is what of its seam an edge is.
type extent uint8

const (
	whole extent = iota
	stretch
	mouth
	dart
	extentCount
)

// extentWords follow the words of the seam.
var extentWords = [extentCount]string{mouth: " mouth", dart: " dart"}

const imageWords = " mirrored"

// Stretch is the edge that is the numbered stretch of a seam that darts part,
// counted from 1.
func (n Name) Stretch(order int) Name { return n.with(stretch, order) }

// Mouth is the edge across the open end of a dart of the seam; 0 where it is the
// only one.
func (n Name) Mouth(order int) Name { return n.with(mouth, order) }

// Dart is the dart that interrupts the seam; 0 where it is the only one.
func (n Name) Dart(order int) Name { return n.with(dart, order) }

func (n Name) with(p extent, order int) Name {
	n = n.Seam()
	n.part, n.order = p, order
	return n
}

// Mirrored is the name of the mirror image of an edge, on a piece laid whole.
// None has none.
func (n Name) Mirrored() Name {
	if n != None {
		n.image = true
	}
	return n
}

// Seam is the seam that an edge or a dart belongs to: that of the waist for a
// stretch of it.
func (n Name) Seam() Name {
	n.part, n.order = whole, 0
	return n
}

// Role is the seam without its side: the underarm for the front underarm. A seam
// that people have named is its own.
func (n Name) Role() Name {
	n = n.Seam()
	n.side, n.image = NoSide, false
	return n
}

// Side of the seam.
func (n Name) Side() Side { return n.side }

// Order of a stretch, a mouth or a dart along its seam, from 1; 0 when it is the
// only one.
func (n Name) Order() int { return n.order }

// Unnumbered is the name without its order: "waist dart" of "waist dart 2".
func (n Name) Unnumbered() Name {
	if n.part == stretch {
		return n.Seam()
	}
	n.order = 0
	return n
}

// IsMouth says that an edge is the open end of a dart, which is left out when
// the seam is measured.
func (n Name) IsMouth() bool { return n.part == mouth }

// IsFirst says that an edge is its whole seam, or the first stretch of it.
func (n Name) IsFirst() bool { return n.part == whole || n.part == stretch && n.order == 1 }

// IsCentre says that the edge lies on a centre line of the body.
func (n Name) IsCentre() bool {
	return n.role == centreFrontRole || n.role == centreBackRole || n.role == centreRole
}

// String words the name: "front underarm", "waist mouth 1". None is empty.
func (n Name) String() string {
	words := n.text
	if n.role != noRole {
		words = roleWords[n.role]
	}
	if n.side != NoSide {
		words = sideWords[n.side] + " " + words
	}
	words += extentWords[n.part]
	if n.order > 0 {
		words += " " + strconv.Itoa(n.order)
	}
	if n.image {
		words += imageWords
	}
	return words
}

// Compare puts names in the order of their words.
func Compare(a, b Name) int { return cmp.Compare(a.String(), b.String()) }

// Words of names, in their order.
func Words(names []Name) []string {
	words := make([]string, len(names))
	for i, n := range names {
		words[i] = n.String()
	}
	return words
}

// List words names one after the other: "neck, shoulder".
func List(names []Name) string { return strings.Join(Words(names), ", ") }

// None is the name of no edge.
var None Name
