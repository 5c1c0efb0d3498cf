// Package marks names what is marked on a piece by what it is: match points, which
// are notches that meet, and the lines and points inside. A name is a value: it is
// compared, not searched. What people read is made from it by String, and read back
// by Called; both use the table of words.go.
package marks

import (
	"strconv"
	"strings"

	"ellwand/pieces/seams"
)

// Name is the name of a match point, or of a line or a point inside a piece. Names
// are compared with ==; the zero Name is None.
type Name struct {
	point point
	side  seams.Side
	// order numbers marks of a kind on one piece from 1; 0 when there is but one.
	order int
	// image is set on the mirror image of a mark, on a piece laid whole.
	image bool
	// seam is what a whole seam matches by, where it is no notch.
	seam seams.Name
	// text is what people call a mark that is none of ours.
	text string
}

// None is a notch that meets no other.
var None Name

// OfSeam is the place at which a seam matches on a repeat: its lower end.
func OfSeam(seam seams.Name) Name { return Name{seam: seam.Seam()} }

// Seam that matches by its lower end; None of a notch.
func (n Name) Seam() seams.Name { return n.seam }

const imageWords = " mirrored"

// On is the mark of a side: the armhole notch of the front.
func (n Name) On(side seams.Side) Name {
	n.side = side
	return n
}

// Numbered is the mark of its kind with a number, from 1; 0 takes the number off.
func (n Name) Numbered(order int) Name {
	n.order = order
	return n
}

// Mirrored is the name of the mirror image of a mark, on a piece laid whole. None
// has none.
func (n Name) Mirrored() Name {
	if n != None {
		n.image = true
	}
	return n
}

// Side of the mark.
func (n Name) Side() seams.Side { return n.side }

// Kind is the mark without its side and its number: the pleat of "pleat 2".
func (n Name) Kind() Name {
	n.side, n.order, n.image = seams.NoSide, 0, false
	return n
}

// String words the name: "front armhole", "pleat 2". None is empty.
func (n Name) String() string { return n.worded(pointWords[n.point]) }

// Brief words the name among the marks of its own seam, on its own side: "upper" for
// the upper notch of a princess seam of the front.
func (n Name) Brief() string {
	n.side = seams.NoSide
	if brief := briefWords[n.point]; brief != "" {
		return n.worded(brief)
	}
	return n.String()
}

func (n Name) worded(words string) string {
	if n.seam != seams.None {
		return seamWords(n.seam)
	}
	if n.point == noPoint {
		words = n.text
	}
	if n.side != seams.NoSide {
		words = n.side.String() + " " + words
	}
	if n.order > 0 {
		words += " " + strconv.Itoa(n.order)
	}
	if n.image {
		words += imageWords
	}
	return words
}

// seamWords are those of a seam among the names of notches: "side seam".
func seamWords(seam seams.Name) string {
	return strings.TrimSuffix(seam.String(), seamSuffix) + seamSuffix
}

const seamSuffix = " seam"
