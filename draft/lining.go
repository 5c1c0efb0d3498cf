package draft

import (
	"ellwand/draft/lining"
)

// Lining asks for the lining of pieces.
type Lining struct {
	// Of names pieces, or a part for all its pieces. A piece that is cut
	// in several, as a princess seam does, stands for all of them.
	Of    []string
	Cloth string
	lining.Options
}

// Interfacing asks for the interfacing of pieces.
type Interfacing struct {
	// Of names pieces, as of a Lining.
	Of    []string
	Cloth string
	lining.Interfacing
}

// line derives the linings, before the allowances are given.
func (g *garment) line() error {
	for i, asked := range g.Linings {
		place := Place{Section: LiningsSection, Index: i}
		list, err := g.named("lining", asked.Of)
		if err != nil {
			return atPlace(place, err)
		}
		for _, shell := range list {
			made, err := lining.Of(shell, asked.Options)
			if err != nil {
				return atPlace(place, err)
			}
			made.Piece.Cloth = asked.Cloth
			g.add(made.Piece)
			g.pairings = append(g.pairings, made.Pairing)
			g.result.Sheets = append(g.result.Sheets, made.Sheet)
		}
	}
	return nil
}

// stiffen derives the interfacings, from pieces with their allowances.
func (g *garment) stiffen() error {
	for i, asked := range g.Interfacings {
		place := Place{Section: InterfacingsSection, Index: i}
		list, err := g.named("interfacing", asked.Of)
		if err != nil {
			return atPlace(place, err)
		}
		for _, shell := range list {
			piece, sheet, err := lining.Interface(shell, asked.Interfacing)
			if err != nil {
				return atPlace(place, err)
			}
			piece.Cloth = asked.Cloth
			g.add(piece)
			g.result.Sheets = append(g.result.Sheets, sheet)
		}
	}
	return nil
}

// isOfPart says that a piece belongs to the part of a name.
func (g *garment) isOfPart(piece, name string) bool {
	for _, p := range g.parts {
		if p.Name != name && (p.Name != "" || string(p.Kind) != name) {
			continue
		}
		for _, made := range p.pieces {
			if made.Name == piece {
				return true
			}
		}
	}
	return false
}
