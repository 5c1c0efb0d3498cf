package found

import "ellwand/pieces"

// pair makes a right and a left of a piece of which only how many are cut was said, where it
// is not its own mirror image: so patterns mean "cut 2", since cloth is cut folded
// [source.CommonPractice].
func (c *completing) pair() {
	if c.said.Pair != NotSaid || c.piece.Pair || !comesInPairs(c.piece) {
		return
	}
	c.piece.Pair = true
	c.notes = append(c.notes, Note{Kind: PairTaken, Count: c.piece.Cut})
}

// comesInPairs says that as many right ones as left ones may be meant. On a cloth without a
// nap more pieces are their own images than here, and a pair of them costs nothing.
func comesInPairs(p pieces.Piece) bool { return p.Cut > 0 && p.Cut%2 == 0 && !p.IsOwnImage(true) }
