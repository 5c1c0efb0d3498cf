package found

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

const (
	// doubleApart, mm, are two slits on one edge that are one notch of two strokes
	// [source.CommonPractice].
	doubleApart = 8
	// notchOff, mm, is how far a notch may lie off the outline without a word; farther
	// than notchLost it belongs to no edge [source.OwnChoice].
	notchOff  = 1
	notchLost = 60 // [source.OwnChoice]
)

// notches are set on the edges that they lie nearest to.
func (c *completing) notches() {
	lost, off := 0, 0.0
	moved := 0
	for _, n := range c.from.Notches {
		edge, at, away := c.nearestEdge(n.At)
		if away > notchLost {
			lost++
			continue
		}
		if away > notchOff && c.from.Sew == nil {
			moved++
			off = math.Max(off, away)
		}
		notch := pieces.Notch{Edge: edge, At: at, Count: max(1, n.Strokes)}
		if n.Match != "" {
			notch.Match = marks.Called(n.Match)
		}
		c.piece.Notches = append(c.piece.Notches, notch)
	}
	c.piece.Notches = doubled(c.piece.Notches)
	if moved > 0 {
		c.notes = append(c.notes, Note{Kind: NotchMoved, Count: moved, Size: off})
	}
	if lost > 0 {
		c.notes = append(c.notes, Note{Kind: NotchLost, Count: lost})
	}
}

// nearestEdge that is cut.
func (c *completing) nearestEdge(p orb.Point) (edge seams.Name, at, away float64) {
	away = math.Inf(1)
	for _, e := range c.piece.Edges {
		if e.Name == c.piece.Fold && c.piece.Fold != seams.None {
			continue
		}
		if along, d := nearest(e.Path, p); d < away-same/2 {
			edge, at, away = e.Name, along, d
		}
	}
	return edge, at, away
}

// doubled makes one notch of two that lie close together.
func doubled(all []pieces.Notch) []pieces.Notch {
	var out []pieces.Notch
	for _, n := range all {
		k := slices.IndexFunc(out, func(o pieces.Notch) bool {
			return o.Edge == n.Edge && o.Count == 1 && n.Count == 1 && math.Abs(o.At-n.At) <= doubleApart && o.Match == n.Match
		})
		if k >= 0 {
			out[k].At, out[k].Count = (out[k].At+n.At)/2, 2
			continue
		}
		out = append(out, n)
	}
	return out
}

// kindNames of what lies inside a piece.
var kindNames = [...]marks.Name{InternalLine: marks.InternalLine, Cutout: marks.Cutout, StripeLine: marks.StripeLine,
	PlaidLine: marks.PlaidLine, DrillHole: marks.DrillHole}

// inner makes marks of what lies inside, and of the sew line. A stripe that crosses
// the outline is a match point there.
func (c *completing) inner() {
	if c.from.Sew != nil {
		c.piece.Marks = append(c.piece.Marks, pieces.Mark{Name: marks.SewLine, Path: c.from.Sew})
	}
	count := map[InnerKind]int{}
	for _, in := range c.from.Inner {
		if in.Name == "" {
			count[in.Kind]++
		}
	}
	number := map[InnerKind]int{}
	for _, in := range c.from.Inner {
		name := marks.Called(in.Name)
		if in.Name == "" {
			name = kindNames[in.Kind]
			if number[in.Kind]++; count[in.Kind] > 1 {
				name = name.Numbered(number[in.Kind])
			}
		}
		c.piece.Marks = append(c.piece.Marks, pieces.Mark{Name: name, Path: in.Path, At: in.At})
		if in.Kind == StripeLine || in.Kind == PlaidLine {
			c.matchOn(name, in.Path)
		}
	}
}

// matchOn sets a match point where a line first crosses an edge.
func (c *completing) matchOn(name marks.Name, path pieces.Path) {
	line := path.Flatten(Flattening)
	for _, e := range c.piece.Edges {
		if e.Name == c.piece.Fold && c.piece.Fold != seams.None {
			continue
		}
		points := e.Path.Flatten(Flattening)
		for i := 1; i < len(points); i++ {
			for k := 1; k < len(line); k++ {
				if at, ok := crossing(points[i-1], points[i], line[k-1], line[k]); ok {
					along, _ := nearest(e.Path, at)
					c.piece.Notches = append(c.piece.Notches, pieces.Notch{Edge: e.Name, At: along, Count: 1, Match: name})
					return
				}
			}
		}
	}
}

// crossing of two segments, ends included.
func crossing(a, b, c, d orb.Point) (orb.Point, bool) {
	ab, cd := geometry.Sub(b, a), geometry.Sub(d, c)
	across := geometry.Cross(ab, cd)
	if across == 0 {
		return orb.Point{}, false
	}
	t := geometry.Cross(geometry.Sub(c, a), cd) / across
	s := geometry.Cross(geometry.Sub(c, a), ab) / across
	const slack = 1e-3 // of a line that ends on the outline [source.OwnChoice]
	if t < 0 || t > 1 || s < -slack || s > 1+slack {
		return orb.Point{}, false
	}
	return geometry.Between(a, b, t), true
}
