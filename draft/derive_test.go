package draft

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/bodice"
	"ellwand/draft/construct"
	"ellwand/draft/part"
	"ellwand/draft/sleeve"
	"ellwand/draft/trousers"
	"ellwand/pieces/measure"
	"ellwand/testdata/sample"
)

// everyLength asks for all that runs along the body.
func everyLength(body Body, table string) Request {
	return Request{
		Garment: "suit", Cloth: "shell", Body: body, Table: table,
		Bodice: &bodice.Options{Shaping: bodice.NoDart, StraightWaist: true}, Sleeve: &sleeve.Options{},
		Trousers: &trousers.Options{},
	}
}

// What the handbook takes off for short women and adds for tall ones (Aldrich,
// Metric Pattern Cutting for Women's Wear, short and tall women, from memory),
// against lengths in proportion to a height of 157 and 173 cm: within 5 mm.
func TestLengthsGoWithTheHeight(t *testing.T) {
	of := size(t, "women", "12")
	for height, sign := range map[float64]float64{1570: -1, 1730: 1} {
		result, err := Draft(everyLength(Body{BustGirth: 920, WaistGirth: 760, HipGirth: 1000, Height: height}, ""))
		require.NoError(t, err)
		for name, step := range map[Measurement]float64{
			ScyeDepth: 8, BackNeckPointToWaist: 20, WaistToHip: 10, BodyRise: 10, ShoulderToWrist: 25,
			OutsideLegLength: 50,
		} {
			assert.InDelta(t, of[name]+sign*step, result.Body[name], 5, "%s at %g mm", name, height)
		}
		// Widths and girths do not go with the height.
		for _, name := range []Measurement{AcrossBackWidth, ShoulderLength, NeckBaseGirth, UpperArmGirth} {
			assert.InDelta(t, of[name], result.Body[name], 0.5, string(name))
		}
	}
}

// The rule says from which table, for which girth and for which height.
func TestRulesOfDerivation(t *testing.T) {
	for _, c := range []struct {
		table      string
		body       Body
		name       Measurement
		mm         float64
		rule, inch string
	}{
		{"", Body{BustGirth: 920, WaistGirth: 760, HipGirth: 1000, Height: 1650}, BodyRise, 283,
			"as the women's table has it for a hip girth of 100 cm, in proportion to a height of 165 cm, the table's " +
				"being 165 cm",
			"as the women's table has it for a hip girth of 39 3/8 in, in proportion to a height of 64 15/16 in, the " +
				"table's being 64 15/16 in"},
		{"women", Body{BustGirth: 940, WaistGirth: 780}, AcrossBackWidth, 359,
			"as the women's table has it for a bust girth of 94 cm", ""},
		{"misses", Body{BustGirth: 940, WaistGirth: 780}, AcrossBackWidth, 359,
			"as the women's table has it for a bust girth of 94 cm", ""},
		// The men's table has 40 cm at chest 100, and 28 cm at seat 104 for a
		// height of 174 cm.
		{"men", Body{BustGirth: 1000, WaistGirth: 860, HipGirth: 1040}, AcrossBackWidth, 400,
			"as the men's table has it for a bust girth of 100 cm", ""},
		{"men", Body{BustGirth: 1000, WaistGirth: 860, HipGirth: 1040, Height: 1914}, BodyRise, 308,
			"as the men's table has it for a hip girth of 104 cm, in proportion to a height of 191.4 cm, the table's " +
				"being 174 cm", ""},
		// Half way between the heights of 122 and 128 cm the children's table has
		// 29.2 cm; the back is as wide as for a chest of 64.5 cm.
		{"children", Body{BustGirth: 645, WaistGirth: 590, HipGirth: 695, Height: 1250}, BackNeckPointToWaist, 292,
			"as the children's table has it for a height of 125 cm", "as the children's table has it for a height of " +
				"49 3/16 in"},
		{"children", Body{BustGirth: 645, WaistGirth: 590, HipGirth: 695, Height: 1250}, AcrossBackWidth, 263,
			"as the children's table has it for a bust girth of 64.5 cm", ""},
	} {
		result, err := Draft(everyLength(c.body, c.table))
		require.NoError(t, err, c.rule)
		assert.InDelta(t, c.mm, result.Body[c.name], 1, c.rule)
		rule := ruleOf(result, c.name)
		assert.Equal(t, c.rule, rule.String())
		if c.inch != "" {
			assert.Equal(t, c.inch, rule.In(measure.Inch))
		}
	}
	_, err := Draft(everyLength(Body{BustGirth: 920, WaistGirth: 760}, "dolls"))
	assert.ErrorContains(t, err, `there is no size table "dolls"; use one of: women, misses, men, children`)
}

func ruleOf(r Result, name Measurement) construct.Sentence {
	for _, d := range r.Derived {
		if d.Measurement == name {
			return d.Rule
		}
	}
	return construct.Sentence{}
}

// A job can start from bust, waist, hip and height: every size of the tables,
// short, of medium height and tall, drafts soundly from those alone; in the ordinary
// run each size in one of these heights by turns.
func TestFourMeasurementsAreEnough(t *testing.T) {
	t.Parallel()
	for _, table := range []string{"women", "men"} {
		for i, name := range Sizes(table) {
			of := size(t, table, name)
			heights := []float64{0.92, 1, 1.08}
			if !sample.Long() {
				heights = heights[i%3 : i%3+1]
			}
			for _, tall := range heights {
				body := Body{BustGirth: of[BustGirth], WaistGirth: of[WaistGirth], HipGirth: of[HipGirth],
					Height: tall * tables()[table].height}
				t.Run(fmt.Sprintf("%s %s %.0f", table, name, body[Height]), func(t *testing.T) {
					request := blouse(body)
					request.Table = table
					result, err := Draft(request)
					require.NoError(t, err)
					checkSound(t, result)
					legs := trousersOf(body, trousers.Options{}, part.Waistband)
					legs.Table = table
					result, err = Draft(legs)
					require.NoError(t, err)
					checkTrue(t, result)
				})
			}
		}
	}
	for _, name := range Sizes("children") {
		of := size(t, "children", name)
		result, err := Draft(everyLength(Body{BustGirth: of[BustGirth], WaistGirth: of[WaistGirth],
			HipGirth: of[HipGirth], Height: of[Height]}, "children"))
		require.NoError(t, err, name)
		for _, d := range result.Derived {
			assert.InDelta(t, of[d.Measurement], d.Value, 1, "%s of size %s", d.Measurement, name)
		}
	}
}
