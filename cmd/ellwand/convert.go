package main

import (
	"fmt"
	"strings"
	"unicode"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/screen"
	"ellwand/fabric/purchase"
	"ellwand/pieces/measure"
)

// conversionFlags are the options of convert.
type conversionFlags struct {
	from, to, step string
	nap, sleeves   bool
}

func newConvert(e *env) *cobra.Command {
	var c conversionFlags
	cmd := &cobra.Command{
		Use:   "convert LENGTH --from WIDTH --to WIDTH",
		Short: "Convert a known amount of cloth to another width",
		Long: `Convert says how much cloth of another width to buy when the amount for one
width is known, from a pattern's envelope for instance. Where the fabric
conversion chart of an extension service covers, it reads the chart; elsewhere
it reckons equal area with a margin, and says so. A wider cloth never takes more
than the known amount, unless it is one-way. Both are rules of thumb: an
estimate lays the pieces themselves.`,
		Example: `  ellwand convert 2 1/4 yd --from 45in --to 60in
  ellwand convert 2.10m --from 115cm --to 150cm --nap`,
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return fmt.Errorf("%s needs the length that is known; for example:\n%s", cmd.CommandPath(), cmd.Example)
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			return e.convert(strings.Join(args, " "), c)
		},
	}
	flags := cmd.Flags()
	flags.StringVar(&c.from, "from", "", "width of the cloth whose amount is known: 115cm, 45in (required)")
	flags.StringVar(&c.to, "to", "", "width of the cloth to buy (required)")
	flags.StringVar(&c.step, "step", "", "what the shop rounds up to; 10 cm or 1/8 yd if not given")
	flags.BoolVar(&c.nap, "nap", false,
		"the cloth to buy is one-way (pile, print, shading), and the known amount was not for such")
	flags.BoolVar(&c.sleeves, "sleeves-in-one", false, "the sleeves are cut in one with the body")
	return cmd
}

func (e *env) convert(lengthText string, c conversionFlags) error {
	length, unit, err := knownLength(lengthText)
	if err != nil {
		return err
	}
	request := purchase.ConversionRequest{Length: float64(length), OneWay: c.nap, SleevesInOne: c.sleeves}
	if request.From, err = givenWidth("--from", c.from); err != nil {
		return err
	}
	if request.To, err = givenWidth("--to", c.to); err != nil {
		return err
	}
	var step measure.Length
	if c.step != "" {
		if step, err = measure.Parse(c.step, unit); err != nil || step <= 0 {
			return fmt.Errorf("--step %q is no step; write what the shop rounds up to, such as 10cm or 1/4 yd", c.step)
		}
	}
	found, err := app.Convert(request, unit, float64(step))
	if err != nil {
		return err
	}
	if e.json {
		return e.printJSON(report.ConversionOf(found))
	}
	screen.Conversion(e.screen, found, unit)
	return nil
}

// knownLength reads a length of cloth, and whether its owner counts in metres
// or in yards. Its unit must be written: a bare number would be either.
func knownLength(text string) (measure.Length, measure.Unit, error) {
	metric, err := measure.Parse(text, measure.Metre)
	if err != nil {
		return 0, 0, err
	}
	if yards, _ := measure.Parse(text, measure.Yard); yards != metric {
		return 0, 0, fmt.Errorf("%q has no unit; write %s m or %s yd", text, text, text)
	}
	name := strings.TrimLeftFunc(text, func(r rune) bool { return !unicode.IsLetter(r) })
	if unit, err := measure.ParseUnit(name); err == nil && unit != measure.Inch && unit != measure.Yard {
		return metric, measure.Metre, nil
	}
	return metric, measure.Yard, nil
}

func givenWidth(flag, text string) (float64, error) {
	if text == "" {
		return 0, fmt.Errorf("%s is missing; give the width from edge to edge, such as %s 115cm or %s 45in", flag, flag, flag)
	}
	width, err := measure.Parse(text, measure.Millimetre)
	if err != nil {
		return 0, fmt.Errorf("%s: %w", flag, err)
	}
	if bare, _ := measure.Parse(text, measure.Inch); bare != width {
		return 0, fmt.Errorf("%s %s has no unit; write %scm or %sin", flag, text, text, text)
	}
	if width <= 0 {
		return 0, fmt.Errorf("%s: a width of %s is no cloth; give it from edge to edge, such as 115cm", flag, text)
	}
	return float64(width), nil
}
