package bodice

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// below is what a bodice that goes on below the waist has in place of a waist
// seam: its hem, and darts that run out to both ends.
type below struct {
	length float64 // of the centre line below the waist
	width  float64 // at the hem
	darts  []waistDart
	low    float64 // how far the darts reach below the waist
}

func (b below) edges() ([]pieces.Edge, []pieces.Dart) {
	hem := construct.Edge(seams.BodyHem, construct.Line(orb.Point{0, -b.length}, orb.Point{b.width, -b.length}))
	hem.Hem = true
	var darts []pieces.Dart
	for i, d := range b.darts {
		darts = append(darts, pieces.Dart{
			Name: seams.Waist.Dart(i + 1), Start: orb.Point{d.middle - d.width/2, 0},
			End:  orb.Point{d.middle + d.width/2, 0},
			Apex: orb.Point{d.middle, d.apex}, OtherApex: orb.Point{d.middle, -b.low},
		})
	}
	return []pieces.Edge{hem}, darts
}

func (b below) record(s *construct.Sheet, waist, underarm construct.Point, side pieces.Path,
	waistToHip, taper float64) {
	hip := s.Down(waist, waistToHip, "the hip line: waist to hip")
	low := s.Down(waist, b.length, "the hem: the length below the waist")
	in := s.Right(waist, underarm.X()-taper, "the side at the waist: the width of the bust line less the taper")
	out := s.Right(hip, b.width, "the side on the hip line: with the other piece, half of hip girth and ease")
	foot := s.Right(low, b.width, "the side at the hem")
	s.Draw("draw the side seam "+construct.Numbers(foot, out, in, underarm), "upright at the hip and at the waist")
	s.Draw("draw the hem "+construct.Numbers(low, foot), "")
	for _, d := range b.darts {
		s.Draw("mark a waist dart {} wide on the waist line, its middle {} from the centre line, its points {} above "+
			"and {} below", "what is left to take in", d.width, d.middle, d.apex, b.low)
	}
}

// waistDart is a dart of the waist seam, its middle line upright.
type waistDart struct{ middle, width, apex float64 }
