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
	leastAway = 8   // places that lie away from its ends, where there is an even distance [source.OwnChoice]
	sewOff    = 0.3 // [source.OwnChoice]
)

// widthTo a line from an edge, to a hundredth of a mm; false where it is uneven. Nearer to
// an end than that the corner of the line may be nearest, so that those places count only
// where there are few others.
func widthTo(path pieces.Path, line orb.Ring) (float64, bool) {
	length := path.Length()
	var all, away []float64
	for i := range looks {
		all = append(all, distanceTo(line, path.At((float64(i)+0.5)/looks*length)))
	}
	middle := median(all)
	for i, d := range all {
		if at := (float64(i) + 0.5) / looks * length; math.Min(at, length-at) >= middle {
			away = append(away, d)
		}
	}
	if len(away) >= leastAway {
		all, middle = away, median(away)
	}
	good := 0
	for _, d := range all {
		if math.Abs(d-middle) <= even {
			good++
		}
	}
	return math.Round(middle*100) / 100, float64(good) >= evenShare*float64(len(all))
}

func median(all []float64) float64 {
	sorted := slices.Sorted(slices.Values(all))
	return sorted[len(sorted)/2]
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
