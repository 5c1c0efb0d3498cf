package screen

import (
	"fmt"
	"io"
	"strings"
	"time"

	"ellwand/cmd/ellwand/words"
	"ellwand/fabric/quote"
)

// Quote prints a quote as its maker reads it.
func Quote(w io.Writer, q quote.Quote) {
	title := q.Job
	if q.Client != "" {
		title += " for " + q.Client
	}
	fmt.Fprintf(w, "%s\n%s\n", title, strings.Join(datesOf(q), ", "))
	fmt.Fprintf(w, "%s. In all %s %s.\n\n", toBuy(q), q.Currency.Format(q.Total), q.Currency.Code())
	t := Table("", "", "amount", "price", q.Currency.Code())
	var group quote.Group
	for _, line := range q.Lines {
		head := ""
		if line.Group != group {
			group, head = line.Group, string(line.Group)
		}
		t.AppendRow(Row(head, line.Text, line.Amount, line.Each, q.Currency.Format(line.Cost)))
	}
	sums := func(label string, m quote.Money) { t.AppendRow(Row("", label, "", "", q.Currency.Format(m))) }
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
	fmt.Fprintln(w, t.In(w))
	for _, cloth := range q.Cloths {
		fmt.Fprintf(w, "%s rests on: %s%s\n", cloth.Cloth, cloth.Option.Amount.RestsOn(q.Units), kept(cloth.Option.Amount))
	}
	for _, cloth := range q.Cloths {
		if r := cloth.Option.Range; r.High > r.Low {
			fmt.Fprintf(w, "%s: %s, for what is not measured; ellwand estimate says what would narrow it\n", cloth.Cloth,
				words.Between(cloth.Option.Offer.Cloth, r))
		}
	}
	for _, cloth := range q.Cloths {
		if amount := cloth.Option.Amount; amount.Mark != "" {
			fmt.Fprintf(w, "plan of the %s: %s on %s, mark %s\n", cloth.Cloth, amount.Lay, cloth.Option.Offer.Name, amount.Mark)
		}
	}
	for _, saving := range q.Together {
		fmt.Fprintln(w, saving.Say(q.Currency, q.Units))
	}
}

// toBuy says how much of each cloth to buy: "Buy 5.00 m of Crepe, 150 cm wide".
func toBuy(q quote.Quote) string {
	var out []string
	for _, cloth := range q.Cloths {
		offer := cloth.Option.Offer
		out = append(out, fmt.Sprintf("%s of %s, %s wide", q.Units.Bought(offer.Cloth, cloth.Option.Bought),
			nameOf(cloth.Option), q.Units.Short(offer.Cloth.Width)))
	}
	return "Buy " + strings.Join(out, ", and ")
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
