package sleeve

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// Draft drafts the sleeve. A bicep line shorter than the arm with BicepEase, or
// longer than the style's Norm has it, is that of the lowest or highest head of
// the norm: it needs another armhole. The error is a sentence that names the
// length that cannot be.
func Draft(m Measures, o Options) (Block, error) {
	if err := o.check(); err != nil {
		return Block{}, err
	}
	d := drafting{Measures: m, Options: o, norm: NormOf(o.Style)}
	h, err := d.solve()
	if err != nil {
		return Block{}, err
	}
	d.height, d.length, d.rise = h.height, d.lengthAt(h.height-h.rise)+h.rise, h.rise
	if d.length < d.height+leastUnderarm {
		return Block{}, construct.About(subject.Length, subject.Reach).Refuse(
			"sleeve: a length of %s ends above the underarm; from the crown it must be %s or more",
			construct.Length(d.length-h.rise), construct.AtLeast(d.shortest(d.height-h.rise+leastUnderarm)))
	}
	sheet := construct.Sheet{Piece: role.Sleeve.String()}
	ends := h.draw(&sheet)
	switch o.Style {
	case TwoPiece:
		return d.twoPiece(sheet, h)
	case Cap:
		return d.capSleeve(sheet, h)
	}
	return d.finish(sheet, h, ends), nil
}

// shortest is the shortest sleeve that ends below the underarm, or little more: the
// head may be higher on a longer one.
func (d drafting) shortest(length float64) float64 {
	// further is more than a length is rounded up by for people, in mm
	// [source.OwnChoice].
	const further = 2
	for range 20 {
		least := length
		for _, d.Length = range []float64{length, length + further} {
			if h, err := d.solve(); err == nil {
				least = max(least, h.height-h.rise+leastUnderarm)
			}
		}
		if least == length {
			break
		}
		length = least
	}
	return length
}

// solve finds the head: that which suits the arm, gathered where it is to be.
func (d drafting) solve() (head, error) {
	all := d.solvings()
	plain, err := d.fitHead(all)
	if err != nil || d.HeadFullness == 0 {
		return plain, err
	}
	full, err := d.gather(plain)
	// A lower edge whose width is given slants the underarm seams the more, the
	// more is spread above it: a few rounds settle that.
	for range 4 {
		if err != nil || d.WristWidth == 0 && d.HemFullness == 0 {
			break
		}
		d.spread = full.spread
		for i := range all {
			all[i].slant = d.slant
		}
		if plain, err = d.fitHead(all); err == nil {
			full, err = d.gather(plain)
		}
	}
	return full, err
}

// solvings are what the head may be solved from, the softest hollows first.
func (d drafting) solvings() []solving {
	s := solving{front: layOut(d.FrontArmhole, d.FrontNotch), back: layOut(d.BackArmhole, d.BackNotch), slant: d.slant}
	s.depth = (s.front.depth + s.back.depth) / 2
	ease := d.norm.UsualEase * (s.front.length + s.back.length)
	if d.Ease != nil {
		ease = *d.Ease
	}
	s.frontEase, s.backEase = frontShare*ease, (1-frontShare)*ease
	front, okFront := s.front.hollows(d.norm.Hug * s.depth)
	back, okBack := s.back.hollows(d.norm.Hug * s.depth)
	all := make([]solving, len(softness))
	for i := range all {
		s.hollows, s.none = [2]hollow{front[i], back[i]}, !okFront || !okBack
		all[i] = s
	}
	return all
}

// wrist is the width of the lower edge of a sleeve that is not gathered at the
// head, for a bicep line and a head height: in by a quarter at the wrist (common
// practice), and in proportion on the way there; or as much as was asked for.
func (d drafting) wrist(bicep, height float64) float64 {
	if d.Style == TwoPiece {
		return bicep
	}
	if d.WristWidth > 0 {
		return d.WristWidth - d.spread
	}
	length := d.lengthAt(height)
	full := max(d.ShoulderToWrist, length)
	width := bicep * (1 - 0.25*(length-height)/(full-height))
	return max(width, d.HemFullness*width-d.spread)
}

// slantest is the most by which an underarm seam leans where it meets the head,
// in radians: one that leans more is a curve below [source.OwnChoice].
const slantest = 8 * math.Pi / 180

// slant is by how much the underarm seams lean inward towards the lower edge,
// where they meet the head: both alike, so that they match.
func (d drafting) slant(bicep, height float64) float64 {
	fall := max(leastUnderarm, d.lengthAt(height)-height)
	lean := math.Atan((bicep - d.wrist(bicep, height)) / 2 / fall)
	return max(-slantest, min(slantest, lean))
}

