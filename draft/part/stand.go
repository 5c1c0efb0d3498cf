package part

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// Figures of standing collars, in mm [source.CommonPractice].
const (
	usualStand   = 30
	standRise    = 12   // how far a stand rises from the shoulder to the opening: 1 to 1.5 cm
	fallDrop     = 2    // how many times that the fall drops there
	fallCovers   = 8    // how much deeper than the stand a fall is, to hide its seam: 0.5 to 1 cm
	fallPoint    = 0.35 // how far the point stands out, for each mm of depth
	mandarinEnd  = 0.5  // the rounded share of a mandarin collar's end
	standLeast   = 15
	standMost    = 60
	mandarinRise = 15
)

// bandRim is the path along a band from its fold: straight for the first part
// of the neck, then bent evenly, rising by so much over the second (falling,
// if negative). Its length is that of both (geometry: of an arc of length l
// and sweep a the ends differ in height by about l a/2).
func bandRim(first, second, rise float64) pieces.Path {
	sweep := 2 * rise / second
	radius := second / math.Abs(sweep)
	arc := pieces.Arc{Centre: orb.Point{first, math.Copysign(radius, rise)}, Radius: radius,
		Begin: -math.Copysign(math.Pi/2, rise), Sweep: sweep}
	return construct.Join(construct.Line(orb.Point{0, 0}, orb.Point{first, 0}), pieces.Path{arc})
}

// inward is the rim at a distance within a band that rises.
func inward(rim pieces.Path, by float64) pieces.Path {
	line, arc := rim[0].(pieces.Line), rim[1].(pieces.Arc)
	arc.Radius -= by
	return construct.Join(construct.Line(orb.Point{0, by}, orb.Point{line.To[0], by}), pieces.Path{arc})
}

// shirtCollar is a stand that carries the button extension, and a fall that is
// joined to its upper edge from opening to opening.
func shirtCollar(m Measures, o Options, name string) (Block, error) {
	n, err := neckOf(m, name)
	if err != nil {
		return Block{}, err
	}
	deep, fall := o.Stand, o.FinishedDepth()
	if deep == 0 {
		deep = usualStand
	}
	switch {
	case deep < standLeast || deep > standMost:
		return Block{}, construct.About(subject.Stand).Refuse("%s: a stand of %s cannot be worn; ask for %s to %s, %s "+
			"is usual", "%s: ein Steg von %s ist nicht zu tragen; verlangen Sie %s bis %s, üblich sind %s",
			called(name), construct.Length(deep), construct.AtLeast(standLeast), construct.AtMost(standMost),
			construct.Length(usualStand))
	case fall < deep+fallCovers:
		return Block{}, construct.About(subject.Depth, subject.Stand).Refuse(
			"%s: a depth of %s does not cover the seam of a stand of %s; ask for %s or more",
			"%s: eine Höhe von %s deckt die Naht eines Stegs von %s nicht; verlangen Sie %s oder mehr",
			called(name),
			construct.Length(fall), construct.Length(deep), construct.AtLeast(deep+fallCovers))
	}
	stand := n.stand(name+" stand", deep)
	top, _ := stand.Edge(seams.UpperCollarEdge)
	collar := n.fallOf(name+" fall", top.Path.Length()-n.first, fall)
	pairings := []construct.Pairing{
		n.matched(stand),
		construct.Equal("collar to stand", collar.Name, 2*construct.SeamLength(collar, seams.LowerCollarEdge),
			stand.Name, 2*top.Path.Length()),
	}
	if n.extension > 0 {
		pairings = append(pairings, construct.Equal("stand to opening", stand.Name+", with its extension",
			construct.SeamLength(stand, seams.Neck)+construct.SeamLength(stand, seams.ExtensionNeck),
			"half the neck, with the extension", n.half()+n.extension))
	}
	return Block{
		Pieces: []pieces.Piece{stand, collar}, Pairings: pairings,
		Sheets: []construct.Sheet{n.standSheet(stand.Name, deep, standRise), n.fallSheet(collar, fall)},
	}, nil
}

// stand draws half a stand: the neck edge below, the end rounded over the
// extension, or straight where the bodice has none.
func (n halfNeck) stand(name string, deep float64) pieces.Piece {
	rim := bandRim(n.first, n.second, standRise)
	top := inward(rim, deep)
	on := rim.Tangent(rim.Length())
	edges := []pieces.Edge{construct.Edge(seams.Neck, rim)}
	if n.extension > 0 {
		tip := construct.Go(rim.End(), on, n.extension)
		edges = append(edges,
			construct.Edge(seams.ExtensionNeck, construct.Line(rim.End(), tip)),
			construct.Edge(seams.FrontCollarEdge,
				construct.Curve(tip, construct.Square(on), 0.45, top.End(), construct.Back(on), 0.4)))
	} else {
		edges = append(edges, construct.Edge(seams.FrontCollarEdge, construct.Line(rim.End(), top.End())))
	}
	piece := n.folded(name, deep, append(edges,
		construct.Edge(seams.UpperCollarEdge, top.Reverse()),
		construct.Edge(n.centre, construct.Line(top.Start(), rim.Start()))))
	piece.Notches = append(piece.Notches,
		pieces.Notch{Edge: seams.Neck, At: n.first + n.second, Count: 1, Match: marks.OfCentre(n.opening)},
		pieces.Notch{Edge: seams.UpperCollarEdge, At: top.Length() - n.first, Count: 1, Match: marks.CollarShoulder})
	return piece
}

