package quote

import (
	"errors"
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"

	"ellwand/fabric/check"
)

// Proven has the amount of a cell reckoned, and what is shown of it read again; see
// Amount.Proven.
func (c Cell) Proven(units Units) error {
	return errors.Join(c.Amount.Proven(c.Offer.Cloth, units), wrong(c.Offer.Cloth, c.readAgain()))
}

// readAgain holds what a cell shows against what is needed and bought.
func (c Cell) readAgain() error {
	metric, yards := c.Texts()
	need := math.Max(c.Amount.Need(), c.Offer.Cloth.Minimum)
	inStore, coarsest := c.Amount.Buy, math.Max(c.Offer.Cloth.PurchaseStep, 10)
	if SoldInYards(c.Offer.Cloth) {
		return errors.Join(check.ShownToBuy(yards, inStore, figureTolerance), check.ShownToBuy(metric, need, metricStep+10))
	}
	return errors.Join(check.ShownToBuy(metric, inStore, 10), check.ShownToBuy(metric, need, coarsest+10),
		check.ShownToBuy(yards, need, eighth))
}

var longerBy = regexp.MustCompile(`^the lays that were found, at most (\d+) % longer than what is proven to be needed$`)

// readAgain holds what the amounts of a cloth are said to rest on (see
// ClothTable.RestsOn) against each of them.
func (c ClothTable) readAgain(units Units) error {
	var most Amount
	above, possible := 0.0, false
	for _, row := range c.Rows {
		for _, cell := range row.Cells {
			if cell.Impossible != "" {
				continue
			}
			a := cell.Amount
			possible = true
			most.HandLaying = math.Max(most.HandLaying, a.HandLaying)
			most.Straighten, most.Shrinkage = math.Max(most.Straighten, a.Straighten), math.Max(most.Shrinkage, a.Shrinkage)
			most.Safety, most.Rounding = math.Max(most.Safety, a.Safety), math.Max(most.Rounding, a.Rounding)
			most.Minimum = math.Max(most.Minimum, a.Minimum)
			if a.Bound > 0 {
				above = math.Max(above, 100*(a.Taken-a.Bound)/a.Bound)
			}
		}
	}
	said := strings.TrimSuffix(strings.TrimPrefix(c.RestsOn(units), "The amounts rest on "), ".")
	if !possible {
		if said != "" {
			return fmt.Errorf("%q rests on nothing", said)
		}
		return nil
	}
	parts := strings.SplitAfterN(said, "needed", 2)
	if above < 1e-4 { // "which none can beat" has a comma of its own
		parts = strings.SplitAfterN(said, "which none can beat", 2)
	}
	percent := 0.0
	if found := longerBy.FindStringSubmatch(parts[0]); found != nil {
		percent, _ = strconv.ParseFloat(found[1], 64) // digits alone
	}
	if percent < above-1e-4 || percent >= above+1 {
		return fmt.Errorf("the lays are up to %.2f %% longer than proven, and it says %q", above, parts[0])
	}
	var additions []string
	if len(parts) > 1 && parts[1] != "" {
		additions = strings.Split(strings.TrimPrefix(parts[1], ", "), ", ")
	}
	short, _, _ := units.steps()
	return additionsReadAgain(additions, most, "up to ", short)
}

// Proven has every figure of a table reckoned, and what is shown of it read again.
func (t Table) Proven() error {
	var faults []error
	units := Units{Inches: t.Inches}
	for _, one := range t.Cloths {
		for _, row := range one.Rows {
			for _, cell := range row.Cells {
				if cell.Impossible == "" {
					faults = append(faults, cell.Proven(units))
				}
			}
			if len(row.Cells) > 0 {
				faults = append(faults, wrong(row.Cells[0].Offer.Cloth, one.readAgain(units)))
			}
		}
	}
	return errors.Join(faults...)
}
