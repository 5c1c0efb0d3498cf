package pieces

import (
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// alikeTolerance is how far, in mm, a piece and its mirror image may differ
// and still be one and the same: less than a chalk line [source.OwnChoice].
const alikeTolerance = 0.2

// IsOwnImage reports whether a piece is its own mirror image, so that there is no right one
// and no left one of it: about a line along its grainline or one across it; on a cloth with
// a nap, about that which keeps the way it points. One on the fold always is.
func (p Piece) IsOwnImage(napped bool) bool {
	if p.Fold != seams.None {
		return true
	}
	outline, u := p.Boundary(alikeTolerance/2), geometry.Sub(p.Grain.To, p.Grain.From)
	if u == (orb.Point{}) {
		return false
	}
	middle := geometry.Centroid(outline)
	about := func(way orb.Point) bool {
		return p.IsSameUnder(MirrorAbout(middle, geometry.Add(middle, way)), outline)
	}
	switch lie := p.Grain.Lie; {
	case !napped:
		return about(u) || about(geometry.Left(u))
	case lie == EitherGrain:
		return about(u) && about(geometry.Left(u))
	case lie == CrossGrain:
		return about(geometry.Left(u))
	}
	return about(u)
}

// IsSameUnder reports whether a motion maps an outline of the piece onto itself, and its
// notches, darts and marks as well.
func (p Piece) IsSameUnder(m Motion, outline orb.Ring) bool {
	for _, at := range outline {
		image := m.Apply(at)
		if geometry.Distance(image, geometry.Nearest(outline, image)) > alikeTolerance {
			return false
		}
	}
	inner := p.innerPoints()
	for _, at := range inner {
		image := m.Apply(at)
		if !slices.ContainsFunc(inner, func(o orb.Point) bool { return geometry.Distance(image, o) <= alikeTolerance }) {
			return false
		}
	}
	return true
}

// innerPoints that an image has to have as well.
func (p Piece) innerPoints() []orb.Point {
	var out []orb.Point
	for _, notch := range p.Notches {
		if edge, ok := p.Edge(notch.Edge); ok {
			out = append(out, edge.Path.At(notch.At))
		}
	}
	for _, dart := range p.Darts {
		out = append(out, dart.Start, dart.Apex, dart.End)
		if dart.Mouth == seams.None {
			out = append(out, dart.OtherApex)
		}
	}
	for _, mark := range p.Marks {
		switch start, end := mark.Path.Start(), mark.Path.End(); {
		case mark.Path == nil:
			out = append(out, mark.At)
		case mark.Name.Kind() == marks.SewLine: // as the outline is
		case start == end:
			out = append(out, mark.Path.Flatten(alikeTolerance/2).Bound().Center())
		default:
			out = append(out, start, end)
		}
	}
	return out
}
