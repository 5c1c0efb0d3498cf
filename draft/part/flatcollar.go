package part

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// usualOverlap is how far front and back overlap at the shoulder tip, in mm, so
// that the outer edge of a flat collar is a little short and lies close
// ([source.CommonPractice]: 1 to 2 cm; more makes it roll).
const usualOverlap = 15

// flatCollar is drawn on the bodice: front and back laid neck point to neck
// point, overlapping at the shoulder tip. The neck is its inner edge, so that
// it matches; its outer edge lies its depth away, square to both centre lines.
func flatCollar(m Measures, o Options, name string) (Block, error) {
	n, err := neckOf(m, name)
	if err != nil {
		return Block{}, err
	}
	overlap, depth := o.Overlap, o.FinishedDepth()
	if overlap == 0 {
		overlap = usualOverlap
	}
	shoulder := min(construct.SeamLength(n.fold, seams.Shoulder), construct.SeamLength(n.open, seams.Shoulder))
	switch {
	case o.Depth == 0:
		depth = min(depth, shoulder-shoulderLeft)
	case depth > shoulder-shoulderLeft:
		return Block{}, construct.About(subject.Depth).Refuse("%s: a depth of %s is more than the shoulder has room "+
			"for; ask for %s or less",
			"%s: für eine Höhe von %s hat die Schulter keinen Platz; verlangen Sie %s oder weniger",
			called(name), construct.Length(depth), construct.AtMost(shoulder-shoulderLeft))
	}
	if overlap < 0 || overlap > shoulder/2 {
		return Block{}, construct.About(subject.Overlap).Refuse("%s: an overlap of %s at the shoulder tip cannot be "+
			"drawn; ask for %s to %s",
			"%s: eine Überdeckung von %s an der Schulterspitze lässt sich nicht zeichnen; verlangen "+
				"Sie %s bis %s", called(name), construct.Length(overlap), construct.Length(10), construct.Length(20))
	}
	piece := n.flat(name, depth, overlap, shoulder)
	return Block{Pieces: []pieces.Piece{piece}, Sheets: []construct.Sheet{n.flatSheet(name, depth, overlap)},
		Pairings: []construct.Pairing{n.matched(piece)}}, nil
}

// flat draws the collar on the piece at its fold.
func (n halfNeck) flat(name string, depth, overlap, shoulder float64) pieces.Piece {
	inner, _ := seamNext(n.fold, seams.Neck, seams.Shoulder)
	other, _ := seamNext(n.open, seams.Neck, seams.Shoulder)
	other = other.Map(n.laid(overlap / shoulder * 180 / math.Pi))
	inner = inner.Reverse()
	outer := construct.RimAt(depth, inner, other)
	edges := []pieces.Edge{
		construct.Edge(seams.OuterCollarEdge, outer),
		construct.Edge(seams.FrontCollarEdge, construct.Line(outer.End(), other.End())),
		construct.Edge(seams.Neck.Stretch(1), other.Reverse()),
		construct.Edge(seams.Neck.Stretch(2), inner.Reverse()),
		construct.Edge(n.centre, construct.Line(inner.Start(), outer.Start())),
	}
	foot := outer.Start()
	piece := pieces.Piece{Name: name, Cut: 2, Fold: n.centre, Edges: edges}
	piece.Grain = pieces.Grain{From: orb.Point{depth / 4, foot[1] + float64(0.2*depth)},
		To: orb.Point{depth / 4, foot[1] + float64(0.8*depth)}}
	piece.Notches = []pieces.Notch{{Edge: seams.Neck.Stretch(2), At: 0, Count: 1, Match: marks.Shoulder}}
	return piece
}

// laid is the motion that lays the piece at the opening, mirrored, against the
// one at the fold: neck point on neck point, its shoulder turned over the
// other's by an angle in degrees.
func (n halfNeck) laid(overlap float64) pieces.Motion {
	neck, shoulder := seamNext(n.fold, seams.Neck, seams.Shoulder)
	other, otherShoulder := seamNext(n.open, seams.Neck, seams.Shoulder)
	flip := pieces.MirrorY()
	along := construct.Back(shoulder.Tangent(shoulder.Length()))
	otherPath := otherShoulder.Map(flip)
	from := construct.Back(otherPath.Tangent(otherPath.Length()))
	turn := (portable.Atan2(along[1], along[0])-portable.Atan2(from[1], from[0]))*180/math.Pi - overlap
	point := flip.Apply(other.Start())
	return flip.Then(pieces.Move(-point[0], -point[1])).Then(pieces.Turn(turn)).Then(pieces.Move(neck.Start()[0],
		neck.Start()[1]))
}

func (n halfNeck) flatSheet(name string, depth, overlap float64) construct.Sheet {
	s := construct.Sheet{Piece: name}
	s.Draw("trace the "+n.fold.Name+", with its neck, shoulder and "+n.centre.String(), "")
	s.Draw("lay the "+n.open.Name+" to it, neck point on neck point, so that its shoulder tip lies {} over the "+
		"other's, and trace its neck and "+n.opening.String(), "so that the collar lies close", overlap)
	s.Draw("mark {} from the neck at the "+n.centre.String()+", at the "+n.opening.String()+
		" and at several places between, square to the neck", "the depth", depth)
	s.Draw("draw the outer edge through the marks", "square to both centre lines")
	return s
}
