package quote

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

// RestsOn says in a sentence what the amounts of the table rest on: how far
// above the proven bound the lays found lie, and the most that is added to any
// of them. The CSV has the figures of each. It is empty when nothing is
// possible.
func (c ClothTable) RestsOn(units Units) string {
	var most Amount
	above, possible := 0.0, false
	for _, row := range c.Rows {
		for _, cell := range row.Cells {
			if cell.Impossible != "" {
				continue
			}
			possible = true
			if cell.Amount.Bound > 0 {
				above = max(above, cell.Amount.Taken/cell.Amount.Bound-1)
			}
			most = most.most(cell.Amount)
		}
	}
	if !possible {
		return ""
	}
	parts := []string{"the lays that were found, which none can beat"}
	if percent := math.Ceil(100*above - 1e-6); percent > 0 {
		parts[0] = fmt.Sprintf("the lays that were found, at most %.0f %% longer than what is proven to be needed", percent)
	}
	for _, part := range most.Components()[1:] {
		if part.Length >= leastComponent {
			parts = append(parts, part.Component.String()+" up to "+units.Short(part.Length))
		}
	}
	return "The amounts rest on " + strings.Join(parts, ", ") + "."
}

// NotMeasured says in a sentence by how much at most an amount of the table may prove to
// be less or more, for what was not measured; empty when by nothing.
func (c ClothTable) NotMeasured(units Units) string {
	less, more := 0.0, 0.0
	for _, row := range c.Rows {
		for _, cell := range row.Cells {
			if cell.Impossible == "" && cell.Range.High > 0 {
				less, more = max(less, cell.Amount.Buy-cell.Range.Low), max(more, cell.Range.High-cell.Amount.Buy)
			}
		}
	}
	var said []string
	if less >= leastComponent {
		said = append(said, units.Short(less)+" less")
	}
	if more >= leastComponent {
		said = append(said, units.Short(more)+" more")
	}
	if len(said) == 0 {
		return ""
	}
	return "For what is not measured they may prove to be up to " + strings.Join(said, ", or ") + "; the estimate says " +
		"what would narrow that."
}

// Raised says in a sentence that amounts were raised to those of easier cells; empty
// when none was.
func (c ClothTable) Raised() string {
	for _, row := range c.Rows {
		if slices.ContainsFunc(row.Cells, func(cell Cell) bool { return cell.IsRaised }) {
			return "Some amounts are those of a smaller size, a wider cloth or one without nap, for which more was found."
		}
	}
	return ""
}

// LeftOut says in a sentence how many amounts are not known, since the search was ended
// before; empty when all are.
func (c ClothTable) LeftOut() string {
	count, all := 0, 0
	for _, row := range c.Rows {
		for _, cell := range row.Cells {
			all++
			if cell.IsLeftOut {
				count++
			}
		}
	}
	if count == 0 {
		return ""
	}
	return fmt.Sprintf("%d of %d amounts are not known, and have a dash: the search was ended before they were laid.",
		count, all)
}

// most takes the greater of each addition.
func (a Amount) most(b Amount) Amount {
	a.HandLaying = max(a.HandLaying, b.HandLaying)
	a.Straighten, a.Shrinkage = max(a.Straighten, b.Straighten), max(a.Shrinkage, b.Shrinkage)
	a.Safety, a.Rounding = max(a.Safety, b.Safety), max(a.Rounding, b.Rounding)
	a.Minimum = max(a.Minimum, b.Minimum)
	return a
}
