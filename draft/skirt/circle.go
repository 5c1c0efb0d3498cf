package skirt

import (
	"fmt"
	"math"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
	"ellwand/pieces/source"
)

// ring is a circle skirt: what part of a whole ring it is, and in how many
// panels it is usually cut.
type ring struct {
	name   string
	part   float64
	panels int
}

// rings of the circle skirts, as parts of a whole one [source.Geometry].
var rings = map[Shape]ring{
	FullCircle:         {"full circle", 1, 2},
	ThreeQuarterCircle: {"three-quarter circle", 0.75, 2},
	HalfCircle:         {"half circle", 0.5, 1},
	QuarterCircle:      {"quarter circle", 0.25, 1},
}

// circleHipEase is the least ease on the hip line of a circle skirt, in mm
// [source.CommonPractice].
const circleHipEase = 20

// WaistRadius of a circle skirt that is part (0 to 1) of a whole ring: the
// waist seam over 2 pi times the part (geometry).
func WaistRadius(waistSeam, part float64) float64 { return waistSeam / (2 * math.Pi * part) }

// circle drafts a skirt cut from a ring.
func (f figures) circle() (Block, error) {
	ring, ok := rings[f.Shape]
	if !ok {
		return Block{}, construct.About(subject.Shape).Refuse("skirt: there is no shape with the number %d",
			"Rock: eine Form mit der Nummer %d gibt es nicht", f.Shape)
	}
	inner := WaistRadius(f.waist, ring.part)
	outer := inner + f.Length
	hip := 2 * math.Pi * ring.part * (inner + f.WaistToHip)
	if hip < f.Hip+circleHipEase {
		return Block{}, construct.About(subject.HipGirth, subject.WaistGirth, subject.Shape).Refuse(
			"skirt: the hip girth of %s does not go into a %s skirt on a waist girth of %s, which "+
				"is %s wide there; ask for more of a circle, or measure both again",
			"Rock: der Hüftumfang von %s geht nicht in einen Rock der Form %s mit einem Taillenumfang "+
				"von %s, der dort %s weit ist; verlangen Sie mehr vom Teller, oder messen Sie beide noch "+
				"einmal",
			construct.Length(f.Hip), ring.name, construct.Length(f.Waist), construct.Length(hip))
	}
	panels := f.circlePanels(ring, outer)
	sheet := construct.Sheet{Piece: role.CircleSkirt.String()}
	piece := f.panel(&sheet, inner, outer, 2*math.Pi*ring.part/float64(panels), panels)
	whole := float64(panels)
	if piece.Fold != seams.None {
		whole *= 2
	}
	b := Block{
		Pieces: []pieces.Piece{piece}, Sheets: []construct.Sheet{sheet},
		Waist: whole * construct.SeamLength(piece, seams.Waist), Hip: hip,
		Hem: whole * construct.SeamLength(piece, seams.NarrowHem),
		Warnings: []construct.Sentence{construct.Both("a circle skirt drops where it hangs on the bias: let it hang "+
			"for a day, and level the hem before hemming it",
			"ein Tellerrock längt sich im schrägen Fadenlauf: lassen Sie ihn einen Tag hängen, und "+
				"gleichen Sie den Saum vor dem Säumen aus")},
	}
	f.HipEase = circleHipEase
	b.Pairings = []construct.Pairing{waistPairing("waist seam", b.Waist, f), {
		Seam: "hip line", Of: "width all round", Length: hip, Against: "hip girth", Other: f.Hip,
		Least: circleHipEase, Most: construct.NoLimit,
		Normal: construct.Say("2 cm of ease or more (%s)", source.CommonPractice),
	}}
	return b, nil
}

// circlePanels is the usual number of panels, or as many as keep each within
// the panel width.
func (f figures) circlePanels(r ring, outer float64) int {
	for panels := r.panels; ; panels++ {
		if f.PanelWidth == 0 || panelWidth(outer, 2*math.Pi*r.part/float64(panels)) <= f.PanelWidth {
			return panels
		}
	}
}

// panelWidth is how wide a panel of an angle is, laid whole.
func panelWidth(outer, angle float64) float64 {
	if angle >= math.Pi {
		return 2 * outer
	}
	return 2 * outer * portable.Sin(angle/2)
}

// panel draws one panel of an angle. One or two panels are drawn as halves on
// the fold, more as whole ones, since cloth has one fold.
func (f figures) panel(s *construct.Sheet, inner, outer, angle float64, panels int) pieces.Piece {
	from, sweep := -math.Pi/2, angle/2
	left, right, as := seams.CentreFront, seams.CentreBack, role.CircleSkirt
	switch {
	case panels == 2:
		left, right = seams.Centre, seams.SideSeam
	case panels > 2:
		from, sweep = -math.Pi/2-angle/2, angle
		left, right, as = seams.LeftSide, seams.RightSide, role.CircleSkirtPanel
	}
	hem := pieces.Arc{Radius: outer, Begin: from, Sweep: sweep}
	waist := pieces.Arc{Radius: inner, Begin: from + sweep, Sweep: -sweep}
	piece := pieces.Piece{
		Name: as.String(), Role: as, Cut: panels,
		Edges: []pieces.Edge{
			{Name: seams.NarrowHem, Path: pieces.Path{hem}, Hem: true},
			construct.Edge(right, construct.Line(hem.End(), waist.Start())),
			construct.Edge(seams.Waist, pieces.Path{waist}),
			construct.Edge(left, construct.Line(waist.End(), hem.Start())),
		},
		Grain: upright(0, -outer, -inner),
	}
	if panels <= 2 {
		piece.Fold = left
		x := (inner + float64(0.2*f.Length)) * portable.Sin(min(sweep, math.Pi/2)) / 3
		piece.Grain = upright(x, -outer, -inner)
	}
	if piece.Fold != seams.None {
		// The zip ends a little above the hip line, as on other skirts.
		piece.Notches = []pieces.Notch{{Edge: right, At: f.Length - zipLength(f.WaistToHip), Count: 2,
			Match: marks.ZipEnd}}
	}
	f.recordCircle(s, inner, outer, sweep, piece)
	return piece
}

func (f figures) recordCircle(s *construct.Sheet, inner, outer, sweep float64, piece pieces.Piece) {
	centre := s.Start(0, 0, "the centre of the circle, at the upper end of the fold or edge")
	waist := s.Down(centre, inner, "the waist radius: waist girth and ease, over 2 pi times the part of a circle "+
		"(geometry)")
	hem := s.Down(waist, f.Length, "the hem: the length")
	reach := 2 * outer * portable.Sin(sweep/2)
	s.Draw("with string and pencil held in "+construct.Numbers(centre)+" draw the waist through "+
		construct.Numbers(waist)+" and the hem through "+construct.Numbers(hem), "")
	s.Draw("from "+construct.Numbers(hem)+" mark {} in a straight line to the hem, and draw the other edge from "+
		"there to "+construct.Numbers(centre),
		fmt.Sprintf("the chord of %.4g degrees; cut %d", sweep*180/math.Pi, piece.Cut), reach)
}
