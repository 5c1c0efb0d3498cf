// Package outline makes the edges of pieces from points: corners, points on a smooth
// line, arcs and Bezier curves; or from readings of a tape along a line.
//
// Lengths are millimetres.
package outline

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// Node is a point of an outline, and how the line goes on from it to the next.
type Node struct {
	At orb.Point
	// Smooth says that the line passes the point without a bend. A line through
	// such points is smooth from the corner before them to the corner after.
	Smooth bool
	// Edge is the name of the edge that begins at a corner. A corner that has the
	// name of the edge before it is a bend in that edge.
	Edge seams.Name
	// Rise, when not 0, makes the way to the next point an arc of a circle: how
	// far its middle lies to the right of the straight way; negative to the left.
	Rise float64
	// Controls, when there are two, make the way to the next point a Bezier curve.
	Controls []orb.Point
}

// Edges of the closed outline through nodes, counter-clockwise. Reversed says that
// the nodes run clockwise, so that every edge begins where they have its end. The
// errors are of type *Fault.
func Edges(nodes []Node) (edges []pieces.Edge, reversed bool, err error) {
	first := slices.IndexFunc(nodes, func(n Node) bool { return !n.Smooth })
	switch {
	case len(nodes) < 2:
		return nil, false, &Fault{Of: TooFewPoints}
	case first < 0:
		return nil, false, &Fault{Of: NoCorner}
	}
	round := append(slices.Clone(nodes[first:]), nodes[:first]...)
	round = append(round, round[0])
	path, err := ways(round, first, len(nodes))
	if err != nil {
		return nil, false, err
	}
	for i, n := range round[:len(round)-1] {
		if !n.Smooth && (len(edges) == 0 || edges[len(edges)-1].Name != n.Edge) {
			edges = append(edges, pieces.Edge{Name: n.Edge})
		}
		last := &edges[len(edges)-1]
		last.Path = append(last.Path, path[i])
	}
	if n := len(edges); n > 1 && edges[0].Name == edges[n-1].Name {
		edges[0].Path = append(edges[n-1].Path, edges[0].Path...)
		edges = edges[:n-1]
	}
	if geometry.Area(pieces.Piece{Edges: edges}.Boundary(1)) < 0 {
		slices.Reverse(edges)
		for i := range edges {
			edges[i].Path = edges[i].Path.Reverse()
		}
		reversed = true
	}
	return edges, reversed, nil
}

// Line through nodes from the first to the last. The errors are of type *Fault.
func Line(nodes []Node) (pieces.Path, error) {
	if len(nodes) < 2 {
		return nil, &Fault{Of: TooFewOnLine}
	}
	open := slices.Clone(nodes)
	open[0].Smooth, open[len(open)-1].Smooth = false, false
	return ways(open, 0, len(nodes))
}

// ways between the points of a chain that begins and ends at a corner, one from
// each point to the next. The first of the chain is the first-th of all nodes.
func ways(chain []Node, first, all int) (pieces.Path, error) {
	var out pieces.Path
	for i := 0; i+1 < len(chain); {
		at := (first + i) % all
		if geometry.Distance(chain[i].At, chain[i+1].At) < joined {
			return nil, &Fault{Of: OnPointBefore, Node: (at + 1) % all}
		}
		if curve, drawn, fault := chain[i].way(chain[i+1].At); fault != nil {
			fault.Node = at
			return nil, fault
		} else if drawn {
			out = append(out, curve)
			i++
			continue
		}
		end := i + 1
		for end+1 < len(chain) && chain[end].Smooth && !chain[end].isDrawn() {
			end++
		}
		var points []orb.Point
		for _, n := range chain[i : end+1] {
			points = append(points, n.At)
		}
		for k := 1; k < len(points); k++ {
			if geometry.Distance(points[k-1], points[k]) < joined {
				return nil, &Fault{Of: OnPointBefore, Node: (at + k) % all}
			}
		}
		out = append(out, Through(points)...)
		i = end
	}
	return out, nil
}

func (n Node) isDrawn() bool { return n.Rise != 0 || len(n.Controls) > 0 }

// way from the node to the next point, where it says how that goes.
func (n Node) way(to orb.Point) (curve pieces.Curve, drawn bool, fault *Fault) {
	switch {
	case n.Rise != 0 && len(n.Controls) > 0:
		return nil, false, &Fault{Of: ArcAndCurve}
	case n.Rise != 0:
		return Arc(n.At, to, n.Rise), true, nil
	case len(n.Controls) == 2:
		return pieces.Bezier{P0: n.At, P1: n.Controls[0], P2: n.Controls[1], P3: to}, true, nil
	case len(n.Controls) > 0:
		return nil, false, &Fault{Of: ControlsAmiss, Number: len(n.Controls)}
	}
	return nil, false, nil
}

// Arc over the chord from a to b whose middle lies so far to the right of it
// [source.Geometry].
func Arc(a, b orb.Point, rise float64) pieces.Arc {
	half := geometry.Distance(a, b) / 2
	radius := (float64(half*half) + float64(rise*rise)) / (2 * rise) // negative to the left
	u := geometry.Unit(geometry.Sub(b, a))
	centre := geometry.Add(geometry.Between(a, b, 0.5), geometry.Times(geometry.Right(u), rise-radius))
	from := geometry.Sub(a, centre)
	return pieces.Arc{
		Centre: centre, Radius: math.Abs(radius), Begin: portable.Atan2(from[1], from[0]),
		Sweep: 4 * portable.Atan(rise/half),
	}
}

// RiseOf an arc is what Node.Rise has of it.
func RiseOf(a pieces.Arc) float64 {
	half := geometry.Distance(a.Start(), a.End()) / 2
	rise := a.Radius * (1 - portable.Cos(a.Sweep/2))
	if a.Sweep < 0 {
		rise = -rise
	}
	if half == 0 {
		return 0
	}
	return rise
}
