package main

import (
	"fmt"
	"strings"
	"time"

	"ellwand/cmd/ellwand/screen"
	"ellwand/fabric/quote"
)

func (e *env) printQuote(q quote.Quote) {
	title := q.Job
	if q.Client != "" {
		title += " for " + q.Client
	}
	fmt.Fprintf(e.out, "%s\n%s\n\n", title, strings.Join(datesOf(q), ", "))
	t := screen.Table("", "", "amount", "price", q.Currency.Code())
	var group quote.Group
	for _, line := range q.Lines {
		head := ""
		if line.Group != group {
			group, head = line.Group, string(line.Group)
		}
		t.AppendRow(screen.Row(head, line.Text, line.Amount, line.Each, q.Currency.Format(line.Cost)))
	}
	sums := func(label string, m quote.Money) { t.AppendRow(screen.Row("", label, "", "", q.Currency.Format(m))) }
	if q.Tax != nil && !q.Tax.Included {
		sums("sum", q.Subtotal)
		sums(q.Tax.Name+" "+q.Tax.Rate.String(), q.TaxSum)
	}
	sums("total", q.Total)
	if q.Tax != nil && q.Tax.Included {
		sums(q.Tax.Name+" "+q.Tax.Rate.String()+", included", q.TaxSum)
	}
	if q.Deposit > 0 {
		sums("deposit, "+q.Deposit.String(), q.DepositSum)
		sums("balance", q.Balance)
	}
	fmt.Fprintln(e.out, t.Render())
	for _, cloth := range q.Cloths {
		fmt.Fprintf(e.out, "%s rests on: %s\n", cloth.Cloth, cloth.Option.Amount.RestsOn(q.Units))
	}
	for _, saving := range q.Together {
		fmt.Fprintln(e.out, saving.Say(q.Currency, q.Units))
	}
}

func datesOf(q quote.Quote) []string {
	var out []string
	if q.Number != "" {
		out = append(out, "quote "+q.Number)
	}
	out = append(out, q.Date.Format(time.DateOnly))
	if !q.ValidUntil.IsZero() {
		out = append(out, "valid until "+q.ValidUntil.Format(time.DateOnly))
	}
	return out
}

// quoteReport is what quote prints as JSON. Money is text, so that no reader
// makes a float of it.
type quoteReport struct {
	Number     string         `json:"number,omitempty"`
	Job        string         `json:"job"`
	Client     string         `json:"client,omitempty"`
	Date       string         `json:"date"`
	ValidUntil string         `json:"valid_until,omitempty"`
	Currency   string         `json:"currency"`
	Lines      []lineReport   `json:"lines"`
	Subtotal   string         `json:"subtotal"`
	Tax        *taxReport     `json:"tax,omitempty"`
	Total      string         `json:"total"`
	Deposit    string         `json:"deposit"`
	Balance    string         `json:"balance"`
	Cloths     []boughtReport `json:"cloths"`
}

type lineReport struct {
	Group  string `json:"group"`
	Text   string `json:"text"`
	Amount string `json:"amount,omitempty"`
	Price  string `json:"price,omitempty"`
	Cost   string `json:"cost"`
}

type taxReport struct {
	Name     string `json:"name"`
	Rate     string `json:"rate"`
	Included bool   `json:"included"`
	Sum      string `json:"sum"`
}

// boughtReport is a cloth as it is bought. OneByOneMM is what the garments
// would take if each were bought for by itself.
type boughtReport struct {
	Cloth      string       `json:"cloth"`
	Option     optionReport `json:"option"`
	OneByOneMM float64      `json:"one_by_one_mm,omitempty"`
	SavedMM    float64      `json:"saved_mm,omitempty"`
	Saved      string       `json:"saved,omitempty"`
}

func quoteReportOf(q quote.Quote) quoteReport {
	money := q.Currency.Plain
	out := quoteReport{
		Number: q.Number, Job: q.Job, Client: q.Client, Date: q.Date.Format(time.DateOnly), Currency: q.Currency.Code(),
		Subtotal: money(q.Subtotal), Total: money(q.Total), Deposit: money(q.DepositSum), Balance: money(q.Balance),
	}
	if !q.ValidUntil.IsZero() {
		out.ValidUntil = q.ValidUntil.Format(time.DateOnly)
	}
	for _, line := range q.Lines {
		out.Lines = append(out.Lines, lineReport{string(line.Group), line.Text, line.Amount, line.Each, money(line.Cost)})
	}
	if q.Tax != nil {
		out.Tax = &taxReport{q.Tax.Name, q.Tax.Rate.String(), q.Tax.Included, money(q.TaxSum)}
	}
	for _, cloth := range q.Cloths {
		report := boughtReport{Cloth: cloth.Cloth, Option: optionOf(q.Currency, cloth.Option)}
		for _, saving := range q.Together {
			if saving.Cloth == cloth.Cloth {
				report.OneByOneMM, report.SavedMM = tidy(saving.OneByOne), tidy(saving.OneByOne-saving.Together)
				report.Saved = money(saving.Money)
			}
		}
		out.Cloths = append(out.Cloths, report)
	}
	return out
}
