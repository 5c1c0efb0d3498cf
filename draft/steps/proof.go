package steps

import (
	"errors"
	"fmt"
	"math"
	"regexp"
	"strconv"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces/measure"
)

// Proven reads the lengths in the steps and in the lines of the curves again, and holds
// each against the points between which it is said to lie.
func Proven(d Document) error {
	var faults []error
	for _, garment := range d.Garments {
		for _, c := range garment.contents(d.Unit) {
			for _, text := range append(append([]string{}, c.steps...), c.curves...) {
				if err := c.readAgain(text, d.Unit); err != nil {
					faults = append(faults, fmt.Errorf("the draft of the %s is wrong and is not shown: %q: %w", c.head, text, err))
				}
			}
		}
	}
	return errors.Join(faults...)
}

// said are the sentences that name a length and the points that it lies between; of is
// the length between those, in the order of the groups that are numbers.
var said = []struct {
	words *regexp.Regexp
	// lengths and points are groups of the words.
	lengths, points []int
	of              func(at []orb.Point) []float64
}{
	{regexp.MustCompile(`^square across from (\d+) to the (?:left|right) by (\d.*?) and (?:up|down) by (\d.*?) ` +
		`to (\d+)\b`),
		[]int{2, 3}, []int{1, 4}, func(at []orb.Point) []float64 {
			return []float64{math.Abs(at[1][0] - at[0][0]), math.Abs(at[1][1] - at[0][1])}
		}},
	{regexp.MustCompile(`^square (?:up|down) from (\d+) by (\d.*?) to (\d+)\b`), []int{2}, []int{1, 3},
		func(at []orb.Point) []float64 { return []float64{math.Abs(at[1][1] - at[0][1])} }},
	{regexp.MustCompile(`^square across from (\d+) to the (?:left|right) by (\d.*?) to (\d+)\b`), []int{2}, []int{1, 3},
		func(at []orb.Point) []float64 { return []float64{math.Abs(at[1][0] - at[0][0])} }},
	{regexp.MustCompile(`^from (\d+) draw a line of (\d.*?) to (\d+)\b`), []int{2}, []int{1, 3}, apart},
	{regexp.MustCompile(`^from (\d+) draw a line of (\d.*?) that is level with \d+ at its end, (\d+)\b`), []int{2},
		[]int{1, 3}, apart},
	{regexp.MustCompile(`^on the line \d+-\d+, (\d.*?) from (\d+), mark (\d+)\b`), []int{1}, []int{2, 3}, apart},
	{regexp.MustCompile(`^at the middle of (\d+)-(\d+) square out by (\d.*?) to (\d+)\b`), []int{3}, []int{1, 2, 4},
		func(at []orb.Point) []float64 {
			return apart([]orb.Point{{(at[0][0] + at[1][0]) / 2, (at[0][1] + at[1][1]) / 2}, at[2]})
		}},
	{regexp.MustCompile(`^swing (\d+) about \d+ (?:counter-)?clockwise by (\d.*?) to (\d+)\b`), []int{2},
		[]int{1, 3}, apart},
	{regexp.MustCompile(`^\D+ (\d+)-(\d+), (\d.*?) straight: `), []int{3}, []int{1, 2}, apart},
}

func apart(at []orb.Point) []float64 { return []float64{construct.Distance(at[0], at[1])} }

// readTolerance, mm, of a length that is read again beside half its rounding: as far
// apart do two places share a point [source.OwnChoice].
const readTolerance = 0.1

func (c content) readAgain(text string, unit measure.Unit) error {
	for _, sentence := range said {
		found := sentence.words.FindStringSubmatch(text)
		if found == nil {
			continue
		}
		var at []orb.Point
		for _, group := range sentence.points {
			number, err := strconv.Atoi(found[group])
			if err != nil || number < 1 || number > len(c.sheet.Points) {
				return fmt.Errorf("there is no point %s", found[group])
			}
			at = append(at, c.sheet.Points[number-1].At)
		}
		for i, want := range sentence.of(at) {
			length, err := measure.Parse(found[sentence.lengths[i]], unit)
			if off := math.Abs(float64(length) - want); err != nil || !(off <= unit.System().Step()/2+readTolerance) {
				return fmt.Errorf("%q stands where %.2f mm are meant", found[sentence.lengths[i]], want)
			}
		}
		return nil
	}
	return nil
}
