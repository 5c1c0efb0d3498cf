package tracing

import (
	"errors"
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/tracing/reference"
)

// errNoReference asks for what is known in the photo.
var errNoReference = errors.New("a photo needs something of a known size in it: a squared ground (--ground 1cm), " +
	"sheets of paper (--sheets a4), or, where it was taken square on, two distances (--distance \"120,80 1500,90 = " +
	"60cm\", twice)")

// Read traces a photo as other drawings are read. The errors are sentences.
func Read(data []byte, o found.Options) (found.Drawing, error) {
	known, err := knownOf(o.Reference)
	if err != nil {
		return found.Drawing{}, err
	}
	t, err := Trace(data, known)
	if err != nil {
		return found.Drawing{}, err
	}
	if err := o.Limits.Check(found.Outlines, len(t.Outlines)); err != nil {
		return found.Drawing{}, err
	}
	out := found.Drawing{Photo: t.WriteOverlay, Notes: t.notes()}
	upright := t.upright()
	for i, one := range t.Outlines {
		p := found.Piece{Accuracy: math.Ceil(one.Accuracy*100) / 100}
		for _, edge := range one.Edges {
			for k, c := range edge.Map(upright) {
				step := found.Step{Curve: c, Begins: found.Smooth}
				if k == 0 && (len(one.Corners) > 0 || i == 0 && len(one.Edges) > 1) {
					step.Begins = found.Corner
				}
				p.Outline = append(p.Outline, step)
			}
		}
		out.Pieces = append(out.Pieces, p)
		out.Notes = append(out.Notes, found.Note{Kind: found.PhotoAccuracy, Piece: i + 1, Count: 1, Size: p.Accuracy})
	}
	return out, nil
}

func knownOf(r found.Reference) (Known, error) {
	switch {
	case r.Square > 0:
		return Known{Square: r.Square}, nil
	case r.Sheet[0] > 0:
		return Known{Sheet: reference.Known{Width: math.Min(r.Sheet[0], r.Sheet[1]),
			Height: math.Max(r.Sheet[0], r.Sheet[1])}}, nil
	case len(r.Distances) == 2:
		var d [2]reference.Distance
		for i, one := range r.Distances {
			d[i] = reference.Distance{From: one.From, To: one.To, Length: one.Length}
		}
		return Known{Distances: &d}, nil
	}
	return Known{}, errNoReference
}

// notes of what the tracing rests on, and of what was left out.
func (t Tracing) notes() []found.Note {
	var out []found.Note
	switch t.Reference.Kind {
	case reference.Squares:
		n := t.Reference.Count
		out = append(out, found.Note{Kind: found.SquaresSeen, Count: 1, What: fmt.Sprintf("%d by %d", max(n[0], n[1]),
			min(n[0], n[1]))})
	case reference.Sheets, reference.OneSheet:
		out = append(out, found.Note{Kind: found.SheetsSeen, Count: t.Reference.Count[0]})
	}
	for _, fault := range t.Left {
		out = append(out, found.Note{Kind: found.ShapeLeft, Count: 1, What: fault.Error()})
	}
	return out
}

// upright is the motion that turns the plane as the photo shows it: up is up; by
// squares, one of their lines is, so that pieces laid along them lie straight.
func (t Tracing) upright() pieces.Motion {
	c := t.Reference.Camera
	_, down := c.Jacobian(c.Middle)
	angle := math.Atan2(-down[0], -down[1]) // of up, from the y axis to the right
	if t.Reference.Kind == reference.Squares {
		const quarter = math.Pi / 2 // [source.Geometry]
		angle = math.Round(angle/quarter) * quarter
	}
	sin, cos := math.Sincos(angle)
	turn := pieces.Motion{A: cos, B: -sin, C: sin, D: cos}
	var all orb.MultiPoint
	for _, o := range t.Outlines {
		for _, e := range o.Edges {
			all = append(all, orb.MultiPoint(e.Map(turn).Flatten(1))...)
		}
	}
	corner := all.Bound().Min
	turn.E, turn.F = -corner[0], -corner[1]
	return turn
}
