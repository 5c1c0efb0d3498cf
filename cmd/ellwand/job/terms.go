package job

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/quote"
	"ellwand/pieces/language"
)

// quote resolves what a quote says beside the cloths and garments; nil when
// the job says nothing of it.
func (r *resolver) quote() {
	asked := r.file.Quote
	if asked == nil {
		asked = &Quote{}
	}
	if asked.Rate != "" {
		r.rate, r.isRated = r.money(strict.Top("quote").Key("rate"), language.Say("the rate", "Stundensatz"),
			asked.Rate)
	}
	out := &r.work.Quote
	out.Number = string(asked.Number)
	for _, line := range asked.Maker {
		out.Maker = append(out.Maker, string(line))
	}
	for _, paragraph := range asked.Terms {
		out.Terms = append(out.Terms, string(paragraph))
	}
	r.dates(asked)
	out.Margin = r.share(strict.Top("quote").Key("margin"), language.Say("the margin", "Aufschlag"), asked.Margin)
	out.Deposit = r.share(strict.Top("quote").Key("deposit"), language.Say("the deposit", "Anzahlung"), asked.Deposit)
	if out.Deposit > 1_000_000 {
		r.fault(strict.Top("quote").Key("deposit"), strict.OutOfRange,
			"the deposit is %s; it cannot be more than the "+
				"whole", "die Anzahlung ist %s; mehr als das Ganze geht nicht", out.Deposit)
	}
	if asked.Tax != nil {
		out.Tax = &quote.Tax{Name: "tax", Rate: r.share(strict.Top("quote").Key("tax").Key("rate"),
			language.Say("the rate of the tax",
				"Steuersatz"),
			asked.Tax.Rate),
			Included: r.yes(strict.Top("quote").Key("tax").Key("included"), language.Say("included",
				"enthalten"), asked.Tax.Included)}
		if asked.Tax.Name != "" {
			out.Tax.Name = string(asked.Tax.Name)
		}
		if asked.Tax.Rate == "" {
			r.fault(strict.Top("quote").Key("tax"), strict.Missing,
				"the tax has no rate; add one, such as: rate: 21 %%",
				"die Steuer hat keinen Satz; geben Sie einen an, etwa 21 %%")
		}
	}
	for i, garment := range r.file.Garments {
		path := strict.Top("garments").Entry(i)
		times := r.timesMade(string(garment.Name))
		if times == 0 {
			continue
		}
		r.notions(path.Key("notions"), garment.Notions, times)
		if garment.Making != nil {
			r.making(path.Key("making"), string(garment.Name), *garment.Making, times)
		}
	}
	r.notions(strict.Top("quote").Key("notions"), asked.Notions, 1)
	for i, work := range asked.Making {
		r.making(strict.Top("quote").Key("making").Entry(i), "Making", work, 1)
	}
}

func (r *resolver) dates(asked *Quote) {
	out := &r.work.Quote
	out.Date = r.date(strict.Top("quote").Key("date"), language.Say("the date", "Datum"), asked.Date)
	out.ValidUntil = r.date(strict.Top("quote").Key("valid_until"), language.Say("valid_until", "Gültig bis"),
		asked.ValidUntil)
	if !out.Date.IsZero() && !out.ValidUntil.IsZero() && out.ValidUntil.Before(out.Date) {
		r.fault(strict.Top("quote").Key("valid_until"), strict.OutOfRange,
			"the quote is valid until %s, before its own "+
				"date, %s", "das Angebot gilt bis %s, vor seinem eigenen Datum, %s",
			out.ValidUntil.Format(time.DateOnly), out.Date.Format(time.DateOnly))
	}
	if asked.ValidDays == "" {
		return
	}
	if asked.ValidUntil != "" {
		r.fault(strict.Top("quote").Key("valid_days"), strict.Contradiction,
			"the quote has both valid_until and valid_days; keep one of them",
			"das Angebot hat einen letzten Tag und dazu eine Anzahl von Tagen; behalten Sie eines von "+
				"beidem")
		return
	}
	r.work.ValidDays = r.count(strict.Top("quote").Key("valid_days"), language.Say("valid_days",
		"Gültig für Tage"), asked.ValidDays)
}

