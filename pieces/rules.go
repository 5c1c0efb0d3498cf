package pieces

import (
	"errors"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

func (p Piece) checkNames() error {
	var faults []error
	if p.Name == "" {
		faults = append(faults, p.fault(Fault{Of: NoName}))
	}
	seen := map[seams.Name]bool{}
	for i, e := range p.Edges {
		switch {
		case e.Name == seams.None:
			faults = append(faults, p.fault(Fault{Of: EdgeUnnamed, Number: i + 1}))
		case seen[e.Name]:
			faults = append(faults, p.fault(Fault{Of: EdgeNamedTwice, Edge: e.Name}))
		}
		seen[e.Name] = true
	}
	return errors.Join(faults...)
}

func (p Piece) checkGrain() error {
	g := p.Grain
	if !finite(g.From[0], g.From[1], g.To[0], g.To[1]) || geometry.Distance(g.From, g.To) <= joinTolerance {
		return p.fault(Fault{Of: NoGrain})
	}
	if g.Lie < StraightGrain || g.Lie > EitherGrain {
		return p.fault(Fault{Of: UnknownGrain})
	}
	return nil
}

func (p Piece) checkAllowances() error {
	var faults []error
	for _, e := range p.Edges {
		if !(e.Allowance >= 0) || !finite(e.Allowance) {
			faults = append(faults, p.allowanceFault(e))
		}
		if !(e.Included >= 0) || !finite(e.Included) || e.Unknown && e.Included > 0 {
			faults = append(faults, p.fault(Fault{Of: IncludedNoWidth, Edge: e.Name}))
		}
	}
	if !(p.Accuracy >= 0) || !finite(p.Accuracy) {
		faults = append(faults, p.fault(Fault{Of: AccuracyNoLength}))
	}
	return errors.Join(faults...)
}

func (p Piece) checkCount() error {
	switch {
	case p.Cut < 1:
		return p.fault(Fault{Of: CutNone, Number: p.Cut})
	case p.Pair && p.Cut%2 != 0:
		return p.fault(Fault{Of: PairUneven, Number: p.Cut})
	}
	return nil
}

func (p Piece) checkFold() error {
	if p.Fold == seams.None {
		return nil
	}
	fold, ok := p.Edge(p.Fold)
	switch {
	case !ok:
		return p.fault(Fault{Of: FoldNoEdge, Edge: p.Fold})
	case !fold.Path.isStraight():
		return p.fault(Fault{Of: FoldBent, Edge: p.Fold})
	case fold.Allowance != 0 || fold.Included != 0:
		return p.fault(Fault{Of: FoldAllowance, Edge: p.Fold})
	}
	from, u := fold.Path.Start(), geometry.Unit(geometry.Sub(fold.Path.End(), fold.Path.Start()))
	for _, q := range p.Boundary(checkTolerance) {
		if beyond := -geometry.Cross(u, geometry.Sub(q, from)); beyond > joinTolerance {
			return p.fault(Fault{Of: AcrossFold, Edge: p.Fold, Length: beyond})
		}
	}
	return nil
}

func (p Piece) checkNotches() error {
	var faults []error
	for _, n := range p.Notches {
		e, ok := p.Edge(n.Edge)
		switch {
		case !ok:
			faults = append(faults, p.fault(Fault{Of: NotchNoEdge, Edge: n.Edge}))
		case !(n.At >= 0) || n.At > e.Path.Length()+joinTolerance:
			faults = append(faults, p.fault(Fault{Of: NotchOffEdge, Edge: n.Edge, Length: n.At, Whole: e.Path.Length()}))
		case n.Count < 1:
			faults = append(faults, p.fault(Fault{Of: NotchNoStrokes, Edge: n.Edge, Length: n.At, Number: n.Count}))
		}
	}
	return errors.Join(faults...)
}

func (p Piece) checkMarks() error {
	var faults []error
	for _, m := range p.Marks {
		ok := finite(m.At[0], m.At[1])
		if m.Path != nil {
			ok = isValid(m.Path)
		}
		if !ok {
			faults = append(faults, p.fault(Fault{Of: MarkNowhere, Mark: m.Name}))
		}
	}
	return errors.Join(faults...)
}

func (p Piece) checkDarts() error {
	ring := p.Boundary(checkTolerance)
	var faults []error
	for _, d := range p.Darts {
		faults = append(faults, p.checkDart(d, ring))
	}
	return errors.Join(faults...)
}

func (p Piece) checkDart(d Dart, ring orb.Ring) error {
	corners := []orb.Point{d.Start, d.Apex, d.End}
	if d.Mouth == seams.None {
		corners = append(corners, d.OtherApex)
		if geometry.Distance(d.Apex, d.OtherApex) <= joinTolerance {
			return p.fault(Fault{Of: DartFlat, Dart: d.Name})
		}
	}
	for _, q := range corners {
		if !finite(q[0], q[1]) || !geometry.Inside(ring, q) && !isOn(ring, q) {
			return p.fault(Fault{Of: DartOutside, Dart: d.Name, At: q})
		}
	}
	if d.Mouth == seams.None {
		return nil
	}
	mouth, ok := p.Edge(d.Mouth)
	switch {
	case !ok:
		return p.fault(Fault{Of: DartNoMouth, Dart: d.Name, Edge: d.Mouth})
	case geometry.Distance(d.Start, mouth.Path.Start()) > joinTolerance, geometry.Distance(d.End,
		mouth.Path.End()) > joinTolerance:
		return p.fault(Fault{Of: DartLegsApart, Dart: d.Name, Edge: d.Mouth})
	case isOn(ring, d.Apex) && !p.onFold(d.Apex):
		return p.fault(Fault{Of: DartApexOnEdge, Dart: d.Name})
	}
	return nil
}

// onFold reports whether a point lies on the fold line.
func (p Piece) onFold(q orb.Point) bool {
	fold, ok := p.Edge(p.Fold)
	if p.Fold == seams.None || !ok {
		return false
	}
	from, u := fold.Path.Start(), geometry.Unit(geometry.Sub(fold.Path.End(), fold.Path.Start()))
	return geometry.Cross(u, geometry.Sub(q, from)) <= joinTolerance &&
		geometry.Cross(u, geometry.Sub(q, from)) >= -joinTolerance
}

// isOn reports whether a point lies on a ring, within the tolerance of the
// checks.
func isOn(ring orb.Ring, q orb.Point) bool {
	return geometry.IsOn(ring, q, checkTolerance+joinTolerance)
}