// fallOf draws half a fall: its lower edge as long as the stand's upper one.
func (n halfNeck) fallOf(name string, second, depth float64) pieces.Piece {
	rim := bandRim(n.first, second, -fallDrop*standRise)
	on := rim.Tangent(rim.Length())
	point := construct.Go(construct.Go(rim.End(), construct.Square(on), depth), on, fallPoint*depth)
	outer := construct.Curve(orb.Point{0, depth}, orb.Point{1, 0}, 0.45, point, on, 0.3).Reverse()
	piece := n.folded(name, depth, []pieces.Edge{
		construct.Edge(seams.LowerCollarEdge, rim),
		construct.Edge(seams.FrontCollarEdge, construct.Line(rim.End(), point)),
		construct.Edge(seams.OuterCollarEdge, outer),
		construct.Edge(n.centre, construct.Line(orb.Point{0, depth}, rim.Start())),
	})
	piece.Notches[0] = pieces.Notch{Edge: seams.LowerCollarEdge, At: n.first, Count: 1, Match: marks.CollarShoulder}
	return piece
}

// folded is half a collar, two cut on the fold, with a notch where the
// shoulder seam meets its neck edge.
func (n halfNeck) folded(name string, depth float64, edges []pieces.Edge) pieces.Piece {
	x := n.first / 3
	return pieces.Piece{
		Name: name, Cut: 2, Fold: n.centre, Edges: edges,
		Grain:   pieces.Grain{From: orb.Point{x, float64(0.2 * depth)}, To: orb.Point{x, float64(0.8 * depth)}},
		Notches: []pieces.Notch{{Edge: seams.Neck, At: n.first, Count: 1, Match: marks.Shoulder}},
	}
}

// mandarinCollar is a band whose rounded ends meet at the opening.
func mandarinCollar(m Measures, o Options, name string) (Block, error) {
	n, err := neckOf(m, name)
	if err != nil {
		return Block{}, err
	}
	depth := o.FinishedDepth()
	if depth < 15 || depth > standMost {
		return Block{}, construct.About(subject.Depth).Refuse("%s: a depth of %s cannot be worn; ask for %s to %s, %s "+
			"is usual", "%s: eine Höhe von %s ist nicht zu tragen; verlangen Sie %s bis %s, üblich sind %s",
			called(name), construct.Length(depth), construct.AtLeast(standLeast), construct.AtMost(standMost),
			construct.Length(35))
	}
	rim := bandRim(n.first, n.second, mandarinRise)
	top := inward(rim, depth)
	round := mandarinEnd * depth
	low := construct.Toward(rim.End(), top.End(), depth-round)
	up := construct.Direction(rim.End(), top.End())
	top = construct.Stretch(top, 0, top.Length()-round)
	end := construct.Join(construct.Line(rim.End(), low),
		construct.Curve(low, up, 0.4, top.End(), construct.Back(top.Tangent(top.Length())), 0.4))
	piece := n.folded(name, depth, []pieces.Edge{
		construct.Edge(seams.Neck, rim),
		construct.Edge(seams.FrontCollarEdge, end),
		construct.Edge(seams.OuterCollarEdge, top.Reverse()),
		construct.Edge(n.centre, construct.Line(top.Start(), rim.Start())),
	})
	sheet := n.standSheet(name, depth, mandarinRise)
	sheet.Draw("round the upper corner off, beginning {} before it on either side", "half the depth", round)
	return Block{Pieces: []pieces.Piece{piece}, Sheets: []construct.Sheet{sheet},
		Pairings: []construct.Pairing{n.matched(piece)}}, nil
}

// standSheet is the draft of a band by hand.
func (n halfNeck) standSheet(name string, depth, rise float64) construct.Sheet {
	s := construct.Sheet{Piece: name}
	rim := bandRim(n.first, n.second, rise)
	top := inward(rim, depth)
	fold := s.Start(0, 0, "the "+n.centre.String())
	shoulder := s.Right(fold, n.first, "the shoulder: the neck of the "+n.fold.Name)
	end := s.Offset(shoulder, rim.End(), "the "+n.opening.String())
	s.Draw("draw the neck edge "+construct.Numbers(fold, shoulder, end)+", straight to "+construct.Numbers(shoulder)+
		" and then in an even curve {} long", "the neck of the "+n.open.Name, n.second)
	up := s.Up(fold, depth, "the depth")
	over := s.Up(shoulder, depth, "the depth")
	last := s.Offset(end, top.End(), "the depth, square to the neck edge")
	s.Draw("draw the upper edge "+construct.Numbers(up, over, last)+", {} from the neck edge everywhere", "", depth)
	if n.extension > 0 && rise == standRise {
		s.Draw("lengthen the neck edge beyond "+construct.Numbers(end)+" by {}, and round the end from there up to "+
			construct.Numbers(last), "the extension of the "+n.open.Name, n.extension)
	}
	return s
}

// fallSheet is the draft of a fall by hand.
func (n halfNeck) fallSheet(piece pieces.Piece, depth float64) construct.Sheet {
	s := construct.Sheet{Piece: piece.Name}
	lower, front := piece.Edges[0].Path, piece.Edges[1].Path
	fold := s.Start(0, 0, "the "+n.centre.String())
	shoulder := s.Right(fold, n.first, "the shoulder: the neck of the "+n.fold.Name)
	end := s.Offset(shoulder, lower.End(), "the "+n.opening.String()+", lower by twice the rise of the stand")
	s.Draw("draw the lower edge "+construct.Numbers(fold, shoulder, end)+", straight to "+construct.Numbers(shoulder)+
		" and then in an even curve, {} long in all", "the upper edge of the stand", lower.Length())
	up := s.Up(fold, depth, "the depth")
	point := s.Offset(end, front.End(), "the point: the depth square to the lower edge, and 35 parts in 100 of it "+
		"outward")
	s.Draw("draw the outer edge "+construct.Numbers(up, point), "square to the "+n.centre.String())
	return s
}
