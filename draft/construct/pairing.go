package construct

import "ellwand/pieces/source"

// Pairing is what a block says of two of its lengths that have to agree: two
// seams that are sewn together, or a seam and the body that it goes round. The
// truing report makes a row of it.
type Pairing struct {
	Seam    string // "side"
	Of      string // "front side"
	Length  float64
	Against string // "back side"
	Other   float64
	// Least and Most are the normal range of Length less Other.
	Least, Most float64
	Normal      Sentence // what is normal, and where that is from
}

// LeastStrip is how short, in mm, the lengths may be that a strip is pieced together
// from: shorter ones are more seam than strip [source.OwnChoice].
const LeastStrip = 100

// Matching is how far two seams that are sewn edge to edge may differ, in mm
// ([source.CommonPractice]: less than a tape shows).
const Matching = 2

// NoLimit stands for the most where more does no harm: 10 m [source.OwnChoice].
const NoLimit = 10000

// Equal pairs two seams that are sewn edge to edge.
func Equal(seam, of string, length float64, against string, other float64) Pairing {
	return Pairing{seam, of, length, against, other, -Matching, Matching, Say("equal (%s)", source.CommonPractice)}
}

// Gathered pairs an edge with the shorter seam that it is gathered into.
func Gathered(seam, of string, length float64, against string, other float64) Pairing {
	return Pairing{seam, of, length, against, other, 0.5*other - 1, 2*other + 1,
		Say("1.5 to 3 times as long, gathered in (%s)", source.CommonPractice)}
}
