package draft

import (
	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
	"ellwand/pieces/source"
)

// end is the end of an edge from which a notch is walked.
type end int

const (
	fromStart end = iota
	fromFinish
)

// walk is the distance of a notch from an end of its edge, as a tape walked
// along the seam measures it.
func walk(piece pieces.Piece, edge seams.Name, match marks.Name, from end) (float64, bool) {
	for _, n := range piece.Notches {
		if n.Match != match || n.Edge != edge {
			continue
		}
		if from == fromStart {
			return n.At, true
		}
		e, ok := piece.Edge(edge)
		return e.Path.Length() - n.At, ok
	}
	return 0, false
}

// walked is one of two edges that are walked along each other.
type walked struct {
	piece pieces.Piece
	edge  seams.Name
	from  end
}

// walkRows compares where the notches of a name lie on two edges that are sewn
// together; none where either has no such notch.
func walkRows(seam seams.Name, match marks.Name, a, b walked) []Row {
	of, okOf := walk(a.piece, a.edge, match, a.from)
	against, okAgainst := walk(b.piece, b.edge, match, b.from)
	if !okOf || !okAgainst {
		return nil
	}
	return []Row{compare(seam.String(), a.piece.Name+", to the "+match.Brief()+" notch", of, b.piece.Name, against,
		-matching, matching,
		construct.Say("equal, so that the notches meet (%s)", source.CommonPractice))}
}

// panelRows walk the princess seams and the yoke seam.
func (g *garment) panelRows() []Row {
	var rows []Row
	for _, each := range []struct{ middle, side role.Role }{
		{role.FrontBodice, role.SideFrontBodice}, {role.BackBodice, role.SideBackBodice},
	} {
		middle, _ := pieceOf(g.bodice.Pieces, each.middle)
		side, ok := pieceOf(g.bodice.Pieces, each.side)
		if !ok {
			continue
		}
		most, normal := float64(matching), construct.Say("equal (%s)", source.CommonPractice)
		if each.side.Side() == seams.OnFront {
			most, normal = mostOverBust,
				construct.Say("the side panel 0 to 8 mm longer, eased in over the bust between the notches (%s)",
					source.CommonPractice)
		}
		rows = append(rows, compare(seams.PrincessSeam.String(), side.Name, seam(side, seams.PrincessSeam), middle.Name,
			seam(middle, seams.PrincessSeam), -matching, most, normal))
		for _, n := range middle.Notches {
			if n.Edge != seams.PrincessSeam {
				continue
			}
			// Above the fullest place the seam is walked from its upper end,
			// below it from its foot.
			up, down := fromStart, fromFinish
			if n.Match.Kind() == marks.PrincessUpper {
				up, down = fromFinish, fromStart
			}
			rows = append(rows, walkRows(seams.PrincessSeam, n.Match, walked{side, n.Edge, down},
				walked{middle, n.Edge, up})...)
		}
	}
	if yoke, ok := pieceOf(g.bodice.Pieces, role.Yoke); ok {
		back, _ := pieceOf(g.bodice.Pieces, role.BackBodice)
		rows = append(rows, compare("yoke seam", back.Name, seam(back, seams.YokeSeam), yoke.Name,
			seam(yoke, seams.YokeSeam),
			-matching, matching,
			construct.Say("equal (%s)", source.CommonPractice)))
		rows = append(rows, walkRows(seams.YokeSeam, marks.Yoke, walked{back, seams.YokeSeam, fromFinish},
			walked{yoke, seams.YokeSeam, fromStart})...)
	}
	return rows
}

// mostOverBust is the most that a side front panel may be longer, in mm
// [source.CommonPractice].
const mostOverBust = 8

func pieceOf(list []pieces.Piece, as role.Role) (pieces.Piece, bool) {
	for _, p := range list {
		if p.Role == as {
			return p, true
		}
	}
	return pieces.Piece{}, false
}

// lowerWalks walk the notches that front and back of a skirt or trousers both
// have on a seam of one name, from the hem up: both are drawn with the centre
// line on the left, so their outside seams rise from the hem and their inside
// legs fall to it.
func lowerWalks(list []pieces.Piece) []Row {
	if len(list) < 2 {
		return nil
	}
	front, back := list[0], list[1]
	var rows []Row
	for _, n := range front.Notches {
		from := fromStart
		if n.Edge == seams.InsideLeg {
			from = fromFinish
		}
		if front.Role.Side() == seams.OnFront && back.Role.Side() == seams.OnBack {
			rows = append(rows, walkRows(n.Edge, n.Match, walked{front, n.Edge, from}, walked{back, n.Edge, from})...)
		}
	}
	return rows
}
