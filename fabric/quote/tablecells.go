package quote

import (
	"ellwand/fabric/cloth"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
)

// ClothTable is the part of a table for one cloth.
type ClothTable struct {
	Cloth  string
	Widths []float64 // full widths, mm
	Rows   []TableRow
}

// TableRow is a size or garment on one kind of nap, with a cell for each width.
type TableRow struct {
	Name string
	// Garment is its name in the job, and Size that of the table of sizes; empty where the
	// job is laid as it stands.
	Garment, Size string
	Nap           cloth.Nap
	Cells         []Cell
}

// Cell is how much to buy, or why that is not known.
type Cell struct {
	Offer  Offer
	Amount Amount
	// Impossible says why nothing of this width will do, or why the cell was left out;
	// empty where there is an amount.
	Impossible string
	// Why is Impossible in every language, of a cell that was laid.
	Why language.Sentence
	// IsLeftOut says that the search was ended before the cell was laid: whether and in
	// what length it will do is not known.
	IsLeftOut bool
	// IsRaised says that the amount is that of a smaller size, a wider cloth or one
	// without nap, for which more was found.
	IsRaised bool
	// Range is between which lengths the amount may prove to lie.
	Range Range
}

// Bought gives the length to buy in both systems, mm; see InBothSystems.
func (c Cell) Bought() (metric, yards float64) {
	return InBothSystems(c.Offer.Cloth, c.Amount.Need(), c.Amount.Buy)
}

// Refusal says in two words why there is no amount; empty where there is one.
func (c Cell) Refusal() string {
	switch {
	case c.IsLeftOut:
		return "not laid"
	case c.Impossible != "":
		return "not possible"
	}
	return ""
}

// Texts of the length to buy: "1.20 m" and "1 3/8 yd"; dashes where there
// is none.
func (c Cell) Texts() (metric, yards string) {
	if c.Impossible != "" {
		return "–", "–"
	}
	m, y := c.Bought()
	return measure.RoundUp(measure.Length(m), 10).Format(measure.Metre), measure.Length(y).Format(measure.Yard)
}

// Text is the length to buy in both systems, the client's first.
func (c Cell) Text(inches bool) string {
	metric, yards := c.Texts()
	switch {
	case c.Impossible != "":
		return metric
	case inches:
		return yards + " (" + metric + ")"
	}
	return metric + " (" + yards + ")"
}

// NapText names the two kinds of row: "without nap", "with nap".
func (r TableRow) NapText() string {
	if r.Nap == cloth.EitherWay {
		return "without nap"
	}
	return "with nap"
}

// WidthTexts are the heads of the columns.
func (c ClothTable) WidthTexts(inches bool) []string {
	var out []string
	for _, width := range c.Widths {
		out = append(out, Units{Inches: inches}.Short(width))
	}
	return out
}
