package bodice

import (
	"slices"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// The back neck and shoulder: the neck a fifth of the neck girth wide and a fifth
// of that high, the shoulder falling 1 in 3, about 18 degrees
// [source.CommonPractice].
const (
	neckWidth  = 1. / 5
	neckHeight = 1. / 25
	backFall   = 1. / 3
)

// neckRise is how far the neck point lies above the back neck point.
func (f figures) neckRise() float64 { return float64(neckHeight * f.NeckBase) }

// backUpper is the back above the waist.
type backUpper struct {
	waist, nape, neck, tip, across, underarm construct.Point
	// beside is where the shoulder from the neck ends: the tip, or a dart.
	beside construct.Point
	// shoulder holds the edges of a shoulder with a dart, from the tip to the
	// neck, and darts that dart; both empty without one.
	shoulder []pieces.Edge
	darts    []pieces.Dart
}

// shoulderEdges run from the tip to the neck, which may have been widened.
func (b backUpper) shoulderEdges() []pieces.Edge {
	if len(b.shoulder) == 0 {
		return []pieces.Edge{construct.Edge(seams.Shoulder, construct.Line(b.tip.At, b.neck.At))}
	}
	edges := slices.Clone(b.shoulder)
	last := &edges[len(edges)-1]
	last.Path = construct.Line(last.Path.Start(), b.neck.At)
	return edges
}

// frontUpper is the front above the waist. The points of the shoulder and the
// across front are drawn as they are worn; opening the bust dart turns those
// beyond it about the bust point.
type frontUpper struct {
	waist, bustPoint, neck, centreNeck, tip, middle, across construct.Point
	openTip, openMiddle, openAcross                         construct.Point
	dart                                                    float64 // degrees
	underarm                                                construct.Point
	level                                                   construct.Point
}

// dartShort is how far before the bust point a dart ends, so that it does not
// make a peak there ([source.CommonPractice]: 2 to 3 cm).
const dartShort = 25

// armholeNotch is where the notch of an armhole with a dart lies: so much of
// the way from the underarm to the dart [source.OwnChoice].
const armholeNotch = 0.7

// sideTop is the upward direction of the side seam at the underarm.
func sideTop(side pieces.Path) orb.Point { return side[len(side)-1].Tangent(1) }

// upright is a straight grainline at a distance from the centre line of a
// piece of some height.
func upright(x, height float64) pieces.Grain {
	return pieces.Grain{From: orb.Point{x, float64(0.2 * height)}, To: orb.Point{x, float64(0.8 * height)}}
}
