package draft

import "ellwand/draft/lining"

// line derives the linings, before the allowances are given.
func (g *garment) line() error {
	for i, asked := range g.Linings {
		entry := Entry{Section: LiningsSection, Index: i}
		list, err := g.named("lining", asked.Of)
		if err != nil {
			return atEntry(entry, err)
		}
		for _, shell := range list {
			made, err := lining.Of(shell, asked.Options)
			if err != nil {
				return atEntry(entry, err)
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
		entry := Entry{Section: InterfacingsSection, Index: i}
		list, err := g.named("interfacing", asked.Of)
		if err != nil {
			return atEntry(entry, err)
		}
		for _, shell := range list {
			piece, sheet, err := lining.Interface(shell, asked.Interfacing)
			if err != nil {
				return atEntry(entry, err)
			}
			piece.Cloth = asked.Cloth
			g.add(piece)
			g.result.Sheets = append(g.result.Sheets, sheet)
		}
	}
	return nil
}
