package straightcut

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
	"ellwand/pieces/source"
)

// Wrapper, apron and bag, in mm [source.OwnChoice].
const (
	wrapperTimes = 1.6 // widths of the hip that a wrapper goes round
	tieWidth     = 30  // finished
	bibHeight    = 280
	strapLength  = 620
	strapWidth   = 25 // finished
	handleWidth  = 30 // finished
	handleLength = 640
	leastBag     = 80 // wide
	mostBag      = 1500
	leastWrap    = 1.2 // widths of the hip, so that a wrapper overlaps
	wrapperTie   = 300 // a tie is longer than half the hip
	apronShare   = 0.8 // of the hip, an apron's width
	bibShare     = 1. / 6
	besideBib    = 40  // least of an apron's waist beside its bib
	apronTie     = 400 // a tie is longer than half the waist
	pocketWidth  = 200
	pocketHeight = 180
)

// narrowHems are the hems of a wrapper and an apron.
var narrowHems = map[seams.Name]bool{seams.NarrowHem: true, seams.LeftNarrowHem: true, seams.RightNarrowHem: true}

// wrapper is a rectangle 1.6 times the hip wide, hemmed on three sides, and
// two ties.
func (f figures) wrapper() (Block, error) {
	if f.Width == 0 {
		f.Width = float64(wrapperTimes * f.Hip)
	}
	if f.Width < leastWrap*f.Hip {
		return Block{}, construct.About(subject.Width).Refuse("wrapper: a width of %s does not overlap on a hip girth "+
			"of %s; ask for %s or more",
			"Wickeltuch: eine Breite von %s überdeckt sich nicht bei einem Hüftumfang von %s; "+
				"verlangen Sie %s oder mehr", construct.Length(f.Width), construct.Length(f.Hip),
			construct.AtLeast(leastWrap*f.Hip))
	}
	cloth := named(pieces.Rectangle("wrapper", f.Width, f.Length), narrowHems, seams.NarrowHem, seams.RightNarrowHem,
		seams.Waist, seams.LeftNarrowHem)
	length := f.Hip/2 + wrapperTie
	tie := strip("tie", length, tieWidth, 2)
	return Block{
		Pieces: []pieces.Piece{cloth, tie},
		Sheets: []construct.Sheet{
			rectangleSheet("wrapper", f.Width, f.Length, "1.6 times the hip girth, or the width asked for",
				"the length"),
			rectangleSheet("tie", 2*tieWidth, length, "twice the finished width", "half the hip girth and 30 cm"),
		},
		Pairings: []construct.Pairing{{
			Seam: "width", Of: "wrapper", Length: f.Width, Against: "hip girth", Other: f.Hip,
			Least: (leastWrap - 1) * f.Hip, Most: construct.NoLimit,
			Normal: construct.Say("a fifth more or over, to overlap; 1.6 times is usual (%s)", source.OwnChoice),
		}},
	}, nil
}

// apron is cut on the fold: its width four fifths of the hip, its bib a third
// of the waist wide and 28 cm high, hollowed to the waist line.
func (f figures) apron() (Block, error) {
	if f.Width == 0 {
		f.Width = float64(apronShare * f.Hip)
	}
	half, bib := f.Width/2, float64(bibShare*f.Waist)
	if half < bib+besideBib {
		return Block{}, construct.About(subject.Width).Refuse("apron: a width of %s is too narrow beside a bib for a "+
			"waist girth of %s; ask for %s or more",
			"Schürze: eine Breite von %s ist neben dem Latz zu schmal für einen Taillenumfang von "+
				"%s; verlangen Sie %s oder mehr", construct.Length(f.Width), construct.Length(f.Waist),
			construct.AtLeast(2*(bib+besideBib)))
	}
	low, corner, waist := orb.Point{0, -f.Length}, orb.Point{half, -f.Length}, orb.Point{half, 0}
	tip, top := orb.Point{bib, bibHeight}, orb.Point{0, bibHeight}
	piece := pieces.Piece{
		Name: role.Apron.String(), Role: role.Apron, Cut: 1, Fold: seams.CentreFront,
		Edges: []pieces.Edge{
			{Name: seams.NarrowHem, Path: construct.Line(low, corner), Hem: true},
			{Name: seams.SideNarrowHem, Path: construct.Line(corner, waist), Hem: true},
			construct.Edge(seams.Hollow, construct.Bend(waist, orb.Point{-1, 0}, quarterTurn, tip, orb.Point{0, 1},
				quarterTurn)),
			{Name: seams.BodyHem, Path: construct.Line(tip, top), Hem: true},
			construct.Edge(seams.CentreFront, construct.Line(top, low)),
		},
		Grain: pieces.Grain{From: orb.Point{half / 3, float64(-0.7 * f.Length)},
			To: orb.Point{half / 3, 0.6 * bibHeight}},
		Marks: []pieces.Mark{{Name: marks.WaistLine, Path: construct.Line(orb.Point{}, waist)}},
	}
	s := construct.Sheet{Piece: role.Apron.String()}
	start := s.Start(0, 0, "the centre front at the waist")
	side := s.Right(start, half, "half the width: two fifths of the hip girth, or as asked for")
	s.Down(start, f.Length, "the hem: the length")
	up := s.Up(start, bibHeight, "the height of the bib: 28 cm")
	end := s.Right(up, bib, "half the bib: a sixth of the waist girth")
	s.Draw("draw the hollow "+construct.Numbers(side, end), "level at the side, upright at the bib")

	tieLength := f.Waist/2 + apronTie
	pocket := named(pieces.Rectangle("patch pocket", pocketWidth, pocketHeight),
		map[seams.Name]bool{seams.PocketHem: true}, seams.Bottom, seams.Right, seams.PocketHem, seams.Left)
	straps := []pieces.Piece{strip("neck strap", strapLength, strapWidth, 1), strip("tie", tieLength, tieWidth, 2)}
	return Block{
		Pieces: append([]pieces.Piece{piece}, append(straps, pocket)...),
		Sheets: []construct.Sheet{
			s,
			rectangleSheet("neck strap", 2*strapWidth, strapLength, "twice the finished width", "62 cm"),
			rectangleSheet("tie", 2*tieWidth, tieLength, "twice the finished width",
				"half the waist girth and 40 cm"),
			rectangleSheet("patch pocket", pocketWidth, pocketHeight, "20 cm", "18 cm"),
		},
		Pairings: []construct.Pairing{{
			Seam: "width", Of: "apron", Length: f.Width, Against: "hip girth", Other: f.Hip,
			Least: -0.5 * f.Hip, Most: construct.NoLimit,
			Normal: construct.Say("half of the hip girth or more; four fifths is usual (%s)", source.OwnChoice),
		}},
	}, nil
}

