package quote

import (
	"ellwand/pieces/drawing"
)

// groupHeads name the groups on the sheet, in their order.
var groupHeads = []struct {
	group Group
	head  string
}{{Cloth, "Cloth"}, {Notions, "Notions"}, {Making, "Making"}}

// columns are the right ends of the amounts, prices and costs.
func (p *page) columns() (amount, each, cost float64) {
	right := p.width - edge
	return right - 62, right - 26, right
}

func (p *page) table() {
	amount, each, cost := p.columns()
	p.font("", 7.5)
	p.ink(midGrey)
	p.endAt(amount, "amount")
	p.endAt(each, "price")
	p.endAt(cost, p.quote.Currency.Code())
	p.ink(0)
	p.down(1.8)
	p.rule(0.2, midGrey)
	for _, g := range groupHeads {
		p.group(g.group, g.head)
	}
}

func (p *page) group(group Group, head string) {
	first := true
	for _, line := range p.quote.Lines {
		if line.Group != group {
			continue
		}
		if first {
			p.down(6)
			p.font("B", 9)
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
func (p *page) line(line Line) {
	amount, each, cost := p.columns()
	p.down(4.9)
	p.font("", 9)
	p.endAt(cost, p.quote.Currency.Format(line.Cost))
	p.endAt(each, line.Each)
	amountText := drawing.Printable(line.Amount)
	p.endAt(amount, line.Amount)
	textWidth := amount - edge - p.pdf.GetStringWidth(amountText) - 4
	for i, text := range p.lines(capital(line.Text), textWidth) {
		if i > 0 {
			p.down(4.2)
		}
		p.at(edge, text)
	}
	p.font("", 6.8)
	p.ink(midGrey)
	for _, note := range line.Notes {
		for _, text := range p.lines(note, amount-edge) {
			p.down(3.3)
			p.at(edge, text)
		}
	}
	p.ink(0)
}

// totals are the sums at the right, the total between two rules.
func (p *page) totals() {
	_, each, cost := p.columns()
	left := each - 34
	row := func(label string, m Money) {
		p.down(5.2)
		p.at(left, label)
		p.endAt(cost, p.quote.Currency.Format(m))
	}
	p.down(1)
	p.font("", 9)
	tax := p.quote.Tax
	if tax != nil && !tax.Included {
		row("Sum", p.quote.Subtotal)
		row(tax.Name+" "+tax.Rate.String(), p.quote.TaxSum)
	}
	p.down(2.4)
	p.ruleFrom(left, 0.6)
	p.down(6)
	p.font("B", 13)
	p.at(left, "Total "+p.quote.Currency.Code())
	p.endAt(cost, p.quote.Currency.Format(p.quote.Total))
	p.down(2.4)
	p.ruleFrom(left, 0.6)
	p.down(0.8)
	p.font("", 9)
	if tax != nil && tax.Included {
		row(tax.Name+" "+tax.Rate.String()+", included", p.quote.TaxSum)
	}
	if p.quote.Deposit > 0 {
		row("Deposit, "+p.quote.Deposit.String(), p.quote.DepositSum)
		row("Balance on delivery", p.quote.Balance)
	}
}

// remarks are what laying together saves, and the terms.
func (p *page) remarks() {
	width := p.width - 2*edge
	p.down(6)
	paragraph := func(text string) {
		for _, line := range p.lines(text, width) {
			p.down(4.1)
			p.at(edge, line)
		}
		p.down(1.2)
	}
	p.font("", 8)
	for _, saving := range p.quote.Together {
		paragraph(capital(saving.Say(p.quote.Currency, p.quote.Units)) + ".")
	}
	if len(p.quote.Terms) == 0 {
		return
	}
	p.down(6.5)
	p.font("B", 9)
	p.at(edge, "Terms")
	p.down(0.6)
	p.font("", 8)
	for _, text := range p.quote.Terms {
		paragraph(text)
	}
}
