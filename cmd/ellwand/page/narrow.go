package page

import (
	"cmp"
	"errors"
	"regexp"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/lay"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
)

// tooNarrow says that a cloth is too narrow, in whatever way it is laid: as a value, of which
// the page makes one sentence.
type tooNarrow struct {
	Code    string   `json:"code"`
	Units   string   `json:"units"`
	WidthMM float64  `json:"width_mm"`
	TakesMM float64  `json:"takes_mm"`
	Pieces  []string `json:"pieces"`
}

// Error is a sentence for programs.
func (n tooNarrow) Error() string {
	return "the cloth is too narrow for: " + strings.Join(n.Pieces, ", ")
}

// plainIn a job is what is wrong with one of its cloths, without the place of its file,
// which the page knows. A fault of the program stays what it is.
func plainIn(work *job.Work, err error) error {
	if failure.Is(err) {
		return err
	}
	if found, is := narrowIn(work, err); is {
		return found
	}
	if err = withoutPlaces(err); work == nil || language.IsSaid(err) {
		return err
	}
	place := regexp.MustCompile(`^` + regexp.QuoteMeta(work.File) + `(:\d+)?: `)
	return errors.New(place.ReplaceAllString(err.Error(), ""))
}

// narrowIn a refusal: true where the open cloth, which is the widest, is narrower than
// pieces, and nothing else is wrong with it.
func narrowIn(work *job.Work, err error) (tooNarrow, bool) {
	var refused lay.Refusal
	if work == nil || !errors.As(err, &refused) {
		return tooNarrow{}, false
	}
	out := tooNarrow{Code: "narrow", Units: work.Unit.String(), WidthMM: refused.Cloth.Width}
	for _, p := range refused.Plans {
		if p.Lay != lay.Open {
			continue
		}
		for _, why := range p.Why {
			if why.Of != lay.WiderThanCloth {
				return tooNarrow{}, false
			}
			out.TakesMM = max(out.TakesMM, why.Takes)
			if !slices.Contains(out.Pieces, why.Piece) {
				out.Pieces = append(out.Pieces, why.Piece)
			}
		}
	}
	return out, len(out.Pieces) > 0
}

// aboutWidth says that faults are about the width of the first cloth.
func aboutWidth(err error) bool {
	var faults *job.Faults
	width := strict.Top("cloths").Entry(0).Key("width").String()
	return errors.As(err, &faults) && slices.ContainsFunc(faults.List, func(f job.Fault) bool {
		return f.Kind == strict.OutOfRange && f.Path.String() == width
	})
}

// narrowWidth is a width that leaves nothing of a cloth between its selvedges.
func narrowWidth(units, text string) error {
	unit, err := measure.ParseUnit(cmp.Or(units, "cm"))
	if err != nil {
		return err
	}
	width, err := measure.Parse(text, unit)
	if err != nil {
		return err
	}
	return tooNarrow{Code: "narrow", Units: unit.String(), WidthMM: float64(width), Pieces: []string{}}
}
