package pieces

import (
	"errors"

	"ellwand/pieces/geometry"
)

// Check tells everything that is wrong with the piece, each a Fault, joined into one
// error; nil when it is valid. The rules:
//
//  1. The piece has a name.
//  2. It has edges, each with a path of finite numbers and some length.
//  3. Every edge has a name of its own.
//  4. Every curve begins where the one before ends, within 0.001 mm, and the
//     last edge ends where the first begins.
//  5. The outline is simple: it neither crosses nor touches itself, nor runs
//     back on itself.
//  6. Its area is positive, and it runs counter-clockwise.
//  7. The grainline is there and has a length.
//  8. No allowance is negative, nor the accuracy; one that is unknown has no
//     width.
//  9. The cut count is 1 or more, and even for a pair.
//  10. The fold is an edge, straight, without an allowance, and the piece lies
//     wholly on one side of it.
//  11. Every notch lies on an edge of the piece, within its length, and has 1
//     or more strokes.
//  12. The mouth of a dart is an edge, its legs meet the ends of that edge and
//     its apex is inside the piece; a dart without a mouth lies inside the
//     piece, and its two ends differ.
//  13. The numbers of marks are finite.
//
// Rules 5, 6, 10, 11 and 12 are looked at only when 2 and 4 hold.
func (p Piece) Check() error {
	faults := []error{p.checkEdges()}
	if faults[0] == nil {
		faults = append(faults, p.checkOutline())
	}
	faults = append(faults, p.checkNames(), p.checkGrain(), p.checkAllowances(), p.checkCount(), p.checkMarks())
	if faults[0] == nil {
		faults = append(faults, p.checkFold(), p.checkNotches(), p.checkDarts())
	}
	return errors.Join(faults...)
}

func (p Piece) checkEdges() error {
	if len(p.Edges) == 0 {
		return p.fault(Fault{Of: NoEdges})
	}
	var faults []error
	for _, e := range p.Edges {
		if !isValid(e.Path) {
			faults = append(faults, p.fault(Fault{Of: NoLine, Edge: e.Name}))
		}
	}
	if faults != nil {
		return errors.Join(faults...)
	}
	for i, e := range p.Edges {
		for k := 1; k < len(e.Path); k++ {
			if gap := geometry.Distance(e.Path[k-1].End(), e.Path[k].Start()); gap > joinTolerance {
				faults = append(faults, p.fault(Fault{Of: Broken, Edge: e.Name, Number: k + 1, Length: gap}))
			}
		}
		next := p.Edges[(i+1)%len(p.Edges)]
		if gap := geometry.Distance(e.Path.End(), next.Path.Start()); gap > joinTolerance {
			faults = append(faults, p.fault(Fault{Of: NotChained, Edge: next.Name, Other: e.Name, Length: gap}))
		}
	}
	return errors.Join(faults...)
}

func (p Piece) checkOutline() error {
	ring, names := p.labelled()
	if at, a, b, ok := selfIntersection(ring); ok {
		return p.fault(Fault{Of: Crossed, At: at, Edge: names[a], Other: names[b]})
	}
	switch area := geometry.Area(ring); {
	case area < 0:
		return p.fault(Fault{Of: Clockwise})
	case area < 1:
		return p.fault(Fault{Of: NoArea})
	}
	return nil
}
