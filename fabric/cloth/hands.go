package cloth

import "ellwand/pieces"

// LacksLeft reports that several of a piece are cut from the cloth, all the same way up,
// though there is a right one and a left one of it.
func (c Cloth) LacksLeft(p pieces.Piece) bool {
	return p.Cut > 1 && !p.Pair && !c.Alike && !p.IsOwnImage(c.NapOf(p.Name) != EitherWay)
}
