package fabric

import (
	"math"
	"sort"

	"github.com/paulmach/orb"

	"ellwand/fabric/internal/geometry"
	"ellwand/nest/layout"
	"ellwand/pieces"
)

// drawTolerance is how near, in mm, drawn curves follow the true ones
// [source.OwnChoice].
const drawTolerance = 0.1

// laidOut brings the layouts of all beds back to pieces on the cloth, in the
// order in which a cutter lays them: from the cut end, and across from y = 0.
func laidOut(beds []lain) []Laid {
	var out []Laid
	for part, found := range beds {
		for _, at := range found.layout.Placements {
			l := laid(found.templates[at.Item], found.problem, at)
			l.Part = part
			out = append(out, l.moved(found.bed.at))
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return before(out[i], out[j]) })
	return out
}

// moved brings a piece from the frame of its bed to that of the lay.
func (l Laid) moved(by orb.Point) Laid {
	if by == (orb.Point{}) {
		return l
	}
	m := pieces.Motion{A: 1, D: 1, E: by[0], F: by[1]}
	l.X, l.Y = l.X+by[0], l.Y+by[1]
	l.Outline, l.Seam = orb.Ring(geometry.Mapped(m, l.Outline)), orb.Ring(geometry.Mapped(m, l.Seam))
	l.Grain = [2]orb.Point{apply(m, l.Grain[0]), apply(m, l.Grain[1])}
	for i := range l.Notches {
		l.Notches[i].At, l.Notches[i].Out = apply(m, l.Notches[i].At), apply(m, l.Notches[i].Out)
	}
	for i := range l.Darts {
		l.Darts[i].Line = geometry.Mapped(m, l.Darts[i].Line)
	}
	for i := range l.Marks {
		l.Marks[i].Line = geometry.Mapped(m, l.Marks[i].Line)
	}
	return l
}

// before orders by the end nearer to the cut end, then across; 1 mm along
// does not count, so that a column of pieces stays in order.
func before(a, b Laid) bool {
	p, q := a.Outline.Bound().Min, b.Outline.Bound().Min
	if math.Floor(p[0]) != math.Floor(q[0]) {
		return p[0] < q[0]
	}
	return p[1] < q[1]
}

func laid(t template, problem layout.Problem, at layout.Placement) Laid {
	turn := problem.Items[at.Item].Turns[at.Turn]
	m := placementMotion(problem, at)
	out := Laid{
		Piece: t.piece, Name: t.piece.Name, Garment: t.piece.Garment, Size: t.piece.Size,
		Copy: t.first + at.Copy, Yields: t.yields, OnFold: t.onFold,
		Mirrored: turn.Mirrored, Turn: wholeTurn(turn.Degrees + at.Tilt), X: at.X, Y: at.Y,
		Outline: problem.Placed(at),
		Grain:   [2]orb.Point{apply(m, t.piece.Grain.From), apply(m, t.piece.Grain.To)},
	}
	for _, allowed := range problem.Items[at.Item].Turns {
		out.Turnings = append(out.Turnings, Turning{Degrees: wholeTurn(allowed.Degrees), Mirrored: allowed.Mirrored})
	}
	out.Seam = orb.Ring(geometry.Mapped(m, t.piece.SeamOutline(drawTolerance)))
	for _, notch := range t.piece.Notches {
		if edge, ok := t.piece.Edge(notch.Edge); ok {
			out.Notches = append(out.Notches, laidNotch(m, edge, notch))
		}
	}
	for _, dart := range t.piece.Darts {
		out.Darts = append(out.Darts, LaidDart{Name: dart.Name, Line: geometry.Mapped(m, dartLine(dart))})
	}
	for _, mark := range t.piece.Marks {
		line := orb.LineString{mark.At}
		if mark.Path != nil {
			line = mark.Path.Flatten(drawTolerance)
		}
		out.Marks = append(out.Marks, LaidMark{Name: mark.Name, Line: geometry.Mapped(m, line)})
	}
	return out
}

func dartLine(dart pieces.Dart) orb.LineString {
	if dart.Mouth != "" {
		return orb.LineString{dart.Start, dart.Apex, dart.End}
	}
	return orb.LineString{dart.Start, dart.Apex, dart.End, dart.OtherApex, dart.Start}
}

// laidNotch runs from the seam line square out to the cutting line. Pieces
// are drawn counter-clockwise, so outside is to the right of the seam.
func laidNotch(m pieces.Motion, edge pieces.Edge, notch pieces.Notch) LaidNotch {
	at, along := edge.Path.At(notch.At), edge.Path.Tangent(notch.At)
	out := orb.Point{at[0] + along[1]*edge.Allowance, at[1] - along[0]*edge.Allowance}
	still := m
	still.E, still.F = 0, 0
	return LaidNotch{At: apply(m, at), Out: apply(m, out), Along: apply(still, along), Count: notch.Count}
}
