// Package lay holds a lay as data: how the cloth is spread, its parts and their
// plies, and where each piece lies. It decides nothing, so that what plans and what
// proves can share it.
//
// Lengths are millimetres. The cloth frame: x runs along the warp from the
// cut end, y across the warp from the edge of the usable width; each Kind says
// which edge that is.
package lay

import "ellwand/pieces/language"

// Kind is how the cloth is spread for cutting. The frame of each: x runs along
// the warp from the cut end, or from the fold when that runs across; y = 0 is
// the edge nearest to the cutter.
type Kind int

const (
	// Open is a single ply, right side up. y = 0 is the inner edge of the
	// selvedge nearest to the cutter, y = Plan.Width that of the far one.
	Open Kind = iota
	// FoldedAlong is folded along the warp, right sides together and
	// selvedges together: two plies. y = 0 is the fold, y = Plan.Width the
	// inner edge of the two selvedges.
	FoldedAlong
	// FoldedAcross is folded across the weft, right sides together and cut
	// ends together: two plies of the full width. x = 0 is the fold; the
	// warp of the upper ply runs the other way.
	FoldedAcross
	// CutAcross is cut in two across the weft, and the upper length turned
	// over sidewise onto the lower, right sides together: two plies of the
	// full width, the warp of both running the same way.
	CutAcross
	// SelvedgeIn has one selvedge folded in by Plan.FoldedIn: two plies
	// beside the fold at y = 0, one ply, right side up, beyond the edge that
	// is folded in.
	SelvedgeIn
	// BothSelvedgesIn has both selvedges folded to the middle: two plies, a
	// fold at y = 0 and one at y = Plan.Width.
	BothSelvedgesIn
	// InStretches is one length folded along the warp, the next open.
	InStretches
)

// kinds in the order of the constants, as the trade says them.
var kinds = []string{
	"open", "folded along the warp", "folded across the weft", "cut across and turned",
	"one selvedge folded in", "both selvedges to the middle", "part folded, part open",
}

// Kinds in the order in which they are shown.
func Kinds() []Kind {
	return []Kind{Open, FoldedAlong, FoldedAcross, CutAcross, SelvedgeIn, BothSelvedgesIn, InStretches}
}

// String gives the name of the lay: "open" or "folded along the warp".
func (l Kind) String() string {
	if l < Open || l > InStretches {
		return "unknown"
	}
	return kinds[l]
}

// germanKinds in the order of the constants.
var germanKinds = []string{
	"offen", "längs gefaltet", "quer gefaltet", "quer geschnitten und gedreht", "eine Webkante eingeschlagen",
	"beide Webkanten zur Mitte", "teils gefaltet, teils offen",
}

// In gives the name of the lay in a language.
func (l Kind) In(reader language.Language) string {
	if reader != language.German || l < Open || l > InStretches {
		return l.String()
	}
	return germanKinds[l]
}

// WayWords is Way in every language.
func (l Kind) WayWords() language.Sentence {
	if l == SelvedgeIn || l == BothSelvedgesIn {
		return language.Say("with %s", "mit: %s", l)
	}
	return language.Say("%s", "%s", l)
}

// Words for the lays, in the order of the constants.
func (Kind) Words() []string { return kinds }

// shortNames in the order of the constants, for commands and addresses.
var shortNames = []string{"open", "folded", "across", "turned", "selvedge", "middle", "part"}

// Short is the name of the lay in one word: "folded".
func (l Kind) Short() string {
	if l < Open || l > InStretches {
		return "unknown"
	}
	return shortNames[l]
}

// Named is the lay of a name, short or in full.
func Named(name string) (Kind, bool) {
	for _, kind := range Kinds() {
		if name == kind.Short() || name == kind.String() {
			return kind, true
		}
	}
	return Open, false
}

// Way says how the cloth is laid, after "lay it" or "laid": "open", "with one
// selvedge folded in".
func (l Kind) Way() string {
	if l == SelvedgeIn || l == BothSelvedgesIn {
		return "with " + l.String()
	}
	return l.String()
}

// Plies of cloth that lie on each other, at most: 1 or 2.
func (l Kind) Plies() int {
	if l == Open {
		return 1
	}
	return 2
}

// IsAcross reports whether the plies lie one on the other because the cloth
// is folded or cut across: then the lay takes twice its length of cloth.
func (l Kind) IsAcross() bool { return l == FoldedAcross || l == CutAcross }
