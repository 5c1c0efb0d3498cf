package screen

import (
	"fmt"
	"io"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/words"
	"ellwand/fabric/quote"
)

// Comparison prints the offers of each cloth, ranked.
func Comparison(w io.Writer, work *job.Work, ranked app.Compared) {
	fmt.Fprintln(w, work.Title())
	for _, cloth := range ranked.Cloths {
		printRanked(w, work, cloth)
	}
}

func printRanked(w io.Writer, work *job.Work, cloth app.Ranked) {
	units := app.Units(work)
	fmt.Fprintf(w, "\n%s\n", cloth.Cloth)
	t := Table("offer", "width", "price", "to buy", "cost "+work.Currency.Code(), "left over", "lay")
	for _, option := range cloth.Options {
		if option.Refused != "" {
			continue
		}
		shown := option.Shown(work.Currency, units)
		t.AppendRow(Row(nameOf(option), shown.Width, shown.Price, shown.Bought, shown.Cost, shown.LeftOver,
			option.Amount.Lay))
	}
	fmt.Fprintln(w, t.In(w))
	for _, sentence := range quote.Why(cloth.Options, work.Currency, units) {
		fmt.Fprintln(w, sentence)
	}
	for _, option := range cloth.Options {
		if option.Refused != "" {
			fmt.Fprintf(w, "%s: not possible: %s\n", nameOf(option), option.Refused)
		} else if !option.FromRemnant {
			fmt.Fprintf(w, "%s rests on: %s%s\n", option.Offer.Name, option.Amount.RestsOn(units), kept(option.Amount))
		}
	}
}

// kept says of an amount that an earlier search found its lay.
func kept(a quote.Amount) string {
	if !a.Kept {
		return ""
	}
	return ". " + words.Kept
}

func nameOf(option quote.Option) string {
	if option.FromRemnant {
		return option.Offer.Name + ", remnant"
	}
	return option.Offer.Name
}