func (r *resolver) date(path Path, what language.Sentence, text Text) time.Time {
	if text == "" {
		return time.Time{}
	}
	day, err := time.Parse(time.DateOnly, string(text))
	if err != nil {
		r.fault(path, strict.Malformed, "%s is %q; write year-month-day, such as 2026-04-30",
			"%s: %q geht nicht; schreiben Sie Jahr-Monat-Tag, etwa 2026-04-30", what, string(text))
	}
	return day
}

// timesMade is how many garments of a kind are made, for all wearers.
func (r *resolver) timesMade(kind string) int {
	times := 0
	for _, made := range r.work.Garments {
		if made.Kind == kind {
			times += made.Quantity
		}
	}
	return times
}

// notions adds what a number of garments take; the same notion at the same
// price is one line.
func (r *resolver) notions(path Path, list []Notion, times int) {
	for i, notion := range list {
		at := path.Entry(i)
		if notion.Name == "" {
			r.fault(at, strict.Missing, "the notion has no name; add one, such as: name: zip 55 cm",
				"die Zutat hat keinen Namen; geben Sie ihr einen, etwa: Reißverschluss 55 cm")
			continue
		}
		count := r.count(at.Key("count"), language.Say("the count of %s", "Anzahl von %s", quoted(notion.Name)),
			notion.Count) * times
		price, ok := r.money(at.Key("price"), language.Say("the price of %s", "Preis von %s",
			quoted(notion.Name)), notion.Price)
		if !ok {
			continue
		}
		r.addNotion(quote.Notion{Name: string(notion.Name), Count: count, Price: price})
	}
}

func (r *resolver) addNotion(notion quote.Notion) {
	for i, other := range r.work.Quote.Notions {
		if other.Name == notion.Name && other.Price == notion.Price {
			r.work.Quote.Notions[i].Count += notion.Count
			return
		}
	}
	r.work.Quote.Notions = append(r.work.Quote.Notions, notion)
}

// making adds work that is done a number of times.
func (r *resolver) making(path Path, name string, asked Making, times int) {
	if asked.Name != "" {
		name = string(asked.Name)
	}
	if times > 1 {
		name = fmt.Sprintf("%s (%d)", name, times)
	}
	out := quote.Work{Name: name}
	switch {
	case asked.Hours != "" && asked.Sum != "":
		r.fault(path.Key("sum"), strict.Contradiction, "the making has both hours and a sum; keep one of them",
			"die Anfertigung hat Stunden und dazu eine Summe; behalten Sie eines von beidem")
	case asked.Hours != "":
		minutes, ok := minutesOf(string(asked.Hours))
		if !ok {
			r.fault(path.Key("hours"), strict.Malformed, "the hours are %q; write them such as 6.5 or 6:30",
				"Stunden: %q geht nicht; schreiben Sie sie wie 6.5 oder 6:30", string(asked.Hours))
		}
		out.Minutes, out.PerHour = minutes*times, r.rate
		if asked.Rate != "" || !r.isRated {
			out.PerHour, _ = r.money(path.Key("rate"), language.Say("the rate of the making",
				"Satz der Anfertigung"), asked.Rate)
		}
	case asked.Sum != "":
		sum, _ := r.money(path.Key("sum"), language.Say("the sum of the making", "Summe der Anfertigung"), asked.Sum)
		out.Sum = sum.Times(times)
	default:
		r.fault(path, strict.Missing, "the making has neither hours nor a sum; add one of them",
			"die Anfertigung hat weder Stunden noch eine Summe; geben Sie eines davon an")
	}
	r.work.Quote.Making = append(r.work.Quote.Making, out)
}

// minutesOf reads hours: "6", "6.5", "6,25" or "6:30", to the minute.
func minutesOf(text string) (int, bool) {
	whole, minutes, found := strings.Cut(text, ":")
	if found {
		h, err := strconv.Atoi(strings.TrimSpace(whole))
		m, other := strconv.Atoi(strings.TrimSpace(minutes))
		return 60*h + m, err == nil && other == nil && h >= 0 && h <= strict.MostCount && m >= 0 && m < 60 && h+m > 0
	}
	hours, err := strconv.ParseFloat(strings.Replace(strings.TrimSpace(text), ",", ".", 1), 64)
	if err != nil || !(hours > 0 && hours <= strict.MostCount) {
		return 0, false
	}
	return int(math.Round(hours * 60)), true
}
