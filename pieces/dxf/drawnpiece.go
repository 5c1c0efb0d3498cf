package dxf

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
)

// drawnPiece gathers what a block has of a piece.
type drawnPiece struct {
	found.Piece
	boundary      []found.Stroke
	sew           []found.Stroke
	corners       []orb.Point
	curves        []orb.Point
	labels        []found.Text
	left, untold  map[string]int
	names, keys   []string
	mirror, grain pieces.Path
}

func (d *drawnPiece) leave(one placed) {
	if d.left[one.layer] == 0 {
		d.names = append(d.names, one.layer)
	}
	d.left[one.layer]++
}

func (d *drawnPiece) line(one placed) {
	stroke := found.Stroke{Path: one.path}
	at := numbered(one.layer)
	inner, isInner := innerKinds[at]
	shape, isNotch := notchShapes[at]
	switch {
	case at == boundaryLayer:
		d.boundary = append(d.boundary, stroke)
	case at == sewLayer:
		d.sew = append(d.sew, stroke)
	case at == mirrorLayer:
		d.mirror = longer(d.mirror, one.path)
	case at == grainLayer:
		d.grain = longer(d.grain, one.path)
	case at == drillLayer:
		box := one.path.Flatten(found.Flattening).Bound()
		d.Inner = append(d.Inner, found.Inner{Kind: found.DrillHole, At: box.Center()})
	case isInner:
		d.Inner = append(d.Inner, found.Inner{Kind: inner, Path: one.path})
	case isNotch:
		d.Notches = append(d.Notches, found.Notch{At: one.path.Start(), Shape: shape})
	default:
		d.leave(one)
	}
}

func longer(a, b pieces.Path) pieces.Path {
	if a == nil || geometry.Distance(b.Start(), b.End()) > geometry.Distance(a.Start(), a.End()) {
		return b
	}
	return a
}

func (d *drawnPiece) point(one placed) {
	at := numbered(one.layer)
	shape, isNotch := notchShapes[at]
	switch {
	case at == turnLayer:
		d.corners = append(d.corners, one.at)
	case at == curveLayer:
		d.curves = append(d.curves, one.at)
	case at == drillLayer:
		d.Inner = append(d.Inner, found.Inner{Kind: found.DrillHole, At: one.at})
	case isNotch:
		d.Notches = append(d.Notches, found.Notch{At: one.at, Shape: shape})
	default:
		d.leave(one)
	}
}

func (d *drawnPiece) text(one placed) {
	key, value, ok := keyed(one.words)
	if !ok {
		d.labels = append(d.labels, found.Text{Words: one.words, At: one.at, Height: one.height})
		return
	}
	if !say(&d.Piece, key, value) {
		if d.untold[one.words] == 0 {
			d.keys = append(d.keys, one.words)
		}
		d.untold[one.words]++
	}
}

// outline of the lines on the layer of the boundary: one that is closed as it stands
// keeps its points and where it begins.
func (d *drawnPiece) outline(o found.Options) ([]found.Note, error) {
	path, notes, err := closedOf(d.boundary, o)
	if err != nil {
		return nil, err
	}
	for _, c := range path {
		d.Outline = append(d.Outline, found.Step{Curve: c})
	}
	d.bend()
	if d.mirror != nil {
		d.Mirror = &found.Straight{From: d.mirror.Start(), To: d.mirror.End()}
	}
	if d.grain != nil {
		d.Grain = &found.Straight{From: d.grain.Start(), To: d.grain.End()}
	}
	if o.Smooth {
		d.Outline = found.Smoothed(d.Outline)
	} else if off := chordsOff(d.Outline); off > coarse {
		notes = append(notes, found.Note{Kind: found.ChordsKept, Count: 1, Size: off})
	}
	return notes, nil
}

// coarse, mm, is how far chords may lie off a smooth line without a word
// [source.OwnChoice].
const coarse = 1

// chordsOff is about how far the chords of curves lie off smooth lines through their
// points: of a chord of length c that turns by an angle a about c a / 8 [source.Geometry].
func chordsOff(all []found.Step) float64 {
	off := 0.0
	for i, s := range all {
		next := all[(i+1)%len(all)]
		if s.Begins != found.Smooth || next.Begins != found.Smooth {
			continue
		}
		u, v := geometry.Unit(geometry.Sub(s.End(), s.Start())), geometry.Unit(geometry.Sub(next.End(), next.Start()))
		turn := math.Abs(math.Atan2(geometry.Cross(u, v), geometry.Dot(u, v)))
		length := min(geometry.Distance(s.Start(), s.End()), geometry.Distance(next.Start(), next.End()))
		off = max(off, length*turn/8)
	}
	return off
}

// bend the outline at its turn points and its curve points.
func (d *drawnPiece) bend() {
	at := spots{}
	for i, s := range d.Outline {
		at.add(s.Start(), i)
	}
	for _, p := range d.curves {
		if i := at.nearest(p); i >= 0 {
			d.Outline[i].Begins = found.Smooth
		}
	}
	for _, p := range d.corners {
		if i := at.nearest(p); i >= 0 {
			d.Outline[i].Begins = found.Corner
		}
	}
}

// closedOf strokes is the largest outline that they close to; nil where they do not.
func closedOf(all []found.Stroke, o found.Options) (pieces.Path, []found.Note, error) {
	if len(all) == 1 && geometry.Distance(all[0].Path.Start(), all[0].Path.End()) <= found.UsualGap {
		return all[0].Path, nil, nil
	}
	drawing, err := found.LooseLines{Strokes: all}.Drawing(o)
	if err != nil || len(drawing.Pieces) == 0 {
		return nil, drawing.Notes, err
	}
	largest := slices.MaxFunc(drawing.Pieces, func(a, b found.Piece) int {
		return cmp.Compare(extentOf(a), extentOf(b))
	})
	var out pieces.Path
	for _, s := range largest.Outline {
		out = append(out, s.Curve)
	}
	return out, drawing.Notes, nil
}

func extentOf(p found.Piece) float64 {
	across, up := p.Extent()
	return across + up
}

// lines that close to the sew line; others are internal lines.
func (d *drawnPiece) lines(o found.Options) {
	if len(d.sew) == 0 {
		d.Line = found.CuttingLine
		return
	}
	path, _, err := closedOf(d.sew, o)
	if err == nil && path != nil {
		d.Sew = path
		return
	}
	d.Line = found.CuttingLine
	for _, s := range d.sew {
		d.Inner = append(d.Inner, found.Inner{Kind: found.InternalLine, Path: s.Path})
	}
}

// label names what lies inside by words that stand at its beginning.
func (d *drawnPiece) label() {
	begins := map[[2]int64][]int{}
	for i, in := range d.Inner {
		if in.Path != nil {
			in.At = in.Path.Start()
		}
		begins[square(in.At)] = append(begins[square(in.At)], i)
	}
	for _, text := range d.labels {
		if free := begins[square(text.At)]; len(free) > 0 {
			d.Inner[free[0]].Name = text.Words
			begins[square(text.At)] = free[1:]
			continue
		}
		d.Texts = append(d.Texts, text)
	}
}
