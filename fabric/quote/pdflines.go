package quote

import "ellwand/pieces/safety"

// groupHeads name the groups on the sheet, in their order.
var groupHeads = []struct {
	group Group
	head  string
}{{Cloth, "Cloth"}, {Notions, "Notions"}, {Making, "Making"}}

// columns are the right ends of the amounts, prices and costs.
func (p *quotePage) columns() (amount, each, cost float64) {
	right := p.Right()
	return right - 62, right - 26, right
}

func (p *quotePage) table() {
	amount, each, cost := p.columns()
	p.plain(7.5)
	p.Ink(midGrey)
	p.endAt(amount, "amount")
	p.endAt(each, "price")
	p.endAt(cost, p.quote.Currency.Code())
	p.Ink(0)
	p.down(1.8)
	p.rule(0.2, midGrey)
	for _, g := range groupHeads {
		p.group(g.group, g.head)
	}
}

func (p *quotePage) group(group Group, head string) {
	first := true
	for _, line := range p.quote.Lines {
		if line.Group != group {
			continue
		}
		if first {
			p.down(6)
			p.bold(9)
			p.at(edge, head)
			first = false
		}
		p.line(line)
	}
	if !first {
		p.down(2.6)
		p.rule(0.1, 190)
	}
}

// line draws one priced line; a text too long for its column is broken, and
// the notes follow small.
func (p *quotePage) line(line Line) {
	amount, each, cost := p.columns()
	p.down(4.9)
	p.plain(9)
	p.endAt(cost, p.quote.Currency.Format(line.Cost))
	p.endAt(each, line.Each)
	p.endAt(amount, line.Amount)
	textWidth := amount - edge - p.TextWidth(line.Amount) - 4
	for i, text := range p.Wrapped(capital(line.Text), textWidth) {
		if i > 0 {
			p.down(4.2)
		}
		p.at(edge, text)
	}
	p.plain(6.8)
	p.Ink(midGrey)
	for _, note := range line.Notes {
		for _, text := range p.Wrapped(note, amount-edge) {
			p.down(3.3)
			p.at(edge, text)
		}
	}
	p.Ink(0)
}

// totals are the sums at the right, the total between two rules.
func (p *quotePage) totals() {
	_, each, cost := p.columns()
	left := each - 34
	row := func(label string, m Money) {
		p.down(5.2)
		p.at(left, label)
		p.endAt(cost, p.quote.Currency.Format(m))
	}
	p.down(1)
	p.plain(9)
	tax := p.quote.Tax
	if tax != nil && !tax.Included {
		row("Sum", p.quote.Subtotal)
		row(tax.Name+" "+tax.Rate.String(), p.quote.TaxSum)
	}
	p.down(2.4)
	p.Rule(left, p.Right(), 0.6, 0)
	p.down(6)
	p.bold(13)
	p.at(left, "Total "+p.quote.Currency.Code())
	p.endAt(cost, p.quote.Currency.Format(p.quote.Total))
	p.down(2.4)
	p.Rule(left, p.Right(), 0.6, 0)
	p.down(0.8)
	p.plain(9)
	if tax != nil && tax.Included {
		row(tax.Name+" "+tax.Rate.String()+", included", p.quote.TaxSum)
	}
	if p.quote.Deposit > 0 {
		row("Deposit, "+p.quote.Deposit.String(), p.quote.DepositSum)
		row("Balance on delivery", p.quote.Balance)
	}
}

// remarks are what laying together saves, and the terms.
func (p *quotePage) remarks() {
	width := p.Width - 2*edge
	p.down(6)
	paragraph := func(text string) {
		for _, line := range p.Wrapped(text, width) {
			p.down(4.1)
			p.at(edge, line)
		}
		p.down(1.2)
	}
	p.plain(8)
	for _, saving := range p.quote.Together {
		paragraph(capital(saving.Say(p.quote.Currency, p.quote.Units)) + ".")
	}
	if p.quote.Ended.Early {
		paragraph(p.quote.Ended.Say())
	}
	p.down(6.5)
	p.bold(9)
	p.at(edge, "Terms")
	p.down(0.6)
	p.plain(8)
	for _, text := range p.quote.Terms {
		paragraph(text)
	}
	paragraph(safety.Law)
	if marks := p.quote.marks(); marks != "" {
		p.plain(6.8)
		p.Ink(midGrey)
		paragraph(marks)
		p.Ink(0)
	}
}
