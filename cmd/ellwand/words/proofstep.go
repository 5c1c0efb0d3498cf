package words

import (
	"errors"
	"fmt"
	"strings"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
)

// longStep is to what lengths of cloth are worded, mm: a cm or 1/16 in.
func longStep(work *job.Work) float64 {
	return work.Unit.System().ClothStep()
}

// shopStep is to what a length to buy is worded, mm.
func shopStep(c cloth.Cloth) float64 {
	if quote.SoldInYards(c) {
		return eighth
	}
	return 10
}

// buyReadAgain reads a length to buy in both systems. The way of the shop comes first: it
// is what is bought; the other is no less than is needed.
func buyReadAgain(said string, c cloth.Cloth, p lay.Plan) error {
	first, second, _ := strings.Cut(strings.TrimSuffix(said, ")"), " (")
	step, other := 10.0, eighth
	if quote.SoldInYards(c) {
		step, other = eighth, 100+10
	}
	return errors.Join(check.ShownToBuy(first, p.Buy, step), check.ShownToBuy(second, max(p.Need, c.Minimum), other))
}

// blamed is a fault of the program in a figure of a cloth.
func blamed(c cloth.Cloth, err error) error {
	if err == nil {
		return nil
	}
	return fmt.Errorf("%w: a figure of %s is wrong and is not shown: %w", plan.ErrInternal, c, err)
}
