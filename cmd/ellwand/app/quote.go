package app

import (
	"context"
	"fmt"
	"slices"
	"strings"
	"time"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/quote"
)

// Quoted is a quote in the making: what it asks, all but the cloths.
type Quoted struct {
	work    *job.Work
	cloths  []job.Offer
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
		return nil, fmt.Errorf("%s: %w", work.File, err)
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
		request.Cloths = append(request.Cloths, quote.ClothRequest{Cloth: cloth.Cloth, Option: cloth.Options[0]})
	}
	reckoned, err := quote.Of(request)
	if err != nil {
		return quote.Quote{}, fmt.Errorf("%s: %w", q.work.File, err)
	}
	return reckoned, nil
}

// IsPriced reports whether a job can be quoted on one of several offers.
func IsPriced(work *job.Work) bool {
	several := false
	for _, cloth := range work.Cloths {
		if len(cloth.Offers) == 0 {
			return false
		}
		several = several || len(cloth.Offers) > 1
	}
	return several
}

// QuotedOn gives each cloth of a job as the offer has it on which it is quoted: the
// cheapest, or of those named the cheapest.
func QuotedOn(ctx context.Context, work *job.Work, offers []string, search Search, watch Watch) ([]cloth.Cloth, error) {
	cloths, err := quotedCloths(work, offers)
	if err != nil {
		return nil, err
	}
	ranked, err := Compare(ctx, work, cloths, search, watch)
	if err != nil {
		return nil, err
	}
	var out []cloth.Cloth
	for _, one := range ranked.Cloths {
		c := one.Options[0].Offer.Cloth
		c.Name = one.Cloth
		out = append(out, c)
	}
	return out, nil
}

// quotedCloths gives every cloth of a job with the offers to choose from. Each
// needs a price.
func quotedCloths(work *job.Work, wanted []string) ([]job.Offer, error) {
	var out []job.Offer
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
