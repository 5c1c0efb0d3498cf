package found

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// allow gives the edges the allowance that was said.
func allow(p *pieces.Piece, a Allowance) {
	for i := range p.Edges {
		e := &p.Edges[i]
		e.Allowance, e.Included, e.Unknown = 0, 0, false
		switch {
		case e.Name == p.Fold && p.Fold != seams.None:
		case a.How == AllowanceAdded:
			e.Allowance = a.Width
		case a.How == AllowanceIncluded && a.Width > 0:
			e.Included = a.Width
		default:
			e.Unknown = true
		}
	}
}

const (
	// even, mm, is how much the distance of a sew line may differ along an edge, over
	// most of it, which is evenShare; sewOff how far the line that is derived from it
	// may lie off [source.OwnChoice].
	even      = 0.1
	evenShare = 0.7 // [source.OwnChoice]
	looks     = 40  // places along an edge [source.OwnChoice]
	sewOff    = 0.3 // [source.OwnChoice]
)

// allowBySew gives every edge what lies between it and the sew line, where that is of
// one width; it counts the edges where it is not, whose allowance is unknown.
func allowBySew(p *pieces.Piece, sew pieces.Path) (uneven int) {
	line := ring(sew)
	for i := range p.Edges {
		e := &p.Edges[i]
		e.Allowance, e.Included, e.Unknown = 0, 0, false
		if p.Fold != seams.None && e.Name == p.Fold {
			continue
		}
		width, ok := widthTo(e.Path, line)
		switch {
		case !ok:
			e.Unknown = true
		case width > same:
			e.Included = width
		}
	}
	seam, err := p.AtSeam()
	for i := range p.Edges {
		e := &p.Edges[i]
		if e.Included > 0 && (err != nil || !liesOn(seam, e.Name, line)) {
			e.Included, e.Unknown = 0, true
		}
		if e.Unknown {
			uneven++
		}
	}
	return uneven
}

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
