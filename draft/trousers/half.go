package trousers

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/role"
)

// half is one piece as drawn: the lines of its outline, and what it takes to
// name them.
type half struct {
	role                       role.Role
	waist                      []pieces.Edge
	darts                      []pieces.Dart
	insideLeg, outsideLeg, hem pieces.Path
	// centre is the straight upper part of the crotch seam, curve the rest.
	centre, curve pieces.Path
	hip           float64 // width on the hip line
}

// along is the point of a line from a point in a direction at a height.
func along(from, way orb.Point, height float64) orb.Point {
	return construct.Go(from, way, (height-from[1])/way[1])
}

// dartPlan is where the darts of a piece lie, as shares of its waist line from
// the centre, and how long they are, as shares of the waist to hip.
type dartPlan struct {
	alone         float64    // the middle of a single dart
	pair          [2]float64 // the middles of two
	first, second float64    // lengths
	widest        float64    // the widest that a single dart may be
}

// darts sets what the darts of a piece take in: one, or two where one would be
// too wide. Shares run along the waist from the side.
func (f figures) darts(total float64, p dartPlan) []construct.DartAt {
	first, second := p.first*f.WaistToHip, p.second*f.WaistToHip
	switch {
	case total <= 0:
		return nil
	case total <= min(p.widest, flatDart*first):
		return []construct.DartAt{{Share: 1 - p.alone, Width: total, Length: first}}
	}
	return []construct.DartAt{
		{Share: 1 - p.pair[1], Width: total / 2, Length: second},
		{Share: 1 - p.pair[0], Width: total / 2, Length: first},
	}
}
