package main

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/limit"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
)

// parseWidths reads lists such as "115cm,140cm,150cm".
func parseWidths(lists []string, unit measure.Unit) ([]float64, error) {
	var out []float64
	for _, list := range lists {
		entries, err := widthEntries(list, unit)
		if err != nil {
			return nil, err
		}
		for _, text := range entries {
			width, err := clothWidth("--widths", text, unit)
			if err != nil {
				return nil, err
			}
			out = append(out, width)
		}
		if err := limit.Widths.Check(language.Name("--widths"), len(out)); err != nil {
			return nil, err
		}
	}
	return out, nil
}

func clothWidth(option, text string, unit measure.Unit) (float64, error) {
	width, err := measure.Parse(strings.TrimSpace(text), unit)
	if err != nil {
		return 0, fmt.Errorf("%s: %w", option, err)
	}
	if err := inMetres(option, text, unit); err != nil {
		return 0, err
	}
	if width <= 0 {
		return 0, fmt.Errorf("%s: a width of %s is no cloth; give it from edge to edge, such as 140cm", option, text)
	}
	return float64(width), nil
}

var (
	wholeNumber = regexp.MustCompile(`^\d+$`)
	decimalsOf  = regexp.MustCompile(`^\d{1,2} ?(?i:m|cm)$`) // inches are not parted by a comma
)

var metresWithoutUnit = regexp.MustCompile(`^(\d)[.,](\d{1,2})$`)

// inMetres refuses "1,50" in centimetres or inches: that is no piece of cloth, and
// metres were most likely meant.
func inMetres(option, text string, unit measure.Unit) error {
	parts := metresWithoutUnit.FindStringSubmatch(strings.TrimSpace(text))
	if parts == nil || parts[1] == "0" || unit == measure.Metre || unit == measure.Yard {
		return nil
	}
	return fmt.Errorf("%s: %s %s is no piece of cloth; were metres meant? Write %s.%sm", option, text, unit, parts[1],
		parts[2])
}

// widthEntries parts a list of widths at its commas, but for one that is a
// decimal comma: "1,50 m" is one width where two would be no cloths. Where it
// can be either, it is refused.
func widthEntries(list string, unit measure.Unit) ([]string, error) {
	if err := inMetres("--widths", list, unit); err != nil {
		return nil, err
	}
	var out []string
	for _, entry := range strings.Split(list, ",") {
		entry = strings.TrimSpace(entry)
		if len(out) == 0 || !wholeNumber.MatchString(out[len(out)-1]) || !decimalsOf.MatchString(entry) {
			out = append(out, entry)
			continue
		}
		before := out[len(out)-1]
		one := isCloth(before+"."+entry, unit)
		two := isCloth(before, unit) && isCloth(entry, unit)
		switch {
		case one && two:
			return nil, fmt.Errorf("--widths: \"%s,%s\" could be one width, %s.%s, or two; write a decimal point, or each "+
				"width with its unit", before, entry, before, entry)
		case one:
			out[len(out)-1] = before + "." + entry
		default:
			out = append(out, entry)
		}
	}
	return out, nil
}

// isCloth says that a text can be meant as the width of a cloth: ribbon is
// narrower, and what is wider is made for stages [source.OwnChoice].
func isCloth(text string, unit measure.Unit) bool {
	const narrowest, widest = 200, 4000 // mm
	width, err := measure.Parse(text, unit)
	return err == nil && width >= narrowest && width <= widest
}

// widthsByCloth reads the widths that replace those of a job, each for all of
// its cloths ("140cm") or for one ("lining=140cm"): a width for each cloth in
// their order, 0 where it keeps its own.
func widthsByCloth(texts []string, work *job.Work) ([]float64, error) {
	out := make([]float64, len(work.Cloths))
	named := make([]bool, len(work.Cloths))
	if err := limit.Widths.Check(language.Name("--width"), len(texts)); err != nil {
		return nil, err
	}
	for _, text := range texts {
		name, of, isNamed := strings.Cut(text, "=")
		if !isNamed {
			of = text
		}
		width, err := clothWidth("--width", of, work.Unit)
		if err != nil {
			return nil, err
		}
		if !isNamed {
			for i := range out {
				if !named[i] {
					out[i] = width
				}
			}
			continue
		}
		i := slices.IndexFunc(work.Cloths, func(o job.Goods) bool { return job.Slug(o.Cloth.Name) == job.Slug(name) })
		if i < 0 {
			return nil, fmt.Errorf("--width %s: the job has no cloth %q; it has %s", text, name,
				strings.Join(clothNames(work), " and "))
		}
		out[i], named[i] = width, true
	}
	return out, nil
}

func clothNames(work *job.Work) []string {
	var out []string
	for _, goods := range work.Cloths {
		out = append(out, goods.Cloth.Name)
	}
	return out
}
