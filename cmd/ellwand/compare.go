package main

import (
	"context"
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/screen"
	"ellwand/fabric"
	"ellwand/fabric/quote"
	"ellwand/pieces"
)

func newCompare(e *env) *cobra.Command {
	var b budget
	var cloth string
	cmd := &cobra.Command{
		Use:   "compare JOB",
		Short: "Say which of several offers of a cloth is the cheapest for a job",
		Long: `Compare lays the pieces of a job on every offer of a cloth, and ranks the
offers by what the job would cost on each: width, price, the shop's step and
least cut, and remnants are all reckoned in. Write the offers into the job:

  currency: EUR
  cloths:
    - name: shell
      offers:
        - {name: Crepe, width: 150, price: 24.50}
        - {name: Market stall, width: 115, price: 14, remnant: 2.4 m, remnant_price: 25}`,
		Example: "  ellwand compare dress.yaml\n  ellwand compare dress.yaml --cloth lining --time 10s",
		Args:    one("a job file"),
		RunE: func(cmd *cobra.Command, args []string) error {
			return e.compare(cmd.Context(), args[0], cloth, b)
		},
	}
	b.register(cmd)
	cmd.Flags().StringVar(&cloth, "cloth", "", "the cloth to compare; every one that has a price if not given")
	_ = cmd.Flags().MarkHidden("force") // compare writes no files
	return cmd
}

func (e *env) compare(ctx context.Context, path, cloth string, b budget) error {
	work, err := readJob(path)
	if err != nil {
		return err
	}
	chosen, err := pricedCloths(work, cloth)
	if err != nil {
		return err
	}
	e.warn(work)
	ranked, err := e.rank(ctx, work, chosen, b)
	if err != nil {
		return err
	}
	if e.json {
		return e.printJSON(comparisonOf(work, chosen, ranked))
	}
	fmt.Fprintln(e.out, work.Title())
	for i := range chosen {
		e.printRanked(work, chosen[i].Cloth.Name, ranked[i])
	}
	return nil
}

// pricedCloths are the cloths of a job that have a price, or the one named.
func pricedCloths(work *job.Work, name string) ([]job.Offer, error) {
	var out []job.Offer
	var names []string
	for _, offer := range work.Cloths {
		names = append(names, offer.Cloth.Name)
		if name == "" && len(offer.Offers) > 0 || name != "" && strings.EqualFold(name, offer.Cloth.Name) {
			out = append(out, offer)
		}
	}
	switch {
	case name != "" && len(out) == 0:
		return nil, fmt.Errorf("--cloth %q: the job has no such cloth; it has: %s", name, strings.Join(names, ", "))
	case len(out) == 0 || len(out[0].Offers) == 0:
		return nil, fmt.Errorf("%s: no cloth has a price, so there is nothing to reckon; give the job a currency, and the cloth a price or offers (see: ellwand compare --help)", work.File)
	}
	return out, nil
}

// rank lays the pieces of each cloth on every offer of it, all garments
// together and each alone, and ranks the offers.
func (e *env) rank(ctx context.Context, work *job.Work, cloths []job.Offer, b budget) ([][]quote.Option, error) {
	var each, together []problem
	for _, cloth := range cloths {
		for _, offer := range cloth.Offers {
			for _, single := range singles(work, cloth.Cloth.Name) {
				each = append(each, problemOf(offer.Cloth, single))
			}
		}
	}
	alone, err := e.solveAll(ctx, each, b)
	if err != nil {
		return nil, err
	}
	rest := alone
	for _, cloth := range cloths {
		all, garments := work.PiecesOf(cloth.Cloth.Name), len(singles(work, cloth.Cloth.Name))
		for _, offer := range cloth.Offers {
			p := problemOf(offer.Cloth, all)
			p.known = oneBehindTheOther(rest[:garments], all)
			together, rest = append(together, p), rest[garments:]
		}
	}
	answers, err := e.solveAll(ctx, together, b)
	if err != nil {
		return nil, err
	}
	var out [][]quote.Option
	for _, cloth := range cloths {
		garments := len(singles(work, cloth.Cloth.Name))
		var candidates []quote.Candidate
		for _, offer := range cloth.Offers {
			candidate := quote.Candidate{Offer: offer, Found: answers[0].found, Impossible: answers[0].impossible}
			for _, single := range alone[:garments] {
				candidate.Alone = append(candidate.Alone, single.found)
			}
			candidates, answers, alone = append(candidates, candidate), answers[1:], alone[garments:]
		}
		out = append(out, quote.Compare(candidates, unitsOf(work)))
	}
	return out, nil
}

// oneBehindTheOther are layouts of all garments made of those of each alone, for
// the search for all together to start from.
func oneBehindTheOther(alone []answer, all []pieces.Piece) []fabric.LayPlan {
	var garments []string
	for _, piece := range all {
		if !slices.Contains(garments, piece.Garment) {
			garments = append(garments, piece.Garment)
		}
	}
	if len(alone) != len(garments) {
		return nil
	}
	var needs []fabric.Requirement
	for _, single := range alone {
		needs = append(needs, single.need)
	}
	var out []fabric.LayPlan
	for _, lay := range quickLays {
		if plan, ok := fabric.Behind(lay, needs, garments); ok {
			out = append(out, plan)
		}
	}
	return out
}

