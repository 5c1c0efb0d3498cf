package found

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/seams"
)

const (
	// even, mm, is how much the distance of a sew line may differ along an edge, over
	// most of it, which is evenShare; sewOff how far the line that is derived from it
	// may lie off [source.OwnChoice].
	even      = 0.1
	evenShare = 0.7 // [source.OwnChoice]
	looks     = 40  // places along an edge [source.OwnChoice]
	sewOff    = 0.3 // [source.OwnChoice]
)

// widthTo a line from an edge, to a hundredth of a mm; false where it is uneven.
func widthTo(path pieces.Path, line orb.Ring) (float64, bool) {
	length := path.Length()
	var all []float64
	for i := range looks {
		all = append(all, distanceTo(line, path.At((float64(i)+0.5)/looks*length)))
	}
	slices.Sort(all)
	middle := all[looks/2]
	good := 0
	for _, d := range all {
		if math.Abs(d-middle) <= even {
			good++
		}
	}
	return math.Round(middle*100) / 100, good >= evenShare*looks
}

// liesOn says that most of an edge lies on a line: beside an edge of unknown allowance it
// may run on to that.
func liesOn(p pieces.Piece, edge seams.Name, line orb.Ring) bool {
	e, ok := p.Edge(edge)
	if !ok {
		return false
	}
	length, good := e.Path.Length(), 0
	for i := range looks {
		if distanceTo(line, e.Path.At((float64(i)+0.5)/looks*length)) <= sewOff {
			good++
		}
	}
	return good >= evenShare*looks
}
