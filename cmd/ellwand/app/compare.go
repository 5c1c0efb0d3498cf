package app

import (
	"context"
	"errors"
	"slices"
	"strings"
	"time"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
)

// Ranked are the ways to buy one cloth, the cheapest first.
type Ranked struct {
	Cloth   string
	Options []quote.Option
	// needs are the lays on each offer.
	needs map[needKey]Estimated
}

// needKey tells the offers of a cloth apart.
type needKey struct {
	name  string
	width float64
}

func keyOf(offer quote.Offer) needKey { return needKey{offer.Name, offer.Cloth.Width} }

// Compared are the cloths of a job, each with its ways to buy it.
type Compared struct {
	Cloths []Ranked
	// Ended says whether the searches were ended early.
	Ended plan.Ended
}

// Priced are the cloths of a job that have a price, or the one named.
func Priced(work *job.Work, name string) ([]job.Goods, error) {
	var out []job.Goods
	var names []string
	for _, goods := range work.Cloths {
		names = append(names, goods.Cloth.Name)
		if name == "" && len(goods.Offers) > 0 || name != "" && strings.EqualFold(name, goods.Cloth.Name) {
			out = append(out, goods)
		}
	}
	switch {
	case name != "" && len(out) == 0:
		return nil, refuse("%s %q: the job has no such cloth; it has: %s", ArgumentCloth, name, strings.Join(names, ", "))
	case len(out) == 0 || len(out[0].Offers) == 0:
		return nil, refuseAt(work.AtCloth(name), "no cloth has a price, so there is nothing to reckon; give the job a "+
			"currency, "+
			"and the cloth a price or offers")
	}
	return out, nil
}

// Compare lays the pieces of each cloth on every offer of it, all garments
// together and each alone, and ranks the offers.
func Compare(ctx context.Context, work *job.Work, cloths []job.Goods, search Search, watch Watch) (Compared, error) {
	doubts, err := newDoubter(ctx, work, search)
	if err != nil {
		return Compared{}, err
	}
	solver, begun := newSolver(search, watch), time.Now()
	var asked, together []problem
	var widths []cloth.Cloth
	for _, one := range cloths {
		for _, offer := range one.Offers {
			together = append(together, problemOf(offer.Cloth, work.PiecesOf(one.Cloth.Name)))
			c := offer.Cloth
			c.Name = one.Cloth.Name
			widths = append(widths, c)
			for _, single := range singles(work, one.Cloth.Name) {
				asked = append(asked, aloneOn(offer.Cloth, single))
			}
		}
	}
	found, err := solver.all(ctx, append(slices.Clone(together), asked...))
	if err != nil {
		return Compared{}, err
	}
	answers, alone := found[:len(together)], found[len(together):]
	// Where one garment alone was not laid any more, nothing is said of each alone.
	isWhole := !slices.ContainsFunc(alone, answer.isLeftOut)
	var singly [][]answer
	rest := alone
	for _, one := range cloths {
		garments := len(singles(work, one.Cloth.Name))
		for range one.Offers {
			if isWhole {
				singly = append(singly, rest[:garments])
			} else {
				singly = append(singly, nil)
			}
			rest = rest[garments:]
		}
	}
	if answers, err = solver.notAboveTheSum(ctx, together, answers, singly); err != nil {
		return Compared{}, err
	}
	if err := solver.settle(ctx, together, answers, widthsInPairs(widths)); err != nil {
		return Compared{}, err
	}
	done := endedOf(alone).And(endedOf(answers)).Work
	out := Compared{Ended: search.ended(ctx, done, begun)}
	for _, cloth := range cloths {
		garments := len(singles(work, cloth.Cloth.Name))
		var candidates []quote.Candidate
		needs := map[needKey]Estimated{}
		for _, offer := range cloth.Offers {
			one := candidate(offer, answers[0], alone[:garments])
			if !isWhole {
				one.Alone = nil
			}
			candidates = append(candidates, one)
			needs[keyOf(offer)] = Estimated{Requirement: answers[0].need, Ended: answers[0].ended,
				Kept: answers[0].found.Kept}
			answers, alone = answers[1:], alone[garments:]
		}
		options := quote.Compare(candidates, Units(work))
		err := errors.Join(quote.Proven(options, Units(work)), quote.ProvenShown(options, work.Currency, Units(work)))
		if err != nil {
			return Compared{}, failure.Of(err)
		}
		for i, option := range options {
			if option.Refused == "" && !option.FromRemnant {
				options[i].Range = doubts.rangeOf(option.Offer.Cloth, option.Amount, out.Ended.Early)
				if err := options[i].Range.Proven(option.Offer.Cloth, option.Amount); err != nil {
					return Compared{}, failure.Of(err)
				}
			}
		}
		out.Cloths = append(out.Cloths, Ranked{Cloth: cloth.Cloth.Name, Options: options, needs: needs})
	}
	return out, nil
}

func candidate(offer quote.Offer, together answer, alone []answer) quote.Candidate {
	out := quote.Candidate{Offer: offer, Found: together.found, Impossible: together.why()}
	for _, single := range alone {
		out.Alone = append(out.Alone, single.found)
	}
	return out
}
