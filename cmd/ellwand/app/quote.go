package app

import (
	"context"
	"fmt"
	"slices"
	"strings"
	"time"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/quote"
	"ellwand/fabric/words"
)

// Quoted is a quote in the making: what it asks, all but the cloths.
type Quoted struct {
	work    *job.Work
	cloths  []job.Goods
	request quote.Request
}

// PrepareQuote gathers all of a quote but its cloths, which Reckon lays. The
// offers named are taken in place of the cheapest; today dates a quote that has
// no date. What is wrong with the job is said here, before any search.
func PrepareQuote(work *job.Work, offers []string, today time.Time) (*Quoted, error) {
	cloths, err := quotedCloths(work, offers)
	if err != nil {
		return nil, err
	}
	request := quoteRequest(work, today)
	if _, err := quote.Of(request); err != nil {
		return nil, fmt.Errorf("%s: %w", work.File, blamed(err))
	}
	return &Quoted{work: work, cloths: cloths, request: request}, nil
}

// Reckon lays the pieces on each cloth, and takes the cheapest offer of each.
func (q *Quoted) Reckon(ctx context.Context, search Search, watch Watch) (quote.Quote, error) {
	ranked, err := Compare(ctx, q.work, q.cloths, search, watch)
	if err != nil {
		return quote.Quote{}, err
	}
	request := q.request
	request.Ended = ranked.Ended
	for _, cloth := range ranked.Cloths {
		asked := quote.ClothRequest{Cloth: cloth.Cloth, Option: cloth.Options[0]}
		if rough := words.Rough(q.work.PiecesOf(cloth.Cloth), q.work.Unit.System().Accuracy); rough != "" {
			asked.Notes = []string{rough}
		}
		request.Cloths = append(request.Cloths, asked)
	}
	reckoned, err := quote.Of(request)
	if err != nil {
		return quote.Quote{}, fmt.Errorf("%s: %w", q.work.File, blamed(err))
	}
	remember(q.work, search, request.Cloths)
	return reckoned, nil
}

// IsPriced reports whether every cloth of a job has a price, so that it can be quoted;
// several, whether one of them has more than one offer.
func IsPriced(work *job.Work) (priced, several bool) {
	for _, cloth := range work.Cloths {
		if len(cloth.Offers) == 0 {
			return false, false
		}
		several = several || len(cloth.Offers) > 1
	}
	return true, several
}

// QuotedOn gives the plan of each cloth of a job as it is quoted: on the cheapest offer,
// or of those named the cheapest; without names, on the offer that it was last quoted on.
// With the name of a cloth it gives that one's alone.
func QuotedOn(ctx context.Context, work *job.Work, only string, offers []string, search Search,
	watch Watch) ([]Estimated, error) {
	if len(offers) == 0 {
		offers = offersQuoted(work, search)
	}
	cloths, err := quotedCloths(work, offers)
	if err != nil {
		return nil, err
	}
	cloths = slices.DeleteFunc(cloths, func(o job.Goods) bool { return !isClothNamed(only, o.Cloth.Name) })
	ranked, err := Compare(ctx, work, cloths, search, watch)
	if err != nil {
		return nil, err
	}
	var out []Estimated
	for _, one := range ranked.Cloths {
		option := one.Options[0]
		if option.Refused != "" {
			return nil, fmt.Errorf("%s: cloth %q: %s", work.AtCloth(one.Cloth), one.Cloth, option.Refused)
		}
		out = append(out, one.needs[keyOf(option.Offer)].named(one.Cloth))
	}
	return out, nil
}

// offersQuoted are those that a job was last quoted on, as far as it still has them.
func offersQuoted(work *job.Work, search Search) []string {
	quoted := quotedBefore(work, search)
	var out []string
	for _, cloth := range work.Cloths {
		for _, offer := range cloth.Offers {
			if was, ok := quoted[cloth.Cloth.Name]; ok && was.Offer == offer.Name {
				out = append(out, offer.Name)
			}
		}
	}
	return out
}

// named gives all plans the name of their cloth, which plays no part in a search.
func (e Estimated) named(cloth string) Estimated {
	e.Cloth.Name = cloth
	e.Lays = slices.Clone(e.Lays)
	for i := range e.Lays {
		e.Lays[i].Cloth.Name = cloth
		if e.Lays[i].Throughout != nil {
			one := *e.Lays[i].Throughout
			one.Cloth.Name = cloth
			e.Lays[i].Throughout = &one
		}
	}
	return e
}

// quotedCloths gives every cloth of a job with the offers to choose from. Each
// needs a price.
func quotedCloths(work *job.Work, wanted []string) ([]job.Goods, error) {
	var out []job.Goods
	var names []string
	for _, cloth := range work.Cloths {
		if len(cloth.Offers) == 0 {
			return nil, refuseAt(work.AtCloth(cloth.Cloth.Name), "cloth %q has no price; add currency: at the top level, "+
				"and to the cloth a price such as: price: 18.50", cloth.Cloth.Name)
		}
		var chosen []quote.Offer
		for _, offer := range cloth.Offers {
			names = append(names, offer.Name)
			if isNamed(wanted, offer.Name) {
				chosen = append(chosen, offer)
			}
		}
		if len(chosen) > 0 {
			cloth.Offers = chosen
		}
		out = append(out, cloth)
	}
	for _, name := range wanted {
		if !isNamed(names, name) {
			return nil, refuse("%s %q: the job has no such offer; it has: %s", ArgumentOffer, name, strings.Join(names, "; "))
		}
	}
	return out, nil
}

func isNamed(list []string, name string) bool {
	return slices.ContainsFunc(list, func(other string) bool { return strings.EqualFold(other, name) })
}

// quoteRequest is all of a quote but its cloths.
func quoteRequest(work *job.Work, today time.Time) quote.Request {
	out := work.Quote
	out.Job, out.Client, out.Currency, out.Units = work.Name, work.Client, work.Currency, Units(work)
	if out.Date.IsZero() {
		out.Date = today.Truncate(24 * time.Hour)
	}
	if work.ValidDays > 0 {
		out.ValidUntil = out.Date.AddDate(0, 0, work.ValidDays)
	}
	for _, made := range work.Garments {
		out.Garments = append(out.Garments, quote.Garment{Name: made.Kind, Wearer: made.Wearer, Quantity: made.Quantity,
			Pieces: made.Pieces})
	}
	return out
}
