package plan

import (
	"math"
	"sort"

	"github.com/paulmach/orb"

	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest/layout"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// drawTolerance is how near, in mm, drawn curves follow the true ones
// [source.OwnChoice].
const drawTolerance = 0.1

// laidOut brings the layouts of all beds back to pieces on the cloth, in the
// order in which a cutter lays them: from the cut end, and across from y = 0.
func laidOut(beds []SolvedBed) []lay.Laid {
	var out []lay.Laid
	for part, found := range beds {
		for _, at := range found.Layout.Placements {
			l := laid(found.Templates[at.Item], found.Problem, at)
			l.Bed = part
			out = append(out, moved(l, found.Bed.At))
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return before(out[i], out[j]) })
	return out
}

// moved brings a piece from the frame of its bed to that of the lay.
func moved(l lay.Laid, by orb.Point) lay.Laid {
	if by == (orb.Point{}) {
		return l
	}
	m := pieces.Motion{A: 1, D: 1, E: by[0], F: by[1]}
	l.X, l.Y = l.X+by[0], l.Y+by[1]
	l.Outline, l.Seam = orb.Ring(motion.Mapped(m, l.Outline)), orb.Ring(motion.Mapped(m, l.Seam))
	l.Grain = [2]orb.Point{m.Apply(l.Grain[0]), m.Apply(l.Grain[1])}
	for i := range l.Notches {
		l.Notches[i].At, l.Notches[i].Out = m.Apply(l.Notches[i].At), m.Apply(l.Notches[i].Out)
	}
	for i := range l.Darts {
		l.Darts[i].Line = motion.Mapped(m, l.Darts[i].Line)
	}
	for i := range l.Marks {
		l.Marks[i].Line = motion.Mapped(m, l.Marks[i].Line)
	}
	return l
}

// before orders by the end nearer to the cut end, then across; 1 mm along
// does not count, so that a column of pieces stays in order.
func before(a, b lay.Laid) bool {
	p, q := a.Outline.Bound().Min, b.Outline.Bound().Min
	if math.Floor(p[0]) != math.Floor(q[0]) {
		return p[0] < q[0]
	}
	return p[1] < q[1]
}

func laid(t rules.Template, problem layout.Problem, at layout.Placement) lay.Laid {
	turn := problem.Items[at.Item].Turns[at.Turn]
	m := rules.PlacementMotion(problem, at)
	out := lay.Laid{
		Piece: t.Piece, Name: t.Piece.Name, Garment: t.Piece.Garment, Size: t.Piece.Size,
		Copy: t.First + at.Copy, Yields: t.Yields, FromLower: t.FromLower, OnFold: t.OnFold,
		Mirrored: turn.Mirrored, Turn: motion.WholeTurn(turn.Degrees + at.Tilt), X: at.X, Y: at.Y,
		Outline: problem.Placed(at),
		Grain:   [2]orb.Point{m.Apply(t.Piece.Grain.From), m.Apply(t.Piece.Grain.To)},
	}
	for _, allowed := range problem.Items[at.Item].Turns {
		out.Turnings = append(out.Turnings,
			lay.Turning{Degrees: motion.WholeTurn(allowed.Degrees), Mirrored: allowed.Mirrored})
	}
	out.Seam = orb.Ring(motion.Mapped(m, t.Piece.SeamOutline(drawTolerance)))
	for _, notch := range t.Piece.Notches {
		if edge, ok := t.Piece.Edge(notch.Edge); ok {
			out.Notches = append(out.Notches, laidNotch(m, edge, notch))
		}
	}
	for _, dart := range t.Piece.Darts {
		out.Darts = append(out.Darts, lay.Dart{Name: dart.Name.String(), Line: motion.Mapped(m, dartLine(dart))})
	}
	for _, mark := range t.Piece.Marks {
		line := orb.LineString{mark.At}
		if mark.Path != nil {
			line = mark.Path.Flatten(drawTolerance)
		}
		out.Marks = append(out.Marks, lay.Mark{Name: mark.Name, Line: motion.Mapped(m, line)})
	}
	return out
}

func dartLine(dart pieces.Dart) orb.LineString {
	if dart.Mouth != seams.None {
		return orb.LineString{dart.Start, dart.Apex, dart.End}
	}
	return orb.LineString{dart.Start, dart.Apex, dart.End, dart.OtherApex, dart.Start}
}

// laidNotch runs from the seam line square out to the cutting line. Pieces
// are drawn counter-clockwise, so outside is to the right of the seam.
func laidNotch(m pieces.Motion, edge pieces.Edge, notch pieces.Notch) lay.Notch {
	at, along := edge.Path.At(notch.At), edge.Path.Tangent(notch.At)
	out := orb.Point{at[0] + float64(along[1]*edge.Allowance), at[1] - float64(along[0]*edge.Allowance)}
	still := m
	still.E, still.F = 0, 0
	return lay.Notch{At: m.Apply(at), Out: m.Apply(out), Along: still.Apply(along),
		Count: notch.Count}
}
