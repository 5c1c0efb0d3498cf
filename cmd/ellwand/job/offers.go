package job

import (
	"slices"

	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/cloth"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
	"ellwand/pieces/language"
)

// currency of the job; the zero one when it names none.
func (r *resolver) currency() {
	if r.file.Currency == "" {
		return
	}
	currency, err := quote.ParseCurrency(string(r.file.Currency))
	if err != nil {
		r.fault(strict.Top("currency"), strict.Malformed, "currency: %s", "Währung: %s", err)
		return
	}
	r.work.Currency = currency
}

// offers of a cloth: those it lists, or its own price in each of its widths.
func (r *resolver) offers(path Path, c Cloth, offer *Goods) {
	name := language.Say("cloth %s", "Stoff %s", quoted(c.Name))
	offer.Cloth.Safety = r.addition(path.Key("safety"), name.Its("the safety", "Sicherheitszuschlag"), c.Safety,
		cloth.Addition{})
	if c.Minimum != "" {
		offer.Cloth.Minimum, _ = r.length(path.Key("minimum"), name.Its("the minimum", "Mindestmenge"), c.Minimum)
	}
	own := quote.Offer{Name: string(c.Name), Cloth: offer.Cloth}
	own.Price = r.price(path.Key("price"), name.Its("the price", "Preis"), c.Price)
	if own.Price != nil {
		for _, width := range offer.Widths {
			priced := own
			priced.Cloth.Width = width
			if len(offer.Widths) > 1 {
				priced.Name += ", " + r.work.Format(width)
			}
			offer.Offers = append(offer.Offers, priced)
		}
	}
	seen := map[string]bool{}
	for i, listed := range c.Offers {
		at := path.Key("offers").Entry(i)
		if seen[Slug(string(listed.Name))] {
			r.fault(at.Key("name"), strict.Twice, "%s has two offers named %s; give each its own name",
				"%s hat zwei Angebote mit dem Namen %s; geben Sie jedem einen eigenen", name,
				quoted(listed.Name))
		}
		seen[Slug(string(listed.Name))] = true
		r.offered(at, listed, own, offer)
	}
}

// offered resolves one listed offer. What it does not say is as its cloth.
func (r *resolver) offered(path Path, listed Offered, own quote.Offer, into *Goods) {
	if listed.Name == "" {
		r.fault(path, strict.Missing, "the offer has no name; add one, such as: name: Market stall",
			"das Angebot hat keinen Namen; geben Sie ihm einen, etwa: Marktstand")
		return
	}
	name := language.Say("offer %s", "Angebot %s", quoted(listed.Name))
	out := own
	out.Name = string(listed.Name)
	lengths := []struct {
		key, english, german string
		text                 Measure
		into                 *float64
	}{
		{"selvedge", "the selvedge", "Webkante", listed.Selvedge, &out.Cloth.Selvedge},
		{"step", "the step", "Stufe des Ladens", listed.Step, &out.Cloth.PurchaseStep},
		{"minimum", "the minimum", "Mindestmenge", listed.Minimum, &out.Cloth.Minimum},
	}
	for _, l := range lengths {
		if l.text != "" {
			*l.into, _ = r.length(path.Key(l.key), name.Its(l.english, l.german), l.text)
		}
	}
	if listed.Shrinkage != nil || listed.Fibre != "" {
		out.Cloth.Shrinkage = r.shrinkage(path, name, listed.Fibre, listed.Shrinkage)
	}
	if listed.Nap != "" {
		out.Cloth.Nap = choose(r.values, path.Key("nap"), name.Its("the nap", "Strich"), listed.Nap)
	}
	if price := r.price(path.Key("price"), name.Its("the price", "Preis"), listed.Price); price != nil {
		out.Price = price
	}
	r.remnant(path, name, listed, &out)
	if out.Remnant != nil && !into.Straightened {
		out.Remnant.Straighten = plan.LeastStraightening
	}
	if out.Price == nil && out.Remnant == nil && listed.Price == "" {
		r.fault(path, strict.Missing, "%s has no price; add price (of a metre or yard), or remnant and remnant_price",
			"%s hat keinen Preis; geben Sie einen je Meter oder Yard an, oder Länge und Preis eines "+
				"Rests", name)
	}
	widths := Goods{Cloth: out.Cloth}
	if listed.Width == "" && len(into.Widths) == 1 {
		widths.Widths = into.Widths
	} else {
		r.width(&widths, path.Key("width"), name, listed.Width)
	}
	for _, width := range widths.Widths {
		out.Cloth.Width = width
		into.Offers = append(into.Offers, out)
	}
}

func (r *resolver) remnant(path Path, name language.Sentence, listed Offered, out *quote.Offer) {
	switch {
	case listed.Remnant == "" && listed.RemnantPrice == "":
		return
	case listed.Remnant == "":
		r.fault(path.Key("remnant_price"), strict.Missing,
			"%s has a remnant_price without the length of the remnant; "+
				"add remnant", "%s hat den Preis eines Rests, aber nicht dessen Länge; geben Sie sie an",
			name)
		return
	}
	length, longEnough := r.positive(path.Key("remnant"), name.Its("the remnant", "Rest"), listed.Remnant)
	price, priced := r.money(path.Key("remnant_price"), name.Its("the remnant_price", "Preis des Rests"),
		listed.RemnantPrice)
	if longEnough && priced {
		out.Remnant = &quote.Remnant{Length: length, Price: price}
	}
}

// offeredWidths are the widths of a cloth's offers, each once.
func offeredWidths(offers []quote.Offer) []float64 {
	var out []float64
	for _, offer := range offers {
		if !slices.Contains(out, offer.Cloth.Width) {
			out = append(out, offer.Cloth.Width)
		}
	}
	return out
}
