package marker

import (
	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/pieces/page"
)

// profile is a cloth seen from one of its ends, as if it were a thread: x runs
// from 0 (nearest to the cutter) to 1, y in plies above the table.
type profile struct {
	name    string
	threads [][]orb.Point
	marks   []profileMark
}

type profileMark struct {
	x, y float64
	text string
}

// bulge of a fold, as a share of the width.
const bulge = 0.02

// profiles of a lay: one, or two for a lay in stretches.
func profiles(plan lay.Plan) []profile {
	flat := profile{"seen from the cut end", [][]orb.Point{{{0, 0}, {1, 0}}},
		[]profileMark{{0, 0, "selvedge"}, {1, 0, "selvedge"}}}
	double := profile{"seen from the cut end", [][]orb.Point{{{1, 0}, {bulge, 0}, {0, 0.5}, {bulge, 1}, {1, 1}}},
		[]profileMark{{0, 0, "fold"}, {1, 0, "selvedges"}}}
	switch plan.Lay {
	case lay.FoldedAlong:
		return []profile{double}
	case lay.FoldedAcross:
		double.name, double.marks[1].text = "seen from the selvedges", "cut ends"
		return []profile{double}
	case lay.CutAcross:
		flat.threads = append(flat.threads, []orb.Point{{0, 1}, {1, 1}})
		flat.name = "seen from the cut ends; both layers point the same way"
		flat.marks = []profileMark{{0, 0, "selvedges"}, {1, 0, "selvedges"}}
		return []profile{flat}
	case lay.SelvedgeIn:
		_, high := Edges(plan)
		in := plan.FoldedIn / high
		double.threads = [][]orb.Point{{{1, 0}, {bulge, 0}, {0, 0.5}, {bulge, 1}, {in, 1}}}
		double.marks = []profileMark{{0, 0, "fold"}, {in, 1, "edge folded in"}, {1, 0, "selvedge"}}
		return []profile{double}
	case lay.BothSelvedgesIn:
		double.threads = [][]orb.Point{{{0.49, 1}, {bulge, 1}, {0, 0.5}, {bulge, 0}, {1 - bulge, 0}, {1, 0.5},
			{1 - bulge, 1}, {0.51, 1}}}
		double.marks = []profileMark{{0, 0, "fold"}, {0.5, 1, "selvedges meet"}, {1, 0, "fold"}}
		return []profile{double}
	case lay.InStretches:
		double.name, flat.name = "first length, seen from its cut end", "second length"
		return []profile{double, flat}
	}
	return []profile{flat}
}

const (
	profileWidth  = 58.0 // of the picture, mm of paper
	profileHeight = 17.0
	plyHeight     = 3.2
)

// drawProfiles draws how the cloth lies, one profile under the other.
func (s *sheets) drawProfiles(x, y float64) {
	for i, p := range profiles(s.plan) {
		s.drawProfile(x+4, y+7+float64(i)*profileHeight, p)
	}
}

// profilesHeight is the room that drawProfiles takes.
func profilesHeight(plan lay.Plan) float64 {
	return profileHeight * float64(len(profiles(plan)))
}

func (s *sheets) drawProfile(x, y float64, p profile) {
	at := func(q orb.Point) orb.Point { return orb.Point{x + q[0]*profileWidth, y - q[1]*plyHeight} }
	s.SetPen(0.7, 0)
	for _, thread := range p.threads {
		var line []orb.Point
		for _, q := range thread {
			line = append(line, at(q))
		}
		s.Polygon(line, page.Rim)
	}
	s.Plain(6.5)
	for _, m := range p.marks {
		place, down := at(orb.Point{m.x, m.y}), 3.6
		if m.y > 0 {
			down = -1.6
		}
		s.TextCentred(place[0], place[1]+down, m.text)
	}
	s.Ink(90)
	s.TextCentred(x+profileWidth/2, y+7.2, p.name)
	s.Ink(0)
}
