package job

import (
	"regexp"
	"strings"

	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/cloth"
	"ellwand/fabric/quote"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
)

// money parses an amount of the job's currency.
func (r *resolver) money(path Path, what language.Sentence, text Text) (quote.Money, bool) {
	switch {
	case text == "":
		r.fault(path, strict.Missing, "%s is missing; add it", "%s fehlt", what)
		return 0, false
	case r.work.Currency.Code() == "":
		if r.file.Currency == "" {
			r.fault(path, strict.Missing, "%s is in no currency; add a line at the top level, such as: currency: EUR",
				"%s: die Währung fehlt; wählen Sie eine, etwa EUR", what)
		}
		return 0, false
	}
	amount, err := r.work.Currency.Parse(string(text))
	if err != nil {
		r.fault(path, strict.Malformed, "%s: %s", "%s: %s", what, err)
		return 0, false
	}
	return amount, true
}

// share parses a percentage; 0 when it is not given.
func (r *resolver) share(path Path, what language.Sentence, text Text) quote.Share {
	if text == "" {
		return 0
	}
	share, err := quote.ParseShare(string(text))
	if err != nil {
		r.fault(path, strict.Malformed, "%s: %s", "%s: %s", what, err)
	}
	return share
}

// priceForm parts an amount from the unit that it buys.
var priceForm = regexp.MustCompile(`(?i)^(.*?)\s*(?:/|\bper\b|\ba\b)\s*([a-z]+)$`)

// price parses the price of a metre or yard; nil when it is not given.
func (r *resolver) price(path Path, what language.Sentence, text Text) *quote.Price {
	if text == "" {
		return nil
	}
	per, amount := measure.Yard, string(text)
	if !r.work.InInches() {
		per = measure.Metre
	}
	if parts := priceForm.FindStringSubmatch(amount); parts != nil {
		unit, err := measure.ParseUnit(parts[2])
		if err != nil || unit != measure.Metre && unit != measure.Yard {
			r.fault(path, strict.Malformed,
				"%s is %q; cloth is priced by the metre or the yard: write 18.50, 18.50 per m or 18.50 per yd",
				"%s: %q geht nicht; Stoff kostet je Meter oder Yard: schreiben Sie 18.50, 18.50 per m oder "+
					"18.50 per yd", what, string(text))
			return nil
		}
		per, amount = unit, parts[1]
	}
	money, ok := r.money(path, what, Text(amount))
	if !ok {
		return nil
	}
	return &quote.Price{Money: money, Per: per}
}

// addition parses a percentage, a length, or none.
func (r *resolver) addition(path Path, what language.Sentence, text Text, usual cloth.Addition) cloth.Addition {
	switch {
	case text == "":
		return usual
	case strict.MeansNone(string(text)):
		return cloth.Addition{}
	case strings.Contains(string(text), "%"):
		return cloth.Addition{Share: r.share(path, what, text).Fraction()}
	}
	length, _ := r.length(path, language.Say("%s (a percentage such as 5 %%, a length, or none)",
		"%s (ein Prozentsatz wie 5 %%, eine Länge, oder none)", what), Measure(text))
	return cloth.Addition{Length: length}
}
