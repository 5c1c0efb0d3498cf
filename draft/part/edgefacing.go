package part

import (
	"strings"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// armholeFacing draws a facing for each half of the armhole.
func armholeFacing(m Measures, o Options, name string) (Block, error) {
	if m.Front == nil {
		return Block{}, construct.About(subject.Kind).Refuse("%s: there is no armhole to face: draft a bodice",
			"%s: es gibt kein Armloch dazu: verlangen Sie ein Oberteil", called(name))
	}
	// Both are as deep as the one with less room, so that their ends match.
	var block Block
	facings := []struct {
		of   pieces.Piece
		name string
	}{{*m.Front, name + " front"}, {*m.Back, name + " back"}}
	usual := o.FinishedDepth()
	for _, f := range facings {
		c, err := closed(f.of, seams.Armhole, f.name)
		if err != nil {
			return Block{}, err
		}
		usual = min(usual, c.room())
	}
	for _, f := range facings {
		if err := block.face(f.of, seams.Armhole, f.name, usual, o); err != nil {
			return Block{}, err
		}
	}
	front, back := block.Pieces[0], block.Pieces[1]
	for _, end := range []seams.Name{seams.Shoulder, seams.SideSeam} {
		block.Pairings = append(block.Pairings,
			construct.Equal("facing "+end.String(), front.Name, construct.SeamLength(front, end), back.Name,
				construct.SeamLength(back, end)))
	}
	return block, nil
}

// anyFacing draws a facing for the edge of any piece.
func anyFacing(m Measures, o Options, _ string) (Block, error) {
	name := o.Name
	if name == "" {
		name = o.Of + " " + o.FacedEdge.String() + " facing"
	}
	if o.Of == "" || o.FacedEdge == seams.None {
		return Block{}, construct.About(subject.Of, subject.Edge).Refuse(
			"facing: name the piece that it is of and the edge that it faces, such as of: front "+
				"skirt, edge: waist",
			"Beleg: nennen Sie das Teil und die Kante, die er belegt, etwa Rock vorn, Taille")
	}
	var block Block
	for _, piece := range m.Pieces {
		if piece.Name == o.Of {
			return block, block.face(piece, o.FacedEdge, name, o.FinishedDepth(), o)
		}
	}
	names := make([]string, len(m.Pieces))
	for i, piece := range m.Pieces {
		names[i] = piece.Name
	}
	return Block{}, construct.About(subject.Of).Refuse("%s: there is no piece %q; the pieces drafted before it are: %s",
		"%s: ein Teil %q gibt es nicht; vorher gezeichnet sind: %s",
		called(name), o.Of, strings.Join(names, ", "))
}

// face adds the facing of one edge, of the usual depth if none is asked for. The
// ends of the facing run along the edges beside it; where they are shorter than
// the usual depth, it is less deep.
func (b *Block) face(of pieces.Piece, edge seams.Name, name string, usual float64, o Options) error {
	c, err := closed(of, edge, name)
	if err != nil {
		return err
	}
	depth, room := o.Depth, c.room()
	switch {
	case depth == 0:
		depth = min(usual, room)
	case depth > room:
		return construct.About(subject.Depth).Refuse("%s: a depth of %s is more than the %s and the %s have room for "+
			"beside the %s; ask for %s or less",
			"%s: für eine Höhe von %s haben %s und %s neben %s keinen Platz; verlangen Sie %s oder "+
				"weniger", called(name), construct.Length(depth), c.before.Name.Seam(),
			c.after.Name.Seam(), edge, construct.AtMost(room))
	}
	b.Pieces = append(b.Pieces, c.facing(of, name, depth))
	b.Pairings = append(b.Pairings, construct.Equal("facing to "+edge.String(), name,
		construct.SeamLength(b.Pieces[len(b.Pieces)-1], edge), of.Name, construct.SeamLength(of, edge)))
	s := construct.Sheet{Piece: name}
	s.Draw("trace the "+edge.String()+" of the "+of.Name+", its darts closed, and {} of the edges on either side",
		"the depth", depth)
	s.Draw("mark {} from the "+edge.String()+" at both ends and at several places between, square to it, and draw "+
		"the outer edge through the marks", "", depth)
	b.Sheets = append(b.Sheets, s)
	return nil
}

// facing is the stretch along the seam, so deep.
func (c closedSeam) facing(of pieces.Piece, name string, depth float64) pieces.Piece {
	before := construct.Stretch(c.before.Path, c.before.Path.Length()-depth, c.before.Path.Length())
	after := construct.Stretch(c.after.Path, 0, depth)
	chain := make([]pieces.Path, len(c.edges))
	for i, edge := range c.edges {
		chain[i] = edge.Path
	}
	// The piece lies to the left of its edges.
	marks := construct.RimPoints(-depth, chain)
	marks[0], marks[len(marks)-1] = before.Start(), after.End()
	outer := construct.ThroughRim(marks, chain).Reverse()
	piece := pieces.Piece{Name: name, Kind: pieces.Facing, Cut: of.Cut, Pair: of.Pair, Fold: c.fold, Notches: c.notches}
	if of.Fold != seams.None && c.fold == seams.None {
		// Away from the fold it is one of two.
		piece.Cut, piece.Pair = 2*of.Cut, true
	}
	piece.Edges = append(piece.Edges, construct.Edge(seams.FacingEdge, outer), construct.Edge(c.before.Name, before))
	piece.Edges = append(piece.Edges, c.edges...)
	piece.Edges = append(piece.Edges, construct.Edge(c.after.Name, after))
	middle := chain[len(chain)/2]
	at := construct.Beside(middle, middle.Length()/2, -depth/2)
	piece.Grain = pieces.Grain{From: orb.Point{at[0], at[1] - depth/4}, To: orb.Point{at[0], at[1] + depth/4}}
	return piece
}
