package pieces

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/seams"
)

// CuttingOutline is the line to cut along: the seam line moved out by the
// allowance of each edge. It is closed, counter-clockwise and simple; along
// straight edges it is exact, along curves within the tolerance (mm). Only
// where an allowance is wider than the radius of the hollow it lies in, it may
// be narrower by twice the tolerance or end some tenths of a mm later. The
// piece must pass Check.
//
// The rules, those of the trade [source.CommonPractice]:
//
//  1. Every edge keeps its full allowance along its whole length.
//  2. Mitre: where two edges meet at an outward corner, both cutting lines run
//     on until they meet, each at its own allowance.
//  3. Cut-back mitre: a mitre that would reach further from the corner than
//     mitreLimit (2) times the wider allowance is cut off at that distance,
//     square to the line from the corner to its tip. With equal allowances
//     that concerns corners sharper than 60 degrees.
//  4. Square step: where the edges turn so little that the lines could only
//     meet by falling back over the wider allowance, and at inward corners
//     where it overhangs, the wider allowance ends square to its own seam line
//     and the narrower runs on up to it.
//  5. Inward corner: the lines stop where they meet.
//  6. Hem: the allowance is the mirror image, about the hem line, of the piece
//     above it, the neighbours' allowances included, so that it folds up flush
//     with them. Of a curved hem the mirror at each end is the tangent there.
//     Where a neighbour leaves the hem too flat for that (it does not rise to
//     the hem's depth within twice that distance) or is a hem or the fold
//     itself, rules 2 to 5 hold.
//  7. Fold: the fold edge has no allowance, and its neighbours' allowances are
//     cut off along the fold line and its prolongation, so that the half and
//     its mirror image make the whole.
//  8. Where allowances overlap (a narrow slot, a tight hollow), the outer
//     outline of all of them holds; a gap closed off inside it is not cut out.
//
// It returns a Fault when an allowance is negative or not a number, the outline
// encloses nothing, or allowances away from the fold cross the fold line.
func (p Piece) CuttingOutline(tolerance float64) (orb.Ring, error) {
	for _, e := range p.Edges {
		if !(e.Allowance >= 0) || math.IsInf(e.Allowance, 0) {
			return nil, p.allowanceFault(e)
		}
	}
	tolerance = usable(tolerance) / 2
	ring := outer(rimOf(p.strips(tolerance), tolerance))
	if len(ring) < 4 {
		return nil, p.fault(Fault{Of: NothingToCut})
	}
	fold, ok := p.Edge(p.Fold)
	if p.Fold == seams.None || !ok {
		return ring, nil
	}
	half, ok := clip(ring, fold.Path.Start(), fold.Path.End())
	if !ok {
		return nil, p.fault(Fault{Of: AllowanceAcrossFold})
	}
	return half, nil
}

// strips lays an allowance along every edge, a strip for each smooth stretch.
// The tolerance is spent twice: once on the chords, once on their joints.
func (p Piece) strips(tolerance float64) []strip {
	var out []strip
	for _, e := range p.Edges {
		isFold := p.Fold != seams.None && e.Name == p.Fold
		width := e.Allowance
		if isFold {
			width = 0
		}
		first := len(out)
		for _, c := range e.Path {
			seam := apart(c.Flatten(tolerance))
			if len(seam) < 2 {
				continue
			}
			if last := len(out) - 1; last >= first && isSmooth(out[last].end, c.Tangent(0)) {
				out[last].seam = append(out[last].seam, seam[1:]...)
				out[last].end = c.Tangent(1)
				continue
			}
			out = append(out, strip{
				seam: seam, begin: c.Tangent(0), end: c.Tangent(1),
				width: width, hem: e.Hem && width > 0, fold: isFold,
			})
		}
	}
	for i := range out {
		out[i].rim = out[i].parallel(tolerance)
	}
	return out
}

// rimOf joins the outer sides of all strips into one closed chain, which may
// cross itself. Everything within its outermost line lies on the piece, in an
// allowance or in a gap closed off by them.
func rimOf(strips []strip, tolerance float64) []orb.Point {
	n := len(strips)
	for i := range strips {
		a, b := &strips[i], &strips[(i+1)%n]
		if a.hem != b.hem && !a.fold && !b.fold {
			a.joined = hemCorner(a, b)
		}
	}
	var chain []orb.Point
	for i, s := range strips {
		chain = append(chain, s.rim...)
		if next := strips[(i+1)%n]; !s.joined {
			chain = append(chain, corner(s, next, tolerance)...)
		}
	}
	return chain
}
