package skirt

import (
	"fmt"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

const (
	// usualGores is how many there are unless asked for otherwise
	// [source.CommonPractice].
	usualGores = 6
	// mostGoreTaper is how far a gore's side may come in above the hip, for
	// every mm of the waist to hip [source.OwnChoice].
	mostGoreTaper = 0.4
)

// gored drafts a skirt of equal gores, each symmetrical about its middle.
func (f figures) gored() (Block, error) {
	if f.Gores == 0 {
		f.Gores = usualGores
	}
	if !slices.Contains([]int{4, 6, 8}, f.Gores) {
		return Block{}, construct.About(subject.Gores).Refuse("skirt: %d gores; ask for 4, 6 or 8",
			"Rock: %d Bahnen; verlangen Sie 4, 6 oder 8", f.Gores)
	}
	if err := f.checkFlare(); err != nil {
		return Block{}, err
	}
	round := float64(2 * f.Gores)
	width := max(f.hip, f.waist) / round
	taper := width - f.waist/round
	if least := float64(f.slant() * f.WaistToHip); taper < least {
		width, taper = width+least-taper, least
	}
	taper = f.fitGore(width, taper)
	if taper > mostGoreTaper*f.WaistToHip {
		return Block{}, construct.About(subject.WaistGirth, subject.HipGirth).Refuse(
			"skirt: the waist girth of %s is too small for the hip girth of %s in %d gores; ask "+
				"for %s, or measure both again",
			"Rock: der Taillenumfang von %s ist zu klein für den Hüftumfang von %s in %d Bahnen; "+
				"verlangen Sie %s, oder messen Sie beide noch einmal",
			construct.Length(f.Waist), construct.Length(f.Hip), f.Gores, moreGores(f.Gores))
	}
	sheet := construct.Sheet{Piece: role.Gore.String()}
	piece := f.gore(&sheet, width, taper)
	waist := construct.SeamLength(piece, seams.Waist) * float64(f.Gores)
	b := Block{
		Pieces: []pieces.Piece{piece}, Sheets: []construct.Sheet{sheet},
		Waist: waist, Hip: float64(width * round), Hem: construct.SeamLength(piece, seams.SkirtHem) * float64(f.Gores),
	}
	b.Pairings = []construct.Pairing{
		construct.Equal("side", "right side of a gore", construct.SeamLength(piece, seams.RightSide),
			"left side of the next", construct.SeamLength(piece, seams.LeftSide)),
		waistPairing("waist seam of all gores", waist, f),
		f.hipPairing(b.Hip),
	}
	return b, nil
}

func moreGores(gores int) string {
	if gores < 8 {
		return fmt.Sprintf("%d gores", gores+2)
	}
	return "a gathered or a circle skirt"
}

// fitGore finds the taper at which the waists of all gores make the waist.
func (f figures) fitGore(width, taper float64) float64 {
	return construct.Settle(taper, func(taper float64) float64 {
		return f.goreWaist(f.goreSide(width, taper)).Length() - f.waist/float64(f.Gores)
	})
}

// goreSide is the right side of a gore, from the hem up. Its upper end is
// raised as far as lets the waist be square to it.
func (f figures) goreSide(width, taper float64) pieces.Path {
	foot, hip, up := f.belowHip(width)
	upper := sideSeam(hip, up, taper, f.WaistToHip)
	for range 4 {
		top := upper[0].Tangent(1)
		rise := f.WaistToHip + float64((width-taper)*portable.Tan(portable.Atan2(-top[0], top[1])/2))
		upper = sideSeam(hip, up, taper, rise)
	}
	return construct.Join(construct.Line(foot, hip), upper)
}

// goreWaist is the waist from the right side to the left.
func (f figures) goreWaist(side pieces.Path) pieces.Path {
	from := construct.Square(side[len(side)-1].Tangent(1))
	right := construct.Curve(side.End(), from, 0.36, orb.Point{0, 0}, orb.Point{-1, 0}, 0.36)
	return construct.Join(right, right.Map(pieces.MirrorX()).Reverse())
}

func (f figures) gore(s *construct.Sheet, width, taper float64) pieces.Piece {
	side := f.goreSide(width, taper)
	below := orb.Point{0, -f.Length}
	hem := construct.Curve(below, orb.Point{1, 0}, 0.36, side.Start(),
		construct.Back(construct.Square(side[0].Tangent(0))), 0.36)
	left := side.Map(pieces.MirrorX()).Reverse()
	piece := pieces.Piece{
		Name: role.Gore.String(), Role: role.Gore, Cut: f.Gores,
		Edges: []pieces.Edge{
			{Name: seams.SkirtHem, Path: construct.Join(hem.Map(pieces.MirrorX()).Reverse(), hem), Hem: true},
			construct.Edge(seams.RightSide, side),
			construct.Edge(seams.Waist, f.goreWaist(side)),
			construct.Edge(seams.LeftSide, left),
		},
		Grain: upright(0, -f.Length, 0),
		Notches: []pieces.Notch{
			{Edge: seams.RightSide, At: side[0].Length(), Count: 1, Match: marks.Hip},
			{Edge: seams.LeftSide, At: left.Length() - side[0].Length(), Count: 1, Match: marks.Hip},
		},
		Marks: []pieces.Mark{{Name: marks.HipLine,
			Path: construct.Line(orb.Point{-width, -f.WaistToHip}, orb.Point{width, -f.WaistToHip})}},
	}
	waist := s.Start(0, 0, "the middle of the gore at the waist")
	hip := s.Down(waist, f.WaistToHip, "the hip line: waist to hip")
	low := s.Down(waist, f.Length, "the hem: the length")
	edge := s.Right(hip, width, "half a gore on the hip line: hip girth and ease over twice the number of gores; "+
		"more where the waist or the flare needs it")
	across := s.Right(waist, side.End()[0], "half a gore at the waist")
	top := s.Up(across, side.End()[1], "raised, to keep the waist square to the side")
	level := s.Right(low, side.Start()[0], "half a gore at the hem: the hip line and the flare")
	foot := s.Up(level, side.Start()[1]+f.Length, "raised, so that the side is as long below the hip as the middle")
	s.Draw("draw the side "+construct.Numbers(foot, edge, top), "straight to the hip, then curving in")
	s.Draw("draw the waist "+construct.Numbers(waist, top)+" and the hem "+construct.Numbers(low, foot),
		"square to the middle and to the side")
	s.Draw("fold the paper along the middle and trace the other half", "")
	return piece
}
