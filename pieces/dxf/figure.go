package dxf

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/linework"
	"ellwand/pieces/outline"
)

// readers of the entities that are understood, by their names.
var readers = map[string]func(record, *entity) error{
	"LINE": readLine, "ARC": readArc, "CIRCLE": readCircle, "ELLIPSE": readEllipse, "LWPOLYLINE": readLight,
	"SPLINE": readSpline, "POINT": readPoint, "TEXT": readText, "MTEXT": readText, "ATTRIB": readText,
	"INSERT": readInsert,
}

// silent are entities that say nothing of a pattern and are left out without a word.
var silent = map[string]bool{"ATTDEF": true, "SEQEND": true, "VIEWPORT": true, "": true}

func readLine(r record, e *entity) error {
	a, errA := r.point(10, 20)
	b, errB := r.point(11, 21)
	e.kind, e.path = lineKind, pieces.Path{pieces.Line{From: a, To: b}}
	return first(errA, errB)
}

func first(all ...error) error {
	for _, err := range all {
		if err != nil {
			return err
		}
	}
	return nil
}

func readArc(r record, e *entity) error {
	centre, err := r.point(10, 20)
	n, errN := r.numbers(40, 50, 51)
	if err := first(err, errN); err != nil {
		return err
	}
	begin, end := n[1]*math.Pi/180, n[2]*math.Pi/180
	sweep := math.Mod(end-begin, 2*math.Pi)
	if sweep <= 0 {
		sweep += 2 * math.Pi
	}
	return r.arc(e, pieces.Arc{Centre: centre, Radius: n[0], Begin: begin, Sweep: sweep})
}

func readCircle(r record, e *entity) error {
	centre, err := r.point(10, 20)
	radius, errR := r.number(40, 0)
	if err := first(err, errR); err != nil {
		return err
	}
	return r.arc(e, pieces.Arc{Centre: centre, Radius: radius, Sweep: 2 * math.Pi})
}

func (r record) arc(e *entity, a pieces.Arc) error {
	if a.Radius <= 0 {
		return r.fault(linework.NoArc, a.Radius)
	}
	plane, flat := r.plane()
	if !flat {
		return nil
	}
	e.kind, e.path = lineKind, plane.curve(a)
	return nil
}

func readEllipse(r record, e *entity) error {
	centre, err := r.point(10, 20)
	major, errM := r.point(11, 21)
	ratio, errR := r.number(40, 1)
	begin, errB := r.number(41, 0)
	end, errE := r.number(42, 2*math.Pi)
	if err := first(err, errM, errR, errB, errE); err != nil {
		return err
	}
	if ratio <= 0 || major == (orb.Point{}) {
		return r.fault(linework.NoEllipse, 0)
	}
	sweep := math.Mod(end-begin, 2*math.Pi)
	if sweep <= 1e-9 {
		sweep += 2 * math.Pi
	}
	turn := 1.0 // of the shorter axis, to the left of the longer
	if z, err := r.number(230, 1); err == nil && z < 0 {
		turn = -1
	}
	m := affine{major[0], -turn * ratio * major[1], major[1], turn * ratio * major[0], centre[0], centre[1]}
	e.kind, e.path = lineKind, ellipse(m, begin, sweep)
	return nil
}

// vertex of a polyline.
type vertex struct {
	at    orb.Point
	bulge float64
}

// readLight reads a polyline that has its vertices in itself.
func readLight(r record, e *entity) error {
	var all []vertex
	for _, g := range r.groups {
		switch g.code {
		case 10:
			x, err := r.s.number(g)
			if err != nil {
				return err
			}
			all = append(all, vertex{at: orb.Point{x, 0}})
		case 20, 42:
			x, err := r.s.number(g)
			if err != nil {
				return err
			}
			if len(all) == 0 {
				continue
			}
			if g.code == 20 {
				all[len(all)-1].at[1] = x
			} else {
				all[len(all)-1].bulge = x
			}
		}
	}
	return r.polyline(e, all, r.whole(70)&1 != 0)
}

// polyline through vertices: a bulge is the tangent of a quarter of the arc's angle.
func (r record) polyline(e *entity, all []vertex, closed bool) error {
	plane, flat := r.plane()
	if !flat || len(all) < 2 {
		return nil
	}
	e.kind = lineKind
	count := len(all) - 1
	if closed && all[0].at != all[count].at {
		count++
	}
	e.path = make(pieces.Path, 0, count)
	for i := range count {
		a, b := all[i], all[(i+1)%len(all)]
		if a.bulge == 0 || a.at == b.at {
			e.path = append(e.path, plane.curve(pieces.Line{From: a.at, To: b.at})...)
			continue
		}
		half := math.Hypot(b.at[0]-a.at[0], b.at[1]-a.at[1]) / 2
		e.path = append(e.path, plane.curve(outline.Arc(a.at, b.at, a.bulge*half))...)
	}
	return nil
}

func readPoint(r record, e *entity) error {
	at, err := r.point(10, 20)
	e.kind, e.at = pointKind, at
	return err
}

func readText(r record, e *entity) error {
	at, err := r.point(10, 20)
	height, errH := r.number(40, 0)
	plane, flat := r.plane()
	if !flat {
		return first(err, errH)
	}
	words := ""
	for _, g := range r.groups {
		if g.code == 3 || g.code == 1 { // long words come in parts
			words += r.s.text(g)
		}
	}
	e.kind, e.at, e.words, e.height = textKind, plane.apply(at), decoded(words), height
	return first(err, errH)
}

// readInsert reads how a block is inserted, once or in rows and columns.
func readInsert(r record, e *entity) error {
	at, err := r.point(10, 20)
	x, errX := r.number(41, 1)
	y, errY := r.number(42, x)
	if _, given := r.find(42); !given {
		y = 1
	}
	n, errN := r.numbers(50, 44, 45)
	if err := first(err, errX, errY, errN); err != nil {
		return err
	}
	if x == 0 || y == 0 {
		return r.fault(linework.NoBlock, 0)
	}
	plane, flat := r.plane()
	if !flat {
		return nil
	}
	columns, rows := max(1, r.whole(70)), max(1, r.whole(71))
	const most = 1000 // copies of one block [source.OwnChoice]
	if columns > most || rows > most || columns*rows > most {
		return &found.TooMuch{What: found.Things}
	}
	sin, cos := math.Sincos(n[0] * math.Pi / 180)
	turn := affine{cos, -sin, sin, cos, at[0], at[1]}
	e.kind, e.block = insertKind, decoded(r.text(2))
	for i := range columns * rows {
		step := affine{1, 0, 0, 1, float64(i%columns) * n[1], float64(i/columns) * n[2]}
		e.maps = append(e.maps, plane.after(turn).after(step).after(affine{a: x, d: y}))
	}
	return nil
}