func unitsOf(work *job.Work) quote.Units { return quote.Units{Inches: work.InInches()} }

func (e *env) printRanked(work *job.Work, cloth string, ranked []quote.Option) {
	units := unitsOf(work)
	fmt.Fprintf(e.out, "\n%s\n", cloth)
	t := screen.Table("offer", "width", "price", "to buy", "cost "+work.Currency.Code(), "left over", "lay")
	for _, option := range ranked {
		if option.Refused != "" {
			continue
		}
		t.AppendRow(screen.Row(nameOf(option), units.Short(option.Offer.Cloth.Width), priceText(work, option),
			units.Bought(option.Offer.Cloth, option.Bought), work.Currency.Format(option.Cost), units.Short(max(option.LeftOver, 0)), option.Amount.Lay))
	}
	fmt.Fprintln(e.out, t.Render())
	for _, sentence := range quote.Why(ranked, work.Currency, units) {
		fmt.Fprintln(e.out, sentence)
	}
	for _, option := range ranked {
		if option.Refused != "" {
			fmt.Fprintf(e.out, "%s: not possible: %s\n", nameOf(option), option.Refused)
		} else if !option.FromRemnant {
			fmt.Fprintf(e.out, "%s rests on: %s\n", option.Offer.Name, option.Amount.RestsOn(units))
		}
	}
}

func nameOf(option quote.Option) string {
	if option.FromRemnant {
		return option.Offer.Name + ", remnant"
	}
	return option.Offer.Name
}

func priceText(work *job.Work, option quote.Option) string {
	if option.FromRemnant {
		return "the whole"
	}
	return work.Currency.Format(option.Offer.Price.Money) + " " + option.Offer.Price.Each()
}

// comparisonReport is what compare prints as JSON. Money is text, so that no
// reader makes a float of it.
type comparisonReport struct {
	Job      string            `json:"job"`
	Currency string            `json:"currency"`
	Cloths   []clothComparison `json:"cloths"`
}

type clothComparison struct {
	Cloth   string         `json:"cloth"`
	Options []optionReport `json:"options"`
	Why     []string       `json:"why"`
}

type optionReport struct {
	Offer      string       `json:"offer"`
	Remnant    bool         `json:"remnant"`
	WidthMM    float64      `json:"width_mm"`
	Cost       string       `json:"cost,omitempty"`
	BuyMM      float64      `json:"buy_mm,omitempty"`
	LeftOverMM float64      `json:"left_over_mm"`
	Refused    string       `json:"refused,omitempty"`
	RestsOn    *basisReport `json:"rests_on,omitempty"`
}

// basisReport is what an amount rests on.
type basisReport struct {
	Lay          string  `json:"lay"`
	TakenMM      float64 `json:"taken_mm"`
	BoundMM      float64 `json:"bound_mm"`
	StraightenMM float64 `json:"straighten_mm"`
	ShrinkageMM  float64 `json:"shrinkage_mm"`
	SafetyMM     float64 `json:"safety_mm"`
	RoundingMM   float64 `json:"rounding_mm"`
	MinimumMM    float64 `json:"minimum_mm"`
	BuyMM        float64 `json:"buy_mm"`
}

func basisOf(a quote.Amount) *basisReport {
	return &basisReport{
		Lay: a.Lay, TakenMM: tidy(a.Taken), BoundMM: tidy(a.Bound), StraightenMM: tidy(a.Straighten), ShrinkageMM: tidy(a.Shrinkage),
		SafetyMM: tidy(a.Safety), RoundingMM: tidy(a.Rounding), MinimumMM: tidy(a.Minimum), BuyMM: tidy(a.Buy),
	}
}

func comparisonOf(work *job.Work, cloths []job.Offer, ranked [][]quote.Option) comparisonReport {
	out := comparisonReport{Job: work.Name, Currency: work.Currency.Code()}
	for i, options := range ranked {
		report := clothComparison{Cloth: cloths[i].Cloth.Name, Why: append([]string{}, quote.Why(options, work.Currency, unitsOf(work))...)}
		for _, option := range options {
			report.Options = append(report.Options, optionOf(work.Currency, option))
		}
		out.Cloths = append(out.Cloths, report)
	}
	return out
}

func optionOf(currency quote.Currency, option quote.Option) optionReport {
	out := optionReport{Offer: option.Offer.Name, Remnant: option.FromRemnant, WidthMM: tidy(option.Offer.Cloth.Width), Refused: option.Refused}
	if option.Refused == "" {
		out.Cost, out.BuyMM = currency.Plain(option.Cost), tidy(option.Bought)
		out.LeftOverMM, out.RestsOn = tidy(option.LeftOver), basisOf(option.Amount)
	}
	return out
}

// problemOf states which pieces go on a cloth. Its name plays no part in the
// lay, so that equal cloths are laid once.
func problemOf(cloth fabric.Cloth, all []pieces.Piece) problem {
	cloth.Name = ""
	return problem{cloth: cloth, all: all}
}
