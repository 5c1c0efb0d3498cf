package skirt

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
	"ellwand/pieces/source"
)

// The usual widths of a pleat on the hip line, in mm [source.CommonPractice].
const (
	knifePleat = 40
	boxPleat   = 80
	// clothTimes the hip line is the cloth round, so that each pleat is backed
	// twice.
	clothTimes = 3
	// fewestPleats and mostPleats all round [source.OwnChoice].
	fewestPleats, mostPleats = 4, 200
	// mostCloser is the most that a pleat is laid closer at the waist, as a share
	// of what shows of it [source.OwnChoice].
	mostCloser = 0.6
)

// pleating is a skirt pleated all round.
type pleating struct {
	panels, pleats int
	// visible is the width of a pleat on the hip line; closer is what each
	// takes in more from there to the waist.
	visible, closer float64
}

// cloth is the width of the cloth round.
func (p pleating) cloth() float64 { return clothTimes * p.visible * float64(p.pleats) }

// takeUp is what one pleat takes in at the waist.
func (p pleating) takeUp() float64 { return 2*p.visible + p.closer }

// pleated drafts a knife or box pleated skirt.
func (f figures) pleated() (Block, error) {
	round := max(f.hip, f.waist)
	usual := float64(knifePleat)
	if f.Shape == BoxPleated {
		usual = boxPleat
	}
	p := pleating{pleats: f.Pleats, panels: whole(float64(clothTimes*round), f.panelWidth())}
	if p.pleats == 0 {
		p.pleats = int(math.Round(round / usual))
	}
	if p.pleats < fewestPleats || p.pleats > mostPleats {
		return Block{}, construct.About(subject.Pleats).Refuse("skirt: %d pleats; ask for %d to %d",
			"Rock: %d Falten; verlangen Sie %d bis %d", p.pleats,
			fewestPleats,
			mostPleats)
	}
	p.pleats = whole(float64(p.pleats), float64(p.panels)) * p.panels
	p.visible = round / float64(p.pleats)
	p.closer = (round - f.waist) / float64(p.pleats)
	if p.closer > mostCloser*p.visible {
		return Block{}, construct.About(subject.WaistGirth, subject.HipGirth).Refuse(
			"skirt: the waist girth of %s is too small for the hip girth of %s: the pleats "+
				"would lie %s over one another; measure both again, or ask for a circle skirt",
			"Rock: der Taillenumfang von %s ist zu klein für den Hüftumfang von %s: die Falten "+
				"lägen %s übereinander; messen Sie beide noch einmal, oder verlangen Sie einen Tellerrock",
			construct.Length(f.Waist), construct.Length(f.Hip), construct.Length(p.closer))
	}
	piece := f.pleatPanel(p)
	folded := float64(float64(p.panels)*construct.SeamLength(piece, seams.Waist)) - float64(float64(p.pleats)*p.takeUp())
	b := Block{
		Pieces: []pieces.Piece{piece}, Sheets: []construct.Sheet{f.recordPleats(p)},
		Waist: folded, Hip: round, Hem: p.cloth(),
	}
	b.Pairings = []construct.Pairing{
		{Seam: "pleats", Of: "cloth round", Length: p.cloth(), Against: "width on the hip line", Other: round,
			Least: 2*round - 1, Most: 2*round + 1,
			Normal: construct.Say("3 times as long (%s)", source.CommonPractice)},
		waistPairing("waist seam, pleats folded", folded, f),
		f.hipPairing(round),
	}
	return b, nil
}

// pleatPanel is one panel, its side seams hidden in the folds.
func (f figures) pleatPanel(p pleating) pieces.Piece {
	each := p.pleats / p.panels
	piece := panel(role.PleatedSkirtPanel.String(), 3*p.visible*float64(each), f.Length, seams.SkirtHem, seams.Waist)
	piece.Role, piece.Cut = role.PleatedSkirtPanel, p.panels
	hip := f.Length - f.WaistToHip
	line := func(name marks.Name, number int, low, high float64) {
		path := construct.Line(orb.Point{low, 0}, orb.Point{low, hip})
		path = construct.Join(path, construct.Line(path.End(), orb.Point{high, f.Length}))
		piece.Marks = append(piece.Marks, pieces.Mark{Name: name.Numbered(number), Path: path})
	}
	for i := range each {
		left := float64(3 * p.visible * float64(i))
		if f.Shape == BoxPleated {
			line(marks.LeftFold, i+1, left+p.visible, left+p.visible+p.closer/2)
			line(marks.RightFold, i+1, left+2*p.visible, left+2*p.visible-p.closer/2)
			continue
		}
		line(marks.PleatFold, i+1, left+p.visible, left+p.visible)
		line(marks.PleatLay, i+1, left+2*p.visible, left+2*p.visible-p.closer)
	}
	return piece
}

func (f figures) recordPleats(p pleating) construct.Sheet {
	s := construct.Sheet{Piece: role.PleatedSkirtPanel.String()}
	corner := s.Start(0, 0, "the lower left corner")
	right := s.Right(corner, p.cloth()/float64(p.panels),
		fmt.Sprintf("three times the hip line, over %d panels", p.panels))
	up := s.Up(corner, f.Length, "the length")
	hip := s.Down(up, f.WaistToHip, "the hip line: waist to hip")
	s.Draw("complete the rectangle "+construct.Numbers(corner, right, up), "")
	s.Draw("from the left side mark {} on the hip line from "+construct.Numbers(hip)+
		" again and again, and square down to the hem",
		"the width of a pleat: hip girth and ease over the number of "+
			"pleats", p.visible)
	if f.Shape == BoxPleated {
		s.Draw("of every three stretches the middle one shows; draw its two lines on up to the waist, each {} closer "+
			"to its middle there", "half of what a pleat takes in between hip and waist", p.closer/2)
		return s
	}
	s.Draw("of every three stretches the middle one shows: its left line is the fold, drawn straight up to the "+
		"waist; its right line, to which the next fold is laid, is drawn on {} to the left of straight",
		"what a pleat takes in between hip and waist", p.closer)
	return s
}
