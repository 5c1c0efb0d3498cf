package job

import (
	"maps"
	"slices"

	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
	"ellwand/pieces/language"
	"ellwand/pieces/seams"
)

// usualSeam is the allowance of a seam that nothing else is said of, mm
// [source.CommonPractice].
const usualSeam = 15

// allowances by what a seam is, mm.
type allowances map[seams.Name]float64

// seams is the allowance of a seam that is not named.
func (a allowances) seams() float64 {
	if width, given := a[seams.Every]; given {
		return width
	}
	return usualSeam
}

// allowances reads those of the job or of a garment, over the ones above.
func (r *resolver) allowances(path Path, above allowances, given map[string]Measure) allowances {
	out := maps.Clone(above)
	if out == nil {
		out = allowances{}
	}
	words := seams.Words(draft.AllowanceNames())
	for _, key := range slices.Sorted(maps.Keys(given)) {
		inner := path.Key(key)
		word, known := strict.KnownAs(key, words)
		if !known {
			r.fault(inner, strict.Unknown, "there is no seam %q to give an allowance to; %s",
				"eine Naht %q, die eine Nahtzugabe haben könnte, gibt es nicht; %s",
				key, strict.Hint(key, words))
			continue
		}
		if width, ok := r.length(inner, language.Say("the seam allowance on %s", "Nahtzugabe an %s", word),
			given[key]); ok {
			out[seams.Called(word)] = width
		}
	}
	return out
}
