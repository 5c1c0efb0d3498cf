package view

import (
	"github.com/paulmach/orb"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/words"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	fabricwords "ellwand/fabric/words"
	"ellwand/pieces/language"
	"ellwand/pieces/role"
)

// Look is what a piece in a hand meets, in mm.
type Look struct {
	At Point `json:"at"`
	// Outline as it is turned, to be moved by At.
	Outline []Point `json:"outline"`
	// Turn, Mirrored, OnFold and OnOpen as it lies, and whether that is on the other part of
	// a lay of two; how many copies come with it there, and do not lie by themselves then.
	Turn      float64 `json:"turn"`
	Mirrored  bool    `json:"mirrored"`
	OnFold    bool    `json:"on_fold"`
	OnOpen    bool    `json:"on_open"`
	OtherPart bool    `json:"other_part"`
	Comes     int     `json:"comes,omitempty"`
	Goes      int     `json:"goes,omitempty"`

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
	// Why it cannot lie on the other part, by its obstacle.
	Why string `json:"why,omitempty"`
}

// rules by the words of programs, with their sentences.
var rules = map[plan.Rule]struct {
	Rule string
	Said language.Sentence
}{
	plan.Turned: {"turn", language.Say("turned so, its grainline does not lie as it must",
		"so gedreht liegt der Fadenlauf nicht, wie er muss")},
	plan.OverEdge: {"edge", language.Say("it lies over the edge of the cloth",
		"es liegt über den Rand des Stoffes hinaus")},
	plan.OnFlaw: {"flaw", language.Say("it lies where the cloth may not be used",
		"es liegt, wo der Stoff nicht zu gebrauchen ist")},
	plan.TooNear: {"gap", language.Say("it lies nearer to another piece than the gap",
		"es liegt näher an einem anderen Teil als der Abstand")},
	plan.AgainstOthers: {"nap", language.Say("it points the other way than the pieces that it goes with",
		"es zeigt anders als die Teile, zu denen es gehört")},
	plan.OtherPart: {"part", language.Say("it lies on both parts of the lay; move it wholly onto one of them",
		"es liegt auf beiden Abschnitten der Lage; schieben Sie es ganz auf einen davon")},
	plan.OffRepeat: {"repeat", language.Say("it is off the print that it is to match",
		"es liegt neben dem Muster, auf das es passen soll")},
}

// LookOf what was found of a piece, by its index, in a lay.
func LookOf(work *job.Work, p lay.Plan, at int, found plan.Looked, reader language.Language) Look {
	out := Look{
		At: Point{found.X, found.Y}, Turn: tidy(found.Turn), Mirrored: found.Mirrored, OnFold: found.OnFold,
		OnOpen: found.Bed > 0, OtherPart: found.Bed != p.Pieces[at].Bed, Comes: found.Comes, Goes: found.Goes,
		Free: found.Free, LengthMM: tidy(found.Length), Overlaps: []Overlap{}, Broken: []Broken{},
	}
	for _, q := range found.Outline {
		out.Outline = append(out.Outline, Point{tidy(q[0] - found.X), tidy(q[1] - found.Y)})
	}
	for _, one := range found.Overlaps {
		other := p.Pieces[one.With]
		out.Overlaps = append(out.Overlaps, Overlap{ID(other), rings(one.Area),
			language.Say("it lies over %s", "es liegt auf: %s", role.Called(other.Name)).In(reader)})
	}
	for _, one := range found.Broken {
		said := rules[one.Rule]
		broken := Broken{Rule: said.Rule, Sentence: said.Said.In(reader), Area: rings(one.Area)}
		for _, why := range lay.Reasons(one.Why) {
			broken.Why = string(why.Of)
			broken.Sentence = language.Say("it cannot go onto the other part: %s",
				"es kann nicht auf den anderen Abschnitt: %s", fabricwords.Reason(p.Cloth, why)).In(reader)
		}
		out.Broken = append(out.Broken, broken)
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
