package quote

import (
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

// RaiseTo takes the amount of a cell that asks less, such as a wider cloth, where more was
// found for it: an envelope on which less is more would be read as a fault. The bound
// stays: it was proven for this cell. Nothing is changed where nothing is possible.
func (c *Cell) RaiseTo(easier Cell) {
	if c.Impossible != "" || easier.Impossible != "" || c.Amount.Buy >= easier.Amount.Buy {
		return
	}
	found := easier.Amount.Found
	found.Bound = c.Amount.Bound
	if raised := AmountOf(c.Offer, found); raised.Buy > c.Amount.Buy {
		c.Amount, c.IsRaised = raised, true
	}
}
