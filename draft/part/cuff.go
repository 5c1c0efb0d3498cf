package part

import (
	"slices"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// Figures of a buttoned cuff and its slit, in mm [source.CommonPractice].
const (
	cuffRound    = 15  // the rounded corners of the cuff
	usualSlit    = 100 // 8 to 12 cm
	slitPlace    = 0.25
	pleatBegin   = 20 // the first pleat from the slit
	pleatApart   = 10
	pleatAlone   = 40  // up to here one pleat takes it all up
	pleatedMost  = 100 // above it is gathered
	slitLeftOver = 30  // how much of the underarm a slit leaves
)

// buttonedCuff is a cuff and its facing with rounded lower corners. The sleeve
// is pleated into it, its slit bound by a placket as wide as the overlap.
func buttonedCuff(m Measures, o Options, name string) (Block, error) {
	if m.Wrist == 0 && o.Length == 0 {
		return Block{}, construct.About(subject.WristGirth).Refuse("%s: the wrist girth is missing: measure it, or "+
			"give the cuff's length",
			"%s: der Handgelenkumfang fehlt: messen Sie, oder geben Sie die Länge der Manschette an",
			called(name))
	}
	length, depth := o.cuffLength(m.Wrist), o.FinishedDepth()
	round := min(cuffRound, depth/2, length/4)
	piece := pieces.Piece{
		Name: name, Cut: 4, Pair: true,
		Edges: []pieces.Edge{
			construct.Edge(seams.LowerCuffEdge, roundedBottom(length, round)),
			construct.Edge(seams.ButtonCuffEdge, construct.Line(orb.Point{length, round}, orb.Point{length, depth})),
			construct.Edge(seams.Wrist, construct.Line(orb.Point{length, depth}, orb.Point{0, depth})),
			construct.Edge(seams.ButtonholeCuffEdge, construct.Line(orb.Point{0, depth}, orb.Point{0, round})),
		},
		Grain: pieces.Grain{From: orb.Point{length / 3, float64(0.2 * depth)},
			To: orb.Point{length / 3, float64(0.8 * depth)}},
		Notches: []pieces.Notch{{Edge: seams.Wrist, At: cuffOverlap, Count: 1, Match: marks.Placket}},
		Marks: []pieces.Mark{
			{Name: marks.Button, At: orb.Point{length - cuffOverlap/2, depth / 2}},
			{Name: marks.Buttonhole, Path: construct.Line(orb.Point{cuffOverlap / 2, depth / 2},
				orb.Point{cuffOverlap/2 + 15, depth / 2})},
		},
	}
	block := Block{Pieces: []pieces.Piece{piece}, Sheets: []construct.Sheet{cuffSheet(name, length, depth, round)}}
	if m.WristWidth > 0 {
		taken := o.PleatedAway(m.WristWidth, m.Wrist)
		block.Pairings = []construct.Pairing{construct.Equal("wrist to cuff",
			"sleeve wrist, pleated or gathered, with the placket", m.WristWidth-taken+cuffOverlap, name, length)}
		if taken > 0 {
			block.Figures = []construct.Figure{{Name: "taken up at the wrist in pleats or gathers", Value: taken}}
		}
	}
	return block, nil
}

func (o Options) cuffLength(wrist float64) float64 {
	if o.Length > 0 {
		return o.Length
	}
	return CuffLength(wrist)
}

// PleatedAway is how much of the width of a sleeve is taken up in pleats or
// gathers, so that it fits a buttoned cuff less its overlap. 0 when the sleeve
// is no wider.
func (o Options) PleatedAway(width, wrist float64) float64 {
	return max(0, width+cuffOverlap-o.cuffLength(wrist))
}

func cuffSheet(name string, length, depth, round float64) construct.Sheet {
	s := construct.Sheet{Piece: name}
	corner := s.Start(0, 0, "the lower left corner")
	right := s.Right(corner, length, "the wrist with 2 cm of ease and 2 cm to button over, or the length asked for")
	up := s.Up(corner, depth, "the depth")
	s.Draw("complete the rectangle "+construct.Numbers(corner, right, up), "")
	s.Draw("round both lower corners off, beginning {} before each", "", round)
	s.Draw("notch the upper edge {} from the right", "the overlap, where the placket of the sleeve ends", cuffOverlap)
	return s
}

// sleevePlacket is the strip that binds both edges of the slit in one: twice as
// long as the slit, and folded double.
func sleevePlacket(m Measures, o Options, name string) (Block, error) {
	if m.WristWidth == 0 {
		return Block{}, construct.About(subject.Kind).Refuse("%s: there is no sleeve to slit: draft a sleeve",
			"%s: es gibt keinen Ärmel zu schlitzen: verlangen Sie einen Ärmel", called(name))
	}
	slit, width := o.SlitLength(), o.FinishedDepth()
	if most := m.Underarm - slitLeftOver; slit > most {
		return Block{}, construct.About(subject.Length).Refuse("%s: a slit of %s is too long for an underarm seam of "+
			"%s; ask for %s or less, or a longer sleeve",
			"%s: ein Schlitz von %s ist zu lang für eine Ärmelnaht von %s; verlangen Sie %s oder "+
				"weniger, oder einen längeren Ärmel",
			called(name), construct.Length(slit), construct.Length(m.Underarm),
			construct.AtMost(max(0, most)))
	}
	piece := pieces.Rectangle(name, 2*width, 2*slit)
	piece.Cut, piece.Pair = 2, true
	for i, edge := range []seams.Name{seams.LowerWrist, seams.OuterCuffEdge, seams.UpperWrist, seams.SlitCuffEdge} {
		piece.Edges[i].Name = edge
	}
	piece.Marks = []pieces.Mark{{Name: marks.FoldLine,
		Path: construct.Line(orb.Point{width, 0}, orb.Point{width, 2 * slit})}}
	piece.Notches = []pieces.Notch{{Edge: seams.SlitCuffEdge, At: slit, Count: 1, Match: marks.SlitTop}}
	return Block{
		Pieces: []pieces.Piece{piece},
		Pairings: []construct.Pairing{construct.Equal("placket to slit", name,
			construct.SeamLength(piece, seams.SlitCuffEdge), "both edges of the slit", 2*slit)},
	}, nil
}

// SlitLength of a sleeve placket: that asked for, or the usual one.
func (o Options) SlitLength() float64 {
	if o.Length > 0 {
		return o.Length
	}
	return usualSlit
}

// MarkSlit marks the slit of a placket on a sleeve, in place of one that is
// there already: a quarter of the wrist in from the back underarm
// [source.CommonPractice]. A sleeve without a wrist seam is left as it is.
func MarkSlit(sleeve pieces.Piece, slit float64) pieces.Piece {
	wrist, ok := sleeve.Edge(seams.Wrist)
	if !ok {
		return sleeve
	}
	at := slitPlace * wrist.Path.Length()
	foot := wrist.Path.At(at)
	top := construct.Go(foot, construct.Square(wrist.Path.Tangent(at)), slit)
	sleeve.Marks = slices.DeleteFunc(slices.Clone(sleeve.Marks),
		func(m pieces.Mark) bool { return m.Name == marks.PlacketSlit })
	sleeve.Marks = append(sleeve.Marks, pieces.Mark{Name: marks.PlacketSlit, Path: construct.Line(foot, top)})
	sleeve.Notches = slices.DeleteFunc(slices.Clone(sleeve.Notches),
		func(n pieces.Notch) bool { return n.Edge == seams.Wrist && n.Match == marks.Placket })
	sleeve.Notches = append(sleeve.Notches, pieces.Notch{Edge: seams.Wrist, At: at, Count: 1, Match: marks.Placket})
	return sleeve
}

// MarkPleats notches the pleats that take so much of the wrist up: one, or two
// from 4 cm; more than 10 cm, or more than there is room for before the slit,
// is gathered and has none.
func MarkPleats(sleeve pieces.Piece, taken float64) pieces.Piece {
	wrist, ok := sleeve.Edge(seams.Wrist)
	if !ok || taken < 1 || taken > pleatedMost {
		return sleeve
	}
	count := 1
	if taken > pleatAlone {
		count = 2
	}
	each := taken / float64(count)
	begin := slitPlace*wrist.Path.Length() + pleatBegin
	if begin+taken+float64(float64(count)*pleatApart) > wrist.Path.Length() {
		return sleeve
	}
	sleeve.Notches = slices.Clone(sleeve.Notches)
	for i := range count {
		from := begin + float64(float64(i)*(each+pleatApart))
		for _, at := range []float64{from, from + each} {
			sleeve.Notches = append(sleeve.Notches,
				pieces.Notch{Edge: seams.Wrist, At: at, Count: 1, Match: marks.Pleat.Numbered(i + 1)})
		}
	}
	return sleeve
}
