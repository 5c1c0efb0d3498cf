// Package lining derives linings and interfacings from the pieces of the
// shell. Lengths are millimetres.
package lining

import (
	"math"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/planar"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
	"ellwand/pieces/source"
)

// Options of a lining.
type Options struct {
	// Shorter is how much shorter than the shell it ends at every hem; 20 mm is
	// usual ([source.CommonPractice]: 1.5 to 2.5 cm).
	Shorter float64
	// BackPleat is how far it is wider at the centre back, for a pleat of ease;
	// 0 for none, 20 mm is usual [source.CommonPractice]. It lies on each half.
	BackPleat float64
}

// Lining is a lining as derived.
type Lining struct {
	Piece pieces.Piece
	// Sheet is its draft by hand.
	Sheet construct.Sheet
	// Pairing sets the seam that differs most from the shell's against it.
	Pairing construct.Pairing
}

// Of derives the lining of a piece of the shell, before its allowances. A facing
// that is grown on is left out: the lining ends where it does. So are a vent and
// the extension of a fly, where the seam of the lining is left open, and the
// casing of an elastic waist. The error is a
// sentence that names what cannot be.
func Of(shell pieces.Piece, o Options) (Lining, error) {
	switch {
	case o.Shorter < 0:
		return Lining{}, construct.About(subject.Shorter).Refuse("lining: it is %s shorter than the shell; that "+
			"cannot be negative", "Futter: es ist %s kürzer als der Oberstoff; das kann nicht negativ sein",
			construct.Length(o.Shorter))
	case o.BackPleat < 0 || o.BackPleat > 100:
		return Lining{}, construct.About(subject.BackPleat).Refuse("lining: a back pleat of %s cannot be; ask for %s "+
			"to %s", "Futter: eine Rückenfalte von %s geht nicht; verlangen Sie %s bis %s",
			construct.Length(o.BackPleat), construct.Length(10), construct.AtMost(100))
	}
	d := deriving{piece: shell, more: map[seams.Name]float64{}}
	d.piece.Name, d.piece.Role, d.piece.Kind = shell.Name+" lining", role.None, pieces.Lining
	d.piece.Edges = append([]pieces.Edge{}, shell.Edges...)
	d.piece.Notches = append([]pieces.Notch{}, shell.Notches...)
	d.cutFacing()
	d.cutVent()
	d.cutFly()
	d.cutCasing()
	if err := d.addPleat(o.BackPleat); err != nil {
		return Lining{}, err
	}
	if err := d.shorten(o.Shorter); err != nil {
		return Lining{}, err
	}
	d.keepInside()
	return Lining{Piece: d.piece, Pairing: d.against(shell), Sheet: d.sheet(shell, o)}, nil
}

// sheet is the draft by hand: what is traced, and what is changed.
func (d *deriving) sheet(shell pieces.Piece, o Options) construct.Sheet {
	s := construct.Sheet{Piece: d.piece.Name}
	s.Draw("trace the "+shell.Name+", its darts and notches", "")
	if _, grown := shell.Edge(seams.ExtensionNeck); grown {
		s.Draw("leave out the extension and the facing, and what the facing covers when it is folded back",
			"the lining is sewn to the edge of the facing")
	}
	if _, vented := shell.Edge(seams.VentTop); vented {
		s.Draw("leave out the vent: draw the centre back straight down to the hem, notch it where the vent begins, "+
			"and leave its seam open from there down", "so that the lining does not pull at the vent; its edges are "+
			"hemmed, or sewn to those of the vent")
	}
	if _, fly := shell.Edge(seams.FlyEdge); fly {
		s.Draw("leave out the fly extension: go down the centre front, notch it where the fly ends, and leave its "+
			"seam open above", "the lining is sewn to the fly")
	}
	if _, cased := shell.Edge(seams.CasingEdge); cased {
		s.Draw("leave out the casing: the lining ends at the fold line", "it is caught in the casing")
	}
	if o.BackPleat > 0 && d.index(seams.CentreBack) >= 0 {
		s.Draw("draw the centre back {} further out, and lengthen the edges beside it to meet it",
			"the pleat of ease",
			o.BackPleat)
	}
	if d.index(seams.NarrowHem) >= 0 {
		s.Draw("draw the hem {} higher", "so that it does not show below the shell", o.Shorter)
	}
	return s
}

