package trousers

import (
	"ellwand/draft/construct"
	"ellwand/draft/part"
	"ellwand/pieces"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
	"ellwand/pieces/source"
)

// Draft drafts front and back, and the pockets. The error is a sentence that
// names the measurement or option that cannot be.
func Draft(m Measures, o Options) (Block, error) {
	f, err := reckon(m, o)
	if err != nil {
		return Block{}, err
	}
	f.fitTaper()
	front := f.drawFront()
	back := f.drawBack(f.matchDrop(front.insideLeg.Length()))

	sheets := []construct.Sheet{{Piece: role.FrontTrousers.String()}, {Piece: role.BackTrousers.String()}}
	f.record(&sheets[0], front)
	f.record(&sheets[1], back)
	frontPiece, backPiece := f.frontPiece(&sheets[0], front), f.piece(back, 2)
	below := float64(pocketBelow)
	if f.Opening == ElasticWaist {
		frontPiece, backPiece = f.casing(&sheets[0], front, frontPiece), f.casing(&sheets[1], back, backPiece)
		below += f.casingDepth()
	}
	b := Block{
		Sheets: sheets, WaistEase: f.WaistEase,
		Waist:  2 * (construct.EdgesLength(front.waist, seams.Waist) + construct.EdgesLength(back.waist, seams.Waist)),
		Hip:    2 * (front.hip + back.hip),
		Hem:    front.hem.Length() + back.hem.Length(),
		Crotch: front.centre.Length() + front.curve.Length() + back.centre.Length() + back.curve.Length(),
	}
	switch f.Pocket {
	case SidePocket:
		b.Pieces = []pieces.Piece{openPocket(frontPiece, below), openPocket(backPiece, below),
			part.BagOn(front.outsideLeg, "pocket bag", pocketBelow, pocketOpen)}
		b.Sheets = append(b.Sheets, part.BagSheet("pocket bag", "outside leg", pocketBelow, pocketOpen))
	case PatchPocket:
		pocket, err := f.patchPocket()
		if err != nil {
			return Block{}, err
		}
		b.Pieces = []pieces.Piece{frontPiece, f.placePocket(backPiece, back), pocket}
		b.Sheets = append(b.Sheets, f.patchPocketSheet())
	default:
		b.Pieces = []pieces.Piece{frontPiece, backPiece}
	}
	if f.Opening == ElasticWaist {
		b.Elastic = f.elasticLength()
	}
	b.Pairings = f.pairings(b, front, back)
	b.Warnings = f.warnings(b)
	return b, nil
}

// fitTaper finds the taper at which the waist seams, darts closed, have their
// length.
func (f *figures) fitTaper() {
	f.taper = construct.Settle(f.taper, func(taper float64) float64 {
		f.taper = taper
		return construct.EdgesLength(f.drawFront().waist, seams.Waist) +
			construct.EdgesLength(f.drawBack(0).waist, seams.Waist) - f.waist
	})
}

// insideLonger is by how much the back inside leg is the longer: the front is
// stretched to it ([source.CommonPractice]: up to 6 mm).
const insideLonger = 3

// matchDrop finds how far the back fork lies below the crotch line, so that
// the inside legs match.
func (f figures) matchDrop(front float64) float64 {
	low, high := -60.0, 60.0
	for range 50 {
		drop := (low + high) / 2
		if f.drawBack(drop).insideLeg.Length() > front+insideLonger {
			low = drop
		} else {
			high = drop
		}
	}
	return (low + high) / 2
}

func (f figures) pairings(b Block, front, back half) []construct.Pairing {
	inside := construct.Equal("inside leg", "front inside leg", front.insideLeg.Length(), "back inside leg",
		back.insideLeg.Length())
	inside.Least, inside.Normal = -6,
		construct.Say("equal; the front up to 6 mm shorter and stretched (%s)", source.CommonPractice)
	list := []construct.Pairing{
		construct.Equal("outside leg", "front outside leg", front.outsideLeg.Length(), "back outside leg",
			back.outsideLeg.Length()),
		inside,
		f.waistPairing(b.Waist),
		{Seam: "hip line", Of: "width all round", Length: b.Hip, Against: "hip girth", Other: f.Hip,
			Least: f.HipEase - construct.Matching, Most: construct.NoLimit,
			Normal: construct.Say("%s of hip ease or more: 4 cm is close, 6 cm usual, 10 cm easy (%s)",
				construct.Length(f.HipEase), source.CommonPractice)},
	}
	if f.Pocket == SidePocket {
		list = append(list, construct.Equal("pocket", "pocket bag between its notches",
			notchesApart(b.Pieces[2], seams.PocketSide), "opening in the front outside leg",
			notchesApart(b.Pieces[0], seams.OutsideLeg)))
	}
	return list
}

// waistPairing sets the waist seam against the body that it goes round, or over.
func (f figures) waistPairing(waist float64) construct.Pairing {
	if f.Opening == ElasticWaist {
		return construct.Pairing{Seam: "waist", Of: "waist, not drawn in", Length: waist, Against: "hip girth",
			Other: f.Hip,
			Least: overHips - 0.1, Most: construct.NoLimit,
			Normal: construct.Say("2 cm longer or more, so that it passes over the hips (%s)", source.CommonPractice)}
	}
	return construct.Pairing{Seam: "waist", Of: "waist seam, darts closed", Length: waist, Against: "waist girth",
		Other: f.Waist,
		Least: min(10, f.WaistEase) - 0.1, Most: max(20, f.WaistEase) + 0.1,
		Normal: construct.Say("1 to 2 cm of ease (%s), or the ease that was asked for", source.CommonPractice)}
}

func (f figures) warnings(b Block) []construct.Sentence {
	var list []construct.Sentence
	if f.Waist+f.WaistEase > f.Hip+f.HipEase {
		list = append(list, construct.Both("the waist of %s is wider than the hip of %s: the trousers hang straight "+
			"from the waist",
			"die Taille von %s ist weiter als die Hüfte von %s: die Hose hängt gerade von der Taille",
			construct.Length(f.Waist), construct.Length(f.Hip)))
	}
	if b.Hem < 310 {
		list = append(list, construct.Both("the leg is %s round at the hem: the foot may not go through without an "+
			"opening", "das Bein ist am Saum %s weit: ohne Schlitz geht der Fuß vielleicht nicht durch",
			construct.Length(b.Hem)))
	}
	return list
}
