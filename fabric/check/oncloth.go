package check

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
)

var _ = register(rule{piece: checkOnCloth})

// checkOnCloth: the piece, opened out, lies
// between the selvedges and the cut ends and off every flaw.
func checkOnCloth(p lay.Plan, o openedPiece, _ pieces.Piece) error {
	width := widthLaid(p.Cloth)
	outlines := []orb.Ring{o.outline}
	if o.OnFold {
		var other orb.Ring
		for _, q := range o.Outline {
			other = append(other, foldedOver(p, o.Laid)[1].place(q))
		}
		outlines = append(outlines, other)
	}
	for _, outline := range outlines {
		box := outline.Bound()
		if box.Min[0] < -edgeTolerance || box.Max[0] > p.Taken+edgeTolerance ||
			box.Min[1] < p.Cloth.Selvedge-edgeTolerance || box.Max[1] > width-p.Cloth.Selvedge+edgeTolerance {
			return fmt.Errorf("%s copy %d lies over the selvedge or the end of the cloth", o.Name, o.Copy)
		}
		for _, flaw := range p.Cloth.Flaws {
			if touches(outline, flaw.Outline) {
				return fmt.Errorf("%s copy %d lies on %s", o.Name, o.Copy, flaw)
			}
		}
	}
	return nil
}

// touches reports whether a piece reaches into a flaw: a corner of either
// inside the other, or two edges that cross, by more than the tolerance.
func touches(piece, flaw orb.Ring) bool {
	box, other := piece.Bound(), flaw.Bound()
	if box.Max[0] <= other.Min[0]+edgeTolerance || box.Min[0] >= other.Max[0]-edgeTolerance ||
		box.Max[1] <= other.Min[1]+edgeTolerance || box.Min[1] >= other.Max[1]-edgeTolerance {
		return false
	}
	ring := closed(flaw)
	return reachesInto(piece, ring) || reachesInto(ring, piece)
}

// reachesInto tries the corners of a ring, and points along its edges.
func reachesInto(ring, other orb.Ring) bool {
	for i := 1; i < len(ring); i++ {
		a, b := clampedTo(ring[i-1], other), clampedTo(ring[i], other)
		steps := int(math.Ceil(distance(a, b)/2)) + 1
		for k := range steps {
			t := float64(k) / float64(steps)
			q := orb.Point{a[0] + t*(b[0]-a[0]), a[1] + t*(b[1]-a[1])}
			if covers(other, q) && off(other, q) > 10*edgeTolerance {
				return true
			}
		}
	}
	return false
}

// clampedTo brings the far corners of an endless band near to the ring: bands
// have sides parallel to the axes, so that this moves them along themselves.
func clampedTo(p orb.Point, ring orb.Ring) orb.Point {
	box := ring.Bound()
	for axis := range 2 {
		if math.Abs(p[axis]) >= cloth.Endless/2 {
			p[axis] = math.Max(box.Min[axis]-1, math.Min(p[axis], box.Max[axis]+1))
		}
	}
	return p
}
