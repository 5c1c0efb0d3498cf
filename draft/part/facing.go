package part

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// neckFacing draws a facing for each half of the neck from the edges that it
// faces, so that they match.
func neckFacing(m Measures, o Options, name string) (Block, error) {
	if m.Front == nil {
		return Block{}, construct.About(subject.Kind).Refuse("%s: there is no neck to face: draft a bodice",
			"%s: es gibt kein Halsloch dazu: verlangen Sie ein Oberteil", called(name))
	}
	var block Block
	for _, side := range []struct {
		of     pieces.Piece
		half   string
		centre seams.Name
	}{{*m.Front, "front", seams.CentreFront}, {*m.Back, "back", seams.CentreBack}} {
		facing, err := faceNeck(side.of, side.centre, name+" "+side.half, o.facingDepth(m))
		if err != nil {
			return Block{}, err
		}
		block.Pieces = append(block.Pieces, facing)
		block.Pairings = append(block.Pairings, neckMatched(facing, side.of, side.half+" neck"))
	}
	front, back := block.Pieces[0], block.Pieces[1]
	block.Pairings = append(block.Pairings, construct.Equal("facing shoulder", back.Name,
		construct.SeamLength(back, seams.Shoulder), front.Name, construct.SeamLength(front, seams.Shoulder)))
	return block, nil
}

// neckMatched sets a facing against its half of the neck. An opening has a
// facing of its own for the rest.
func neckMatched(facing, of pieces.Piece, neck string) construct.Pairing {
	name, own := facing.Name, ownFacing(of)
	if own > 0 {
		name += ", with the facing of the opening"
	}
	return construct.Equal("facing to neck", name, construct.SeamLength(facing, seams.Neck)+own, neck,
		construct.SeamLength(of, seams.Neck))
}

// facingDepth is the depth asked for, or the usual one, less where the
// shoulder seam beside the neck is too short for that.
func (o Options) facingDepth(m Measures) float64 {
	depth := o.FinishedDepth()
	if o.Depth > 0 {
		return depth
	}
	for _, of := range []pieces.Piece{*m.Front, *m.Back} {
		depth = min(depth, construct.SeamLength(of, seams.Shoulder)-shoulderLeft)
	}
	return depth
}

// faceNeck draws one facing: the neck edge itself, as much of the shoulder as
// the facing is deep, and an outer edge that is square to the shoulder and to
// the centre line.
func faceNeck(of pieces.Piece, centre seams.Name, name string, depth float64) (pieces.Piece, error) {
	neck, shoulder := seamNext(of, seams.Neck, seams.Shoulder)
	if own := ownFacing(of); own > 0 {
		// The opening has a facing of its own: this one begins there.
		neck, centre = construct.Stretch(neck, 0, neck.Length()-own), seams.FacingEnd
	}
	// The shoulder runs on beyond a dart, which is sewn before it is faced.
	if most := construct.SeamLength(of, seams.Shoulder) - shoulderLeft; depth > most {
		return pieces.Piece{},
			construct.About(subject.Depth).Refuse("%s: a depth of %s is more than the shoulder has "+
				"room for beside the neck; ask for %s or less",
				"%s: für eine Höhe von %s hat die Schulter neben dem Hals keinen Platz; verlangen Sie %s "+
					"oder weniger", called(name), construct.Length(depth), construct.AtMost(most))
	}
	point, middle := neck.Start(), neck.End()
	outward := construct.Back(shoulder.Tangent(shoulder.Length()))
	tip := construct.Go(point, outward, depth)
	foot := orb.Point{middle[0], middle[1] - depth}

	outer := construct.Curve(foot, orb.Point{1, 0}, 0.5, tip, construct.Square(outward), 0.4)
	if point[1]-middle[1] < (point[0]-middle[0])/2 {
		outer = construct.Curve(foot, orb.Point{1, 0}, 0.55, tip, construct.Square(outward), 0.25)
	}
	piece := pieces.Piece{Name: name, Kind: pieces.Facing, Cut: of.Cut, Pair: of.Pair, Edges: []pieces.Edge{
		construct.Edge(seams.FacingEdge, outer),
		construct.Edge(seams.Shoulder, construct.Line(tip, point)),
		construct.Edge(seams.Neck, neck),
		construct.Edge(centre, construct.Line(middle, foot)),
	}}
	if of.Fold == centre {
		piece.Fold = centre
	}
	x := middle[0] + depth/4
	piece.Grain = pieces.Grain{From: orb.Point{x, foot[1] + float64(0.2*depth)},
		To: orb.Point{x, foot[1] + float64(0.85*depth)}}
	return piece, nil
}

// seamNext returns the path of an edge of a piece and of the edge of a seam
// that comes just before it.
func seamNext(of pieces.Piece, name, seam seams.Name) (edge, before pieces.Path) {
	for i, e := range of.Edges {
		if e.Name == name {
			edge = e.Path
			if i > 0 && of.Edges[i-1].Name.Seam() == seam {
				before = of.Edges[i-1].Path
			}
		}
	}
	return edge, before
}
