package part

import (
	"slices"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/seams"
	"ellwand/pieces/source"
)

// combinedPull and combinedSide are how full the lower edge of a combined facing
// swings at the centre line and at the side: more there, to keep clear of the
// armhole [source.OwnChoice].
const (
	combinedPull = 0.45
	combinedSide = 0.6
)

// combinedShare of the front armhole is the most that such a facing is usually
// deep, so that a child's leaves its armhole as wide a rim
// [source.OwnChoice].
const combinedShare = 0.35

// combinedFacing faces neck and armhole of a bodice without sleeves in one: a
// front and a back, each traced from the bodice above a line from the centre,
// so far below the neck, to the side, so far below the underarm.
func combinedFacing(m Measures, o Options, name string) (Block, error) {
	switch {
	case m.Front == nil:
		return Block{}, construct.About(subject.Kind).Refuse("%s: there is no neck and armhole to face: draft a bodice",
			"%s: es gibt kein Halsloch und Armloch dazu: verlangen Sie ein Oberteil",
			called(name))
	case m.WristWidth > 0:
		return Block{}, construct.About(subject.Kind).Refuse("%s: there are sleeves in the armholes; ask for a neck "+
			"facing, or leave out the sleeve",
			"%s: in den Armlöchern sitzen Ärmel; verlangen Sie einen Halsbeleg, oder lassen Sie den "+
				"Ärmel weg", called(name))
	}
	front, back := upperEdges(*m.Front), upperEdges(*m.Back)
	depth, room := o.FinishedDepth(), min(front.room(), back.room())
	switch {
	case o.Depth == 0:
		depth = min(depth, room, combinedShare*construct.SeamLength(*m.Front, seams.Armhole))
	case depth > room:
		return Block{}, construct.About(subject.Depth).Refuse("%s: a depth of %s is more than there is room for below "+
			"neck and underarm; ask for %s or less",
			"%s: für eine Höhe von %s ist unter Hals und Achsel kein Platz; verlangen Sie %s oder "+
				"weniger", called(name), construct.Length(depth), construct.AtMost(room))
	}
	var block Block
	block.combine(front, *m.Front, name+" front", depth)
	block.combine(back, *m.Back, name+" back", depth)
	a, b := block.Pieces[0], block.Pieces[1]
	shoulder := construct.Equal("facing shoulder", b.Name, construct.SeamLength(b, seams.Shoulder), a.Name,
		construct.SeamLength(a, seams.Shoulder))
	shoulder.Least, shoulder.Most, shoulder.Normal = 0, 10,
		construct.Say("the back 0 to 1 cm longer, eased in as on the bodice (%s)", source.CommonPractice)
	block.Pairings = append(block.Pairings, shoulder,
		construct.Equal("facing side", a.Name, construct.SeamLength(a, seams.SideSeam), b.Name,
			construct.SeamLength(b, seams.SideSeam)))
	return block, nil
}

// upperEdges are the edges of a bodice from the side over armhole and shoulder
// to the centre, their darts closed, the centre line upright. Where the piece
// opens with a facing of its own, they end at that.
func upperEdges(of pieces.Piece) closedSeam {
	first, _ := stretchOf(of, seams.Armhole)
	last := slices.IndexFunc(of.Edges, func(e pieces.Edge) bool { return e.Name == seams.Neck })
	c := closedRun(of, seams.Called("neck and armhole"), first, last-first+1)
	c = c.moved(inverse(of.Edges[(last+1)%len(of.Edges)].Path, c.after.Path))
	neck := &c.edges[len(c.edges)-1]
	if own := ownFacing(of); own > 0 {
		neck.Path = construct.Stretch(neck.Path, 0, neck.Path.Length()-own)
		centre, _ := of.Edge(seams.FacingEdge)
		end := neck.Path.End()
		c.after = construct.Edge(seams.FacingEnd, construct.Line(end, orb.Point{end[0], centre.Path.End()[1]}))
	}
	return c
}

// combine adds the facing of one piece, so deep below neck and underarm.
func (b *Block) combine(c closedSeam, of pieces.Piece, name string, depth float64) {
	side := construct.Stretch(c.before.Path, c.before.Path.Length()-depth, c.before.Path.Length())
	neck, _ := of.Edge(seams.Neck)
	// Beside the facing of an opening it begins higher up the neck.
	rise := c.after.Path.Start()[1] - neck.Path.End()[1]
	centre := construct.Stretch(c.after.Path, 0, depth+rise)
	foot := centre.End()
	lower := construct.Parted(construct.Curve(foot, orb.Point{1, 0}, combinedPull, side.Start(),
		construct.Back(construct.Square(side.Tangent(0))), combinedSide))
	piece := pieces.Piece{Name: name, Kind: pieces.Facing, Cut: of.Cut, Pair: of.Pair, Fold: c.fold, Notches: c.notches}
	piece.Edges = append(piece.Edges, construct.Edge(seams.FacingEdge, lower), construct.Edge(seams.SideSeam, side))
	piece.Edges = append(piece.Edges, c.edges...)
	piece.Edges = append(piece.Edges, construct.Edge(c.after.Name, centre))
	x := foot[0] + depth/4
	piece.Grain = pieces.Grain{From: orb.Point{x, foot[1] + float64(0.2*depth)},
		To: orb.Point{x, foot[1] + float64(0.85*depth)}}
	b.Pieces = append(b.Pieces, piece)

	for _, edge := range []seams.Name{seams.Neck, seams.Armhole} {
		length := construct.SeamLength(piece, edge)
		said := name
		if own := ownFacing(of); edge == seams.Neck && own > 0 {
			length, said = length+own, said+", with the facing of the opening"
		}
		b.Pairings = append(b.Pairings, construct.Equal("facing to "+edge.String(), said, length, of.Name,
			construct.SeamLength(of, edge)))
	}
	s := construct.Sheet{Piece: name}
	s.Draw("trace neck, shoulder and armhole of the "+of.Name+", the darts between them closed, with {} of the side "+
		"below the underarm and of the centre below the neck", "the depth", depth)
	if ownFacing(of) > 0 {
		s.Draw("end the neck where the facing of the opening does, and go straight down from there",
			"the two are joined")
	}
	s.Draw("draw the lower edge from there to the side", "square to both")
	b.Sheets = append(b.Sheets, s)
}
