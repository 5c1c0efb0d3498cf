package quote

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"ellwand/fabric/plan"
)

// proven has every sum of a quote reckoned again from what was asked, and every line
// read again.
func (q Quote) proven() error {
	var faults []error
	for _, cloth := range q.Cloths {
		faults = append(faults, Proven([]Option{cloth.Option}, q.Units))
	}
	if err := errors.Join(append(q.linesReckonedAgain(), q.sumsReckonedAgain()...)...); err != nil {
		faults = append(faults, fmt.Errorf("%w: a sum of the quote is wrong and is not shown: %w", plan.ErrInternal, err))
	}
	return errors.Join(faults...)
}

// linesReckonedAgain holds each line against what it is of, in their order.
func (q Quote) linesReckonedAgain() []error {
	var faults []error
	lines := q.Lines
	next := func(group Group) Line {
		if len(lines) == 0 || lines[0].Group != group {
			faults = append(faults, fmt.Errorf("a line is missing"))
			return Line{}
		}
		line := lines[0]
		lines = lines[1:]
		return line
	}
	cloths := Money(0)
	for _, cloth := range q.Cloths {
		line := next(Cloth)
		cloths += line.Cost
		faults = append(faults, sameMoney(line.Text, line.Cost, cloth.Option.Cost),
			boughtReadAgain(line.Amount, cloth.Option.Bought))
		if !cloth.Option.FromRemnant {
			faults = append(faults, q.priceReadAgain(line.Each, cloth.Option.Offer.Price.Money))
		}
	}
	if q.Margin > 0 {
		faults = append(faults, q.shareOf("the margin", next(Cloth).Cost, cloths, q.Margin))
	}
	for _, notion := range q.Notions {
		line := next(Notions)
		faults = append(faults, sameMoney(line.Text, line.Cost, notion.Price*Money(notion.Count)),
			q.priceReadAgain(line.Each, notion.Price))
		if line.Amount != fmt.Sprint(notion.Count) {
			faults = append(faults, fmt.Errorf("%d of %s, it says %s", notion.Count, notion.Name, line.Amount))
		}
	}
	for _, work := range q.Making {
		faults = append(faults, q.workReckonedAgain(next(Making), work))
	}
	if len(lines) > 0 {
		faults = append(faults, fmt.Errorf("%q stands for nothing", lines[0].Text))
	}
	return faults
}

func (q Quote) workReckonedAgain(line Line, work Work) error {
	if work.Minutes == 0 {
		return sameMoney(line.Text, line.Cost, work.Sum)
	}
	minutes := 0
	for part := range strings.SplitSeq(strings.ReplaceAll(line.Amount, " min", "min"), " h") {
		number := 0
		if part = strings.TrimSpace(part); part == "" {
			continue
		}
		if _, err := fmt.Sscanf(part, "%d", &number); err != nil {
			return fmt.Errorf("%q is no time", line.Amount)
		}
		if !strings.HasSuffix(part, "min") {
			number *= 60
		}
		minutes += number
	}
	if minutes != work.Minutes || !isNearest(line.Cost, work.PerHour, float64(work.Minutes), 60) {
		return fmt.Errorf("%d minutes at %d an hour; it says %s and %d", work.Minutes, work.PerHour, line.Amount, line.Cost)
	}
	return q.priceReadAgain(line.Each, work.PerHour)
}

// priceReadAgain reads a text such as "18.50 a metre".
func (q Quote) priceReadAgain(text string, price Money) error {
	amount, _, _ := strings.Cut(text, " a")
	said, err := q.Currency.Parse(amount)
	if err != nil || said != price {
		return fmt.Errorf("%q stands where a price of %d is meant", text, price)
	}
	return nil
}

// sumsReckonedAgain: the lines come to the sum, with the tax to the total, and the
// total is what is paid first and last.
func (q Quote) sumsReckonedAgain() []error {
	sum := Money(0)
	for _, line := range q.Lines {
		sum += line.Cost
	}
	faults := []error{sameMoney("the sum", q.Subtotal, sum), sameMoney("the total", q.DepositSum+q.Balance, q.Total),
		q.shareOf("the deposit", q.DepositSum, q.Total, q.Deposit)}
	switch {
	case q.Tax == nil:
		faults = append(faults, sameMoney("the tax", q.TaxSum, 0), sameMoney("the total", q.Total, sum))
	case q.Tax.Included:
		// The tax is the share of what is left without it.
		net := float64(sum-q.TaxSum) * float64(q.Tax.Rate) / float64(whole)
		if math.Abs(float64(q.TaxSum)-net) > 0.5*(1+float64(q.Tax.Rate)/float64(whole))+1e-3 {
			faults = append(faults, fmt.Errorf("a tax of %d in %d", q.TaxSum, sum))
		}
		faults = append(faults, sameMoney("the total", q.Total, sum))
	default:
		faults = append(faults, q.shareOf("the tax", q.TaxSum, sum, q.Tax.Rate),
			sameMoney("the total", q.Total, sum+q.TaxSum))
	}
	return append(faults, q.savingsReckonedAgain()...)
}

// savingsReckonedAgain holds what is saved by laying together against each garment
// bought by itself.
func (q Quote) savingsReckonedAgain() []error {
	var faults []error
	for _, s := range q.Together {
		oneByOne, cost := 0.0, Money(0)
		for _, found := range s.option.Alone {
			alone := AmountOf(s.option.Offer, found)
			faults = append(faults, alone.reckonedAgain(s.option.Offer.Cloth))
			oneByOne += alone.Buy
			if price := s.option.Offer.Price; price != nil {
				cost += price.For(alone.Buy)
			}
		}
		if s.option.FromRemnant {
			cost = s.option.Cost
		}
		if math.Abs(s.OneByOne-oneByOne) > figureTolerance || math.Abs(s.Together-s.option.Amount.Buy) > figureTolerance {
			faults = append(faults,
				fmt.Errorf("%s: one by one %.1f mm are bought, it says %.1f mm", s.Cloth, oneByOne, s.OneByOne))
		}
		faults = append(faults, sameMoney("what is saved", s.Money, cost-s.option.Cost))
	}
	return faults
}

func sameMoney(what string, says, want Money) error {
	if says != want {
		return fmt.Errorf("%s comes to %d, and it says %d", what, want, says)
	}
	return nil
}

// shareOf proves a share of a sum, rounded to the minor unit.
func (q Quote) shareOf(what string, says, of Money, share Share) error {
	if !isNearest(says, of, float64(share), float64(whole)) {
		return fmt.Errorf("%s is %s of %d, and it says %d", what, share, of, says)
	}
	return nil
}