// underarm is the seam from the lower edge up to the head. lean is its direction
// there: a straight line, or a curve that arrives so.
func underarm(lower, end, lean orb.Point) pieces.Path {
	way := construct.Direction(lower, end)
	if construct.Distance(way, lean) < 1e-4 {
		return construct.Line(lower, end)
	}
	return construct.Curve(lower, way, 1./3, end, lean, 1./3)
}

func (d drafting) finish(sheet construct.Sheet, h head, ends ends) Block {
	fall := d.length - d.height
	takenIn := (h.bicep() - h.spread - d.wrist(h.bicep()-h.spread, h.height-h.rise)) / 2
	lower := sheet.Down(ends.level, fall, "the lower edge: the length from the crown")
	front := sheet.Right(lower, h.front.width()-takenIn, "its front end: the bicep line in by a quarter, or the wrist asked for, half at each end")
	back := sheet.Left(lower, h.back.width()-takenIn, "its back end")
	sheet.Draw("draw the underarm seams "+construct.Numbers(ends.front, front)+" and "+construct.Numbers(ends.back, back), "")

	wrist := construct.Edge(seams.WristHem, construct.Line(back.At, front.At))
	wrist.Hem = true
	if d.Cuffed {
		wrist = construct.Edge(seams.Wrist, wrist.Path)
	}
	sin, cos := math.Sincos(h.slant)
	seam := h.seam()
	length, toCrown := seam.Length(), h.front.path.Length()
	piece := pieces.Piece{
		Name: role.Sleeve.String(), Role: role.Sleeve, Cut: 2, Pair: true,
		Edges: []pieces.Edge{
			wrist,
			construct.Edge(seams.FrontUnderarm, underarm(front.At, ends.front.At, orb.Point{sin, cos})),
			construct.Edge(seams.SleeveHead, seam),
			construct.Edge(seams.BackUnderarm, underarm(back.At, ends.back.At, orb.Point{-sin, cos}).Reverse()),
		},
		Grain: pieces.Grain{From: orb.Point{0, lower.Y() + 0.15*fall}, To: orb.Point{0, h.height - 0.25*d.height}},
		Notches: []pieces.Notch{
			{Edge: seams.SleeveHead, At: d.FrontNotch, Count: 1, Match: marks.FrontArmhole},
			{Edge: seams.SleeveHead, At: toCrown, Count: 1, Match: marks.Shoulder},
			{Edge: seams.SleeveHead, At: length - d.BackNotch, Count: 2, Match: marks.BackArmhole},
		},
		Marks: []pieces.Mark{{Name: marks.BicepLine, Path: construct.Line(ends.back.At, ends.front.At)}},
	}
	d.markElbow(&piece)
	d.markPlacket(&piece)
	return Block{
		Piece: piece, Pieces: []pieces.Piece{piece}, Sheet: sheet,
		HeadHeight: h.height, BicepLine: h.bicep(), WristWidth: front.X() - back.X(), Head: length, FrontHead: toCrown, Spread: h.spread,
	}
}

// markElbow draws the elbow line, half the length of the arm and 5 cm below
// the crown [source.CommonPractice], with a notch at both its ends. A sleeve that
// ends above it has none.
func (d drafting) markElbow(piece *pieces.Piece) {
	elbow := d.elbowLine()
	foot := d.height - d.length
	if elbow > -10 || elbow < foot+10 {
		return
	}
	front, back := piece.Edges[1].Path, piece.Edges[3].Path
	upFront := construct.Reach(front, 1, elbow)
	downBack := back.Length() - construct.Reach(back.Reverse(), 1, elbow)
	piece.Marks = append(piece.Marks, pieces.Mark{Name: marks.ElbowLine, Path: construct.Line(back.At(downBack), front.At(upFront))})
	piece.Notches = append(piece.Notches,
		pieces.Notch{Edge: seams.FrontUnderarm, At: upFront, Count: 1, Match: marks.Elbow},
		pieces.Notch{Edge: seams.BackUnderarm, At: downBack, Count: 1, Match: marks.Elbow})
}

// placketSlit is how long the slit of a shirt sleeve is, 8 to 15 cm
// [source.CommonPractice]; less on a child's short arm.
const placketSlit = 120.

// markPlacket marks the slit for the placket of a shirt sleeve that goes into
// a cuff at the wrist: in the middle of the back half of the lower edge.
func (d drafting) markPlacket(piece *pieces.Piece) {
	if d.Style != Shirt || !d.Cuffed {
		return
	}
	slit := min(placketSlit, 0.4*(d.length-d.height))
	wrist := piece.Edges[0].Path
	at := wrist.Length() / 4
	foot := wrist.At(at)
	piece.Notches = append(piece.Notches, pieces.Notch{Edge: seams.Wrist, At: at, Count: 1, Match: marks.Placket})
	piece.Marks = append(piece.Marks, pieces.Mark{Name: marks.PlacketSlit, Path: construct.Line(foot, orb.Point{foot[0], foot[1] + slit})})
}