// bag is two panels as wide as bag and bottom together, half the bottom cut
// out of the two lower corners, and two handles.
func (f figures) bag() (Block, error) {
	if f.Flat {
		f.Depth = 0
	}
	switch {
	case f.Width < leastBag || f.Width > mostBag:
		return Block{}, construct.About(subject.Width).Refuse("bag: a width of %s cannot be; ask for %s to %s",
			"Tasche: eine Breite von %s geht nicht; verlangen Sie %s bis %s",
			construct.Length(f.Width), construct.AtLeast(leastBag), construct.AtMost(mostBag))
	case f.Depth > f.Width || f.Depth > f.Length:
		return Block{}, construct.About(subject.Depth).Refuse("bag: a depth of %s is more than the bag is wide or "+
			"high; ask for %s or less",
			"Tasche: eine Tiefe von %s ist mehr, als die Tasche breit oder hoch ist; verlangen Sie %s "+
				"oder weniger", construct.Length(f.Depth), construct.AtMost(min(f.Width, f.Length)))
	}
	panel := f.bagPanel()
	handle := strip("handle", handleLength, handleWidth, 2)
	b := Block{Pieces: []pieces.Piece{panel, handle}, Sheets: []construct.Sheet{
		rectangleSheet(panel.Name, f.Width+f.Depth, f.Length+f.Depth/2, "the width and the depth",
			"the height and half the depth"),
		rectangleSheet("handle", 2*handleWidth, handleLength, "twice the finished width", "64 cm"),
	}}
	b.Pairings = []construct.Pairing{construct.Equal("side", "right side of a panel",
		construct.SeamLength(panel, seams.RightSide), "left side of the other",
		construct.SeamLength(panel, seams.LeftSide))}
	if f.Depth > 0 {
		b.Sheets[0].Draw("cut a square of {} out of both lower corners", "half the depth", f.Depth/2)
		b.Pairings = append(b.Pairings, construct.Equal("corner", "upright of a corner",
			construct.SeamLength(panel, seams.RightCornerUpright), "level of the corner",
			construct.SeamLength(panel, seams.RightCornerLevel)))
	}
	return b, nil
}

func (f figures) bagPanel() pieces.Piece {
	d, width, height := f.Depth/2, f.Width+f.Depth, f.Length+f.Depth/2
	hems := map[seams.Name]bool{seams.BodyHem: true}
	if d == 0 {
		piece := named(pieces.Rectangle(role.BagPanel.String(), width, height), hems, seams.Bottom, seams.RightSide,
			seams.BodyHem, seams.LeftSide)
		piece.Role, piece.Cut = role.BagPanel, 2
		return piece
	}
	corners := []orb.Point{{d, 0}, {width - d, 0}, {width - d, d}, {width, d}, {width, height}, {0, height}, {0, d},
		{d, d}}
	piece := pieces.Piece{Name: role.BagPanel.String(), Role: role.BagPanel, Cut: 2,
		Grain: pieces.Grain{From: orb.Point{width / 3, float64(0.2 * height)},
			To: orb.Point{width / 3, float64(0.8 * height)}}}
	for i, name := range []seams.Name{seams.Bottom, seams.RightCornerUpright, seams.RightCornerLevel, seams.RightSide,
		seams.BodyHem, seams.LeftSide, seams.LeftCornerLevel, seams.LeftCornerUpright} {
		edge := construct.Edge(name, construct.Line(corners[i], corners[(i+1)%len(corners)]))
		edge.Hem = hems[name]
		piece.Edges = append(piece.Edges, edge)
	}
	return piece
}
