package part

import (
	"math"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// closedSeam is a seam of a piece with its darts closed, and the edges beside
// it, moved with it.
type closedSeam struct {
	seam          seams.Name
	edges         []pieces.Edge
	before, after pieces.Edge
	fold          seams.Name
	notches       []pieces.Notch
}

// closed closes the darts of a seam: what lies beyond each is turned about its
// point until the legs meet.
func closed(of pieces.Piece, seam seams.Name, name string) (closedSeam, error) {
	first, count := stretchOf(of, seam)
	if count == 0 {
		return closedSeam{}, construct.About(subject.Edge).Refuse("%s: the %s has no edge %q; its edges are: %s",
			"%s: %s hat keine Kante %q; es hat: %s", called(name),
			of.Name, seam, seams.List(construct.Seams(of)))
	}
	return closedRun(of, seam, first, count), nil
}

// Closed is a seam of a piece as one path, its darts closed; empty where the
// piece has none of the name.
func Closed(of pieces.Piece, seam seams.Name) pieces.Path {
	first, count := stretchOf(of, seam)
	var path pieces.Path
	for _, edge := range closedRun(of, seam, first, count).edges {
		path = append(path, edge.Path...)
	}
	return path
}

// closedRun closes the darts of so many edges from the first on.
func closedRun(of pieces.Piece, seam seams.Name, first, count int) closedSeam {
	all := len(of.Edges)
	c := closedSeam{seam: seam, before: of.Edges[(first+all-1)%all]}
	motion := pieces.Identity()
	for i := range count {
		edge := of.Edges[(first+i)%all]
		if dart, ok := dartAt(of, edge.Name); ok {
			// Turned first, then moved as everything before it was.
			motion = closing(dart).Then(motion)
			continue
		}
		edge.Path = edge.Path.Map(motion)
		c.edges = append(c.edges, edge)
		for _, n := range of.Notches {
			if n.Edge == edge.Name {
				c.notches = append(c.notches, n)
			}
		}
	}
	c.after = of.Edges[(first+count)%all]
	c.after.Path = c.after.Path.Map(motion)
	switch of.Fold {
	case c.before.Name:
		c.fold = of.Fold
	case c.after.Name:
		// The fold stays upright; the rest is turned to it.
		c.fold = of.Fold
		c = c.moved(inverse(of.Edges[(first+count)%all].Path, c.after.Path))
	}
	return c
}

// inverse is the motion that takes a moved path back to where it was.
func inverse(was, moved pieces.Path) pieces.Motion {
	a, b := was.Tangent(0), moved.Tangent(0)
	angle := (portable.Atan2(a[1], a[0]) - portable.Atan2(b[1], b[0])) * 180 / math.Pi
	from, to := moved.Start(), was.Start()
	return pieces.Move(-from[0], -from[1]).Then(pieces.Turn(angle)).Then(pieces.Move(to[0], to[1]))
}

func (c closedSeam) moved(m pieces.Motion) closedSeam {
	c.before.Path, c.after.Path = c.before.Path.Map(m), c.after.Path.Map(m)
	for i := range c.edges {
		c.edges[i].Path = c.edges[i].Path.Map(m)
	}
	return c
}

// closing is the motion that lays the second leg of a dart on the first.
func closing(d pieces.Dart) pieces.Motion {
	a, b := construct.Direction(d.Apex, d.Start), construct.Direction(d.Apex, d.End)
	return construct.Turning(d.Apex, (portable.Atan2(a[1], a[0])-portable.Atan2(b[1], b[0]))*180/math.Pi)
}

func dartAt(of pieces.Piece, mouth seams.Name) (pieces.Dart, bool) {
	for _, d := range of.Darts {
		if d.Mouth == mouth {
			return d, true
		}
	}
	return pieces.Dart{}, false
}

// stretchOf is where the edges of a seam begin and how many they are, the
// mouths of its darts among them.
func stretchOf(of pieces.Piece, seam seams.Name) (first, count int) {
	for i, edge := range of.Edges {
		if edge.Name.Seam() != seam {
			continue
		}
		if count == 0 {
			first = i
		}
		count = i - first + 1
	}
	return first, count
}

// room is how deep a facing may be beside the edges that it faces.
func (c closedSeam) room() float64 {
	return min(c.before.Path.Length(), c.after.Path.Length()) - shoulderLeft
}

// shoulderLeft is the least of a shoulder seam that a facing leaves bare, in mm
// [source.OwnChoice].
const shoulderLeft = 5

// ownFacing is how much of the neck of a piece is faced by the facing that its
// opening has grown on; 0 where it does not open.
func ownFacing(of pieces.Piece) float64 {
	return construct.SeamLength(of, seams.FacingNeck) - construct.SeamLength(of, seams.ExtensionNeck)
}
