package skirt

import (
	"fmt"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// A tier is gathered into one and a half to three times its length
// [source.CommonPractice]; how many there are is ours [source.OwnChoice].
const (
	usualTiers    = 3
	usualFullness = 1.5
	// widestTier is the most cloth that one tier may take, in mm [source.OwnChoice].
	widestTier = 20000
)

// tiered drafts a skirt of strips of the same depth, each gathered into the
// one above.
func (f figures) tiered() (Block, error) {
	if f.Tiers == 0 {
		f.Tiers = usualTiers
	}
	if f.Fullness == 0 {
		f.Fullness = usualFullness
	}
	switch {
	case f.Tiers < 1 || f.Tiers > 8:
		return Block{}, construct.About(subject.Tiers).Refuse("skirt: %d tiers; ask for 1 to 8",
			"Rock: %d Stufen; verlangen Sie 1 bis 8", f.Tiers)
	case f.Fullness < 1 || f.Fullness > 3:
		return Block{}, construct.About(subject.Fullness).Refuse("skirt: a fullness of %.4g cannot be gathered; 1.5 "+
			"to 3 is usual",
			"Rock: das %.4g-Fache lässt sich nicht einreihen; üblich ist das 1,5- bis 3-Fache",
			f.Fullness)
	case f.hip > 3*f.waist:
		return Block{}, construct.About(subject.HipGirth, subject.WaistGirth).Refuse(
			"skirt: the hip girth of %s cannot be gathered into a waist girth of %s; measure "+
				"both again",
			"Rock: ein Hüftumfang von %s lässt sich nicht in einen Taillenumfang von %s einreihen; "+
				"messen Sie beide noch einmal", construct.Length(f.Hip), construct.Length(f.Waist))
	}
	b := Block{Waist: f.waist}
	above, seam := f.waist, "waist seam"
	for tier := 1; tier <= f.Tiers; tier++ {
		width := above * f.Fullness
		if tier == 1 {
			// It must go over the hip.
			width = max(width, f.hip)
		}
		if width > widestTier {
			return Block{}, construct.About(subject.Tiers, subject.Fullness).Refuse(
				"skirt: tier %d would take %s of cloth round; ask for fewer tiers or less fullness",
				"Rock: Stufe %d bräuchte %s Stoff ringsum; verlangen Sie weniger Stufen oder weniger "+
					"Mehrweite", tier,
				construct.Length(width))
		}
		piece := f.tier(tier, width)
		b.Pieces = append(b.Pieces, piece)
		b.Pairings = append(b.Pairings, construct.Gathered("gathers", piece.Name,
			float64(piece.Cut)*construct.SeamLength(piece, seams.UpperEdge), seam, above))
		above, seam = width, piece.Name+", lower edge"
		if tier == 1 {
			b.Hip = width
		}
	}
	b.Hem = above
	b.Sheets = f.recordTiers(b.Pieces)
	b.Pairings = append(b.Pairings, f.hipPairing(b.Hip))
	return b, nil
}

// tier is one panel of a tier.
func (f figures) tier(number int, width float64) pieces.Piece {
	panels := whole(width, f.panelWidth())
	var hem seams.Name = seams.LowerEdge
	if number == f.Tiers {
		hem = seams.SkirtHem
	}
	piece := panel(fmt.Sprintf("tier %d", number), width/float64(panels), f.Length/float64(f.Tiers), hem,
		seams.UpperEdge)
	piece.Cut = panels
	piece.Notches = []pieces.Notch{{Edge: seams.UpperEdge, At: width / float64(panels) / 2, Count: 1,
		Match: marks.PanelMiddle}}
	return piece
}

// panelWidth is the most a straight panel may be wide.
func (f figures) panelWidth() float64 {
	if f.PanelWidth == 0 {
		return usualPanel
	}
	return f.PanelWidth
}

// panel is a rectangle with its lower left corner at the origin.
func panel(name string, width, height float64, hem, top seams.Name) pieces.Piece {
	piece := pieces.Rectangle(name, width, height)
	names := map[seams.Name]seams.Name{seams.Bottom: hem, seams.Right: seams.RightSide, seams.Top: top,
		seams.Left: seams.LeftSide}
	for i, e := range piece.Edges {
		piece.Edges[i].Name, piece.Edges[i].Hem = names[e.Name], names[e.Name] == seams.SkirtHem
	}
	return piece
}

func (f figures) recordTiers(tiers []pieces.Piece) []construct.Sheet {
	var sheets []construct.Sheet
	for i, piece := range tiers {
		s := construct.Sheet{Piece: piece.Name}
		width, height := construct.SeamLength(piece, seams.UpperEdge), construct.SeamLength(piece, seams.LeftSide)
		corner := s.Start(0, 0, "the lower left corner")
		right := s.Right(corner, width, fmt.Sprintf("the seam above, %.4g times, over %d panels", f.Fullness,
			piece.Cut))
		up := s.Up(corner, height, fmt.Sprintf("the length over %d tiers", f.Tiers))
		s.Draw("complete the rectangle "+construct.Numbers(corner, right, up),
			fmt.Sprintf("tier %d from the waist", i+1))
		sheets = append(sheets, s)
	}
	return sheets
}
