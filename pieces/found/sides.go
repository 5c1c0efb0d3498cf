package found

import "ellwand/pieces"

// What a piece is called of which more are cut one way round than the other: as it is
// drawn it is the left one, its mirror image the right one [source.D6673].
const (
	leftOne  = " left"
	rightOne = " right"
)

// Sides parts a piece of which more are cut one way round than the other: into the left
// ones, as it is drawn, and the right ones, which are drawn mirrored beside them; where
// all are mirrored it is drawn so. Any other piece is returned as it is. Every note is
// about a piece by its place in the list, from 1.
func (p Piece) Sides() ([]Piece, []Note) {
	left, right := p.AsDrawn, p.Mirrored
	if right == 0 || left == right || len(p.Outline) == 0 {
		return []Piece{p}, nil
	}
	image := p.image()
	image.AsDrawn, image.Mirrored = right, 0
	if left == 0 {
		return []Piece{image}, []Note{{Kind: RightOnes, Piece: 1, Count: right}}
	}
	p.Mirrored = 0
	p.Name, image.Name = p.Name+leftOne, p.Name+rightOne
	return []Piece{p, image}, []Note{{Kind: LeftOnes, Piece: 1, Count: left}, {Kind: RightOnes, Piece: 2, Count: right}}
}

// image of a piece about an upright line at its right, with all that lies in it.
func (p Piece) image() Piece {
	const beside = 10 // mm from its right end to the line [source.OwnChoice]
	x := ring(pathOf(p.Outline)).Bound().Max[0] + beside
	by := pieces.MirrorX().Then(pieces.Move(2*x, 0))
	out := p
	out.Outline = reversed(p.Outline)
	for i := range out.Outline {
		out.Outline[i].Curve = out.Outline[i].Map(by)
	}
	if p.Sew != nil {
		out.Sew = p.Sew.Map(by).Reverse()
	}
	out.Mirror, out.OpenSide, out.Grain = p.Mirror.mapped(by), p.OpenSide.mapped(by), p.Grain.mapped(by)
	out.Notches, out.Inner, out.Texts = nil, nil, nil
	for _, n := range p.Notches {
		n.At = by.Apply(n.At)
		out.Notches = append(out.Notches, n)
	}
	for _, in := range p.Inner {
		in.Path, in.At = in.Path.Map(by), by.Apply(in.At)
		out.Inner = append(out.Inner, in)
	}
	for _, text := range p.Texts {
		text.At = by.Apply(text.At)
		out.Texts = append(out.Texts, text)
	}
	return out
}

// mapped line; nil stays nil.
func (s *Straight) mapped(by pieces.Motion) *Straight {
	if s == nil {
		return nil
	}
	return &Straight{From: by.Apply(s.From), To: by.Apply(s.To)}
}