// addPleat widens the piece beyond its centre back line, if it has one.
func (d *deriving) addPleat(by float64) error {
	i := d.index(seams.CentreBack)
	if by == 0 || i < 0 {
		return nil
	}
	edges := d.piece.Edges
	before, after := (i+len(edges)-1)%len(edges), (i+1)%len(edges)
	out := construct.Back(construct.Square(edges[i].Path.Tangent(0)))
	const square = 0.01 // as a difference of unit directions [source.OwnChoice]
	into, from := edges[before].Path, edges[after].Path
	if len(edges[i].Path) != 1 || construct.Distance(into.Tangent(into.Length()), out) > square ||
		construct.Distance(from.Tangent(0), construct.Back(out)) > square {
		return construct.About(subject.BackPleat).Refuse("%s: its edges do not meet the centre back squarely, so that "+
			"no pleat can be laid there; leave the back pleat out for it",
			"%s: die Kanten treffen die hintere Mitte nicht rechtwinklig, dort lässt sich keine Falte "+
				"legen; lassen Sie die Rückenfalte weg", d.piece.Name)
	}
	edges[i].Path = edges[i].Path.Map(pieces.Move(out[0]*by, out[1]*by))
	edges[before].Path = construct.Join(edges[before].Path,
		construct.Line(edges[before].Path.End(), edges[i].Path.Start()))
	edges[after].Path = construct.Join(construct.Line(edges[i].Path.End(), edges[after].Path.Start()),
		edges[after].Path)
	d.moveNotches(edges[after].Name, by)
	d.more[edges[before].Name.Seam()] += by
	d.more[edges[after].Name.Seam()] += by
	return nil
}

// shorten takes the hems up: the edges beside each are cut short by so much, and
// the hem is drawn as far within the old one.
func (d *deriving) shorten(by float64) error {
	hems := 0
	for i, hem := range d.piece.Edges {
		if !hem.Hem {
			continue
		}
		edges := d.piece.Edges
		before, after := (i+len(edges)-1)%len(edges), (i+1)%len(edges)
		if by > 0 {
			if short := min(edges[before].Path.Length(), edges[after].Path.Length()); by > short-10 {
				return construct.About(subject.Shorter).Refuse("%s: %s shorter is more than its shortest edge beside "+
					"the "+
					"hem, %s, has room for",
					"%s: %s kürzer ist mehr, als die kürzeste Kante neben dem Saum (%s) hergibt",
					d.piece.Name, construct.Length(by), construct.Length(short))
			}
			edges[before].Path = construct.Stretch(edges[before].Path, 0, edges[before].Path.Length()-by)
			edges[after].Path = construct.Stretch(edges[after].Path, by, edges[after].Path.Length())
			edges[i].Path = within(hem.Path, by, edges[before].Path.End(), edges[after].Path.Start())
			d.moveNotches(edges[after].Name, -by)
			d.more[edges[before].Name.Seam()] -= by
			d.more[edges[after].Name.Seam()] -= by
		}
		hems++
		d.rename(i, hems)
	}
	return nil
}

// rename makes an edge a narrow hem: a lining's is turned up less.
func (d *deriving) rename(i, number int) {
	was := d.piece.Edges[i].Name
	var name seams.Name = seams.NarrowHem
	if number > 1 {
		name = seams.OtherNarrowHem
	}
	d.piece.Edges[i].Name = name
	for k := range d.piece.Notches {
		if d.piece.Notches[k].Edge == was {
			d.piece.Notches[k].Edge = name
		}
	}
}

// within is the line at a distance inside a hem, between two ends.
func within(hem pieces.Path, by float64, from, to orb.Point) pieces.Path {
	if _, straight := hem[0].(pieces.Line); straight && len(hem) == 1 {
		return construct.Line(from, to)
	}
	chain := []pieces.Path{hem}
	marks := construct.RimPoints(-by, chain)
	marks[0], marks[len(marks)-1] = from, to
	return construct.ThroughRim(marks, chain)
}

// keepInside leaves out the notches and marks that the lining does not reach.
func (d *deriving) keepInside() {
	ring := d.piece.SeamOutline(0.1)
	var marks []pieces.Mark
	for _, m := range d.piece.Marks {
		if m.Path == nil || (near(ring, m.Path.Start()) && near(ring, m.Path.End())) {
			marks = append(marks, m)
		}
	}
	var notches []pieces.Notch
	for _, n := range d.piece.Notches {
		if edge, ok := d.piece.Edge(n.Edge); ok && n.At >= 0 && n.At <= edge.Path.Length() {
			notches = append(notches, n)
		}
	}
	d.piece.Marks, d.piece.Notches = marks, notches
}

func near(ring orb.Ring, p orb.Point) bool {
	return planar.RingContains(ring, p) || planar.DistanceFrom(ring, p) < 0.5
}

// against sets the lining against the shell, seam by seam, and gives the seam
// that differs most, what was changed on purpose left out.
func (d *deriving) against(shell pieces.Piece) construct.Pairing {
	var worst construct.Pairing
	most := -1.0
	for _, seam := range construct.Seams(d.piece) {
		if i := d.index(seam); i >= 0 && d.piece.Edges[i].Hem {
			continue
		}
		was := construct.SeamLength(shell, seam)
		is := construct.SeamLength(d.piece, seam) - d.more[seam]
		if off := math.Abs(is - was); was > 0 && off > most+1e-6 {
			most = off
			worst = construct.Equal("lining to shell", d.piece.Name+", "+seam.String(), is, shell.Name, was)
			worst.Normal = construct.Say(
				"equal on every seam but for what it is shorter or wider on purpose; the one that differs most is "+
					"shown (%s)",
				source.CommonPractice)
		}
	}
	return worst
}
