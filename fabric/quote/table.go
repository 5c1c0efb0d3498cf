package quote

import (
	"ellwand/fabric/cloth"
	"ellwand/fabric/plan"
)

// Table is a requirement table, as it stands on a pattern's envelope: for each
// cloth the lengths to buy by size or garment, width and nap.
type Table struct {
	Title  string
	Inches bool // widths and lengths in inches and yards first
	Cloths []ClothTable
	// Ended says whether the searches for lays were ended early.
	Ended plan.Ended
}

// Settle makes the cells agree with each other: a lay for one-way cloth is one
// for cloth without nap, and a lay on a narrow cloth is one on a wider. Rows of
// one name follow each other. A cloth with a repeat is left as it is: where its
// lines lie depends on the width.
func (c ClothTable) Settle() {
	for _, row := range c.Rows {
		for i := range row.Cells {
			for j := range row.Cells {
				if c.Widths[j] < c.Widths[i] {
					row.Cells[i].noMoreThan(row.Cells[j], c.Widths[j]/c.Widths[i])
				}
			}
		}
	}
	for _, row := range c.Rows {
		for _, other := range c.Rows {
			if row.Name != other.Name || row.Nap != cloth.EitherWay || other.Nap == cloth.EitherWay {
				continue
			}
			for i := range row.Cells {
				row.Cells[i].noMoreThan(other.Cells[i], 1)
			}
		}
	}
}

// noMoreThan takes the lay of another cell when it is shorter. narrower is its
// width over this one's. The bound stays: it was proven for this cell.
func (c *Cell) noMoreThan(other Cell, narrower float64) {
	if other.Impossible != "" || c.Impossible == "" && c.Amount.Taken <= other.Amount.Taken || c.Offer.Cloth.Repeat.Along+c.Offer.Cloth.Repeat.Across > 0 {
		return
	}
	found := other.Amount.Found
	found.Density *= narrower
	found.Bound = c.Amount.Bound
	c.Impossible, c.Amount = "", AmountOf(c.Offer, found)
}
