package part

import (
	"math"
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
		return Block{}, construct.About(subject.Kind).Refuse("%s: there is no armhole to face: draft a bodice", name)
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
		block.Pairings = append(block.Pairings, construct.Equal("facing "+end.String(), front.Name, construct.SeamLength(front, end), back.Name, construct.SeamLength(back, end)))
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
			"facing: name the piece that it is of and the edge that it faces, such as of: front " +
				"skirt, edge: waist")
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
		name, o.Of, strings.Join(names, ", "))
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
			"beside the %s; ask for %s or less", name, construct.Length(depth), c.before.Name.Seam(), c.after.Name.Seam(), edge, construct.AtMost(room))
	}
	b.Pieces = append(b.Pieces, c.facing(of, name, depth))
	b.Pairings = append(b.Pairings, construct.Equal("facing to "+edge.String(), name, construct.SeamLength(b.Pieces[len(b.Pieces)-1], edge), of.Name, construct.SeamLength(of, edge)))
	s := construct.Sheet{Piece: name}
	s.Draw("trace the "+edge.String()+" of the "+of.Name+", its darts closed, and {} of the edges on either side", "the depth", depth)
	s.Draw("mark {} from the "+edge.String()+" at both ends and at several places between, square to it, and draw the outer edge through the marks", "", depth)
	b.Sheets = append(b.Sheets, s)
	return nil
}

// closedSeam is a seam of a piece with its darts closed, and the edges beside
// it, moved with it.
type closedSeam struct {
	seam          seams.Name
	edges         []pieces.Edge
	before, after pieces.Edge
	fold          seams.Name
	notches       []pieces.Notch
}

// closed closes the darts of a seam: what lies beyond each is turned about its
// point until the legs meet.
func closed(of pieces.Piece, seam seams.Name, name string) (closedSeam, error) {
	first, count := stretchOf(of, seam)
	if count == 0 {
		return closedSeam{}, construct.About(subject.Edge).Refuse("%s: the %s has no edge %q; its edges are: %s", name,
			of.Name, seam, seams.List(construct.Seams(of)))
	}
	return closedRun(of, seam, first, count), nil
}

// Closed is a seam of a piece as one path, its darts closed; empty where the
// piece has none of the name.
func Closed(of pieces.Piece, seam seams.Name) pieces.Path {
	first, count := stretchOf(of, seam)
	var path pieces.Path
	for _, edge := range closedRun(of, seam, first, count).edges {
		path = append(path, edge.Path...)
	}
	return path
}

// closedRun closes the darts of so many edges from the first on.
func closedRun(of pieces.Piece, seam seams.Name, first, count int) closedSeam {
	all := len(of.Edges)
	c := closedSeam{seam: seam, before: of.Edges[(first+all-1)%all]}
	motion := pieces.Identity()
	for i := range count {
		edge := of.Edges[(first+i)%all]
		if dart, ok := dartAt(of, edge.Name); ok {
			// Turned first, then moved as everything before it was.
			motion = closing(dart).Then(motion)
			continue
		}
		edge.Path = edge.Path.Map(motion)
		c.edges = append(c.edges, edge)
		for _, n := range of.Notches {
			if n.Edge == edge.Name {
				c.notches = append(c.notches, n)
			}
		}
	}
	c.after = of.Edges[(first+count)%all]
	c.after.Path = c.after.Path.Map(motion)
	switch of.Fold {
	case c.before.Name:
		c.fold = of.Fold
	case c.after.Name:
		// The fold stays upright; the rest is turned to it.
		c.fold = of.Fold
		c = c.moved(inverse(of.Edges[(first+count)%all].Path, c.after.Path))
	}
	return c
}

// inverse is the motion that takes a moved path back to where it was.
func inverse(was, moved pieces.Path) pieces.Motion {
	a, b := was.Tangent(0), moved.Tangent(0)
	angle := (math.Atan2(a[1], a[0]) - math.Atan2(b[1], b[0])) * 180 / math.Pi
	from, to := moved.Start(), was.Start()
	return pieces.Move(-from[0], -from[1]).Then(pieces.Turn(angle)).Then(pieces.Move(to[0], to[1]))
}

func (c closedSeam) moved(m pieces.Motion) closedSeam {
	c.before.Path, c.after.Path = c.before.Path.Map(m), c.after.Path.Map(m)
	for i := range c.edges {
		c.edges[i].Path = c.edges[i].Path.Map(m)
	}
	return c
}

// closing is the motion that lays the second leg of a dart on the first.
func closing(d pieces.Dart) pieces.Motion {
	a, b := construct.Direction(d.Apex, d.Start), construct.Direction(d.Apex, d.End)
	return construct.Turning(d.Apex, (math.Atan2(a[1], a[0])-math.Atan2(b[1], b[0]))*180/math.Pi)
}

func dartAt(of pieces.Piece, mouth seams.Name) (pieces.Dart, bool) {
	for _, d := range of.Darts {
		if d.Mouth == mouth {
			return d, true
		}
	}
	return pieces.Dart{}, false
}

// stretchOf is where the edges of a seam begin and how many they are, the
// mouths of its darts among them.
func stretchOf(of pieces.Piece, seam seams.Name) (first, count int) {
	for i, edge := range of.Edges {
		if edge.Name.Seam() != seam {
			continue
		}
		if count == 0 {
			first = i
		}
		count = i - first + 1
	}
	return first, count
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
