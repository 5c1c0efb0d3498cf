package app

import (
	"context"
	"errors"
	"math"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// derivedOff is by how much a derived measurement may be off, as a share: so far
// bodies of the same girth differ in their lengths [source.OwnChoice].
const derivedOff = 0.04

// areaTolerance, mm, of outlines whose area is compared.
const areaTolerance = 1.0

// doubter says how sure amounts are: from what was not measured and how long was
// searched. It drafts the job twice again, and lays nothing.
type doubter struct {
	work *job.Work
	// smaller and larger are the job with what was derived so far off;
	// nil where nothing was derived, or where that cannot be drafted.
	smaller, larger *job.Work
	searched        quote.Searched
	// measured are the doubts of derived measurements by cloth: many cells of a table ask for
	// the same, and nothing is left to reckon when the search ends.
	measured map[string]quote.Doubt
}

// newDoubter of a job. It fails only with a *job.Ended, when the context ends before the
// job is drafted.
func newDoubter(ctx context.Context, work *job.Work, search Search) (doubter, error) {
	out := doubter{work: work, searched: searchedWith(search), measured: map[string]quote.Doubt{}}
	if len(work.DerivedNames()) == 0 {
		return out, nil
	}
	smaller, err := work.WithDerived(ctx, -derivedOff)
	larger, errLarger := work.WithDerived(ctx, derivedOff)
	var ended *job.Ended
	if errors.As(err, &ended) || errors.As(errLarger, &ended) {
		return out, ended
	}
	if err == nil && errLarger == nil {
		out.smaller, out.larger = smaller, larger
		for _, goods := range work.Cloths {
			out.measured[goods.Cloth.Name] = out.measures(goods.Cloth.Name)
		}
	}
	return out, nil
}

func searchedWith(search Search) quote.Searched {
	switch {
	case search.Passes > 0:
		return quote.Briefly
	case search.Effort == plan.Quick:
		return quote.Quickly
	}
	return quote.Fully
}

// rangeOf the amount of a cloth.
func (d doubter) rangeOf(c cloth.Cloth, a quote.Amount, endedEarly bool) quote.Range {
	searched := d.searched
	if endedEarly {
		searched = quote.Briefly
	}
	measures := quote.Doubt{Of: quote.Measures}
	if known, derived := d.measured[c.Name]; derived {
		measures = known
	}
	doubts := []quote.Doubt{measures, {Of: quote.TrueWidth}, quote.WashDoubt(c),
		quote.SearchDoubt(a.Found, searched)}
	for _, goods := range d.work.Cloths {
		if goods.Cloth.Name == c.Name && !goods.Measured {
			doubts[1] = quote.WidthDoubt(c)
		}
	}
	return quote.RangeOf(c, a, doubts...)
}

// measures is the doubt of derived measurements: the length goes as the area of the
// pieces.
func (d doubter) measures(cloth string) quote.Doubt {
	out := quote.Doubt{Of: quote.Measures}
	if d.smaller == nil {
		return out
	}
	area := areaOf(d.work.PiecesOf(cloth))
	for _, other := range []*job.Work{d.smaller, d.larger} {
		change := areaOf(other.PiecesOf(cloth))/area - 1
		out.Less, out.More = max(out.Less, -change), max(out.More, change)
	}
	return out
}

// areaOf the pieces as they are cut, mm2.
func areaOf(all []pieces.Piece) float64 {
	sum := 0.0
	for _, piece := range all {
		outline, err := piece.CuttingOutline(areaTolerance)
		if err != nil {
			continue
		}
		area := math.Abs(geometry.Area(outline))
		if piece.Fold != seams.None {
			area *= 2 // it is given as a half
		}
		sum += float64(area * float64(piece.Cut))
	}
	return sum
}
