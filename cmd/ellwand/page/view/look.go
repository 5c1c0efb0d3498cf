package view

import (
	"github.com/paulmach/orb"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/words"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
)

// Look is what a piece in a hand meets, in mm.
type Look struct {
	At Point `json:"at"`
	// Outline as it is turned, to be moved by At.
	Outline  []Point   `json:"outline"`
	Free     bool      `json:"free"`
	Overlaps []Overlap `json:"overlaps"`
	Broken   []Broken  `json:"broken"`
	Amount   string    `json:"amount"`
	LengthMM float64   `json:"length_mm"`
}

// Overlap is with another piece.
type Overlap struct {
	Piece    string    `json:"piece"`
	Area     [][]Point `json:"area"`
	Sentence string    `json:"sentence"`
}

// Broken is a rule that is broken, and where.
type Broken struct {
	Rule     string    `json:"rule"`
	Sentence string    `json:"sentence"`
	Area     [][]Point `json:"area"`
}

// rules by the words of programs, with their sentences.
var rules = map[plan.Rule][2]string{
	plan.Turned:        {"turn", "turned so, its grainline does not lie as it must"},
	plan.OverEdge:      {"edge", "it lies over the edge of the cloth"},
	plan.OnFlaw:        {"flaw", "it lies where the cloth may not be used"},
	plan.TooNear:       {"gap", "it lies nearer to another piece than the gap"},
	plan.AgainstOthers: {"nap", "it points the other way than the pieces that it goes with"},
	plan.OtherPart:     {"part", "it reaches onto the other part of the lay; it is cut on the part that it was laid on"},
	plan.OffRepeat:     {"repeat", "it is off the print that it is to match"},
}

// LookOf what was found of a piece in a lay.
func LookOf(work *job.Work, p lay.Plan, found plan.Looked) Look {
	out := Look{
		At: Point{found.X, found.Y}, Free: found.Free, LengthMM: tidy(found.Length), Overlaps: []Overlap{},
		Broken: []Broken{},
	}
	for _, q := range found.Outline {
		out.Outline = append(out.Outline, Point{tidy(q[0] - found.X), tidy(q[1] - found.Y)})
	}
	for _, one := range found.Overlaps {
		other := p.Pieces[one.With]
		out.Overlaps = append(out.Overlaps, Overlap{ID(other), rings(one.Area), "it lies over " + other.Name})
	}
	for _, one := range found.Broken {
		said := rules[one.Rule]
		out.Broken = append(out.Broken, Broken{said[0], said[1], rings(one.Area)})
	}
	p.Taken, p.Need, p.Buy = found.Taken, found.Need, found.Buy
	out.Amount = words.BuyInStore(p.Cloth, p)
	return out
}

func rings(all []orb.Ring) [][]Point {
	out := make([][]Point, len(all))
	for i, ring := range all {
		out[i] = points(ring)
	}
	return out
}
