package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
	"ellwand/pieces/measure"
)

// laidBothWays is a cloth laid open in 1.00 m and folded in 1.20 m, cut in whole steps.
func laidBothWays(step float64) (*job.Work, app.Estimated) {
	c := cloth.Cloth{Name: "shell", Width: 1400, PurchaseStep: step, Repeat: cloth.Repeat{Along: 80}}
	out := app.Estimated{}
	for _, one := range []lay.Plan{{Lay: lay.FoldedAlong, Plies: 2, Taken: 1200}, {Lay: lay.Open, Plies: 1, Taken: 1000}} {
		amount := quote.AmountOf(quote.Offer{Cloth: c}, quote.Found{Taken: one.Taken, Bound: 900})
		one.Cloth, one.Need, one.Buy, one.Bound = c, amount.Need(), amount.Buy, 900
		out.Amount = amount
		out.Lays = append(out.Lays, one)
	}
	out.Cloth, out.Chosen, out.Buy = c, 1, out.Amount.Buy
	out.Range = quote.Range{Low: 950, High: 1100, Doubts: []quote.Doubt{{Of: quote.TrueWidth}}}
	out.Matching = &plan.Matching{Plain: 910, Matched: 1000, RuleOfThumb: 990, Repeats: 90.0 / 80}
	return &job.Work{Unit: measure.Centimetre}, out
}

// What is said of a cloth in sentences is read again: right in each unit, and each figure
// of it refused when it alone is wrong.
func TestWrongFiguresInSentencesAreRefused(t *testing.T) {
	for _, unit := range []measure.Unit{measure.Centimetre, measure.Inch} {
		for _, step := range []float64{1, 100, eighth} {
			work, found := laidBothWays(step)
			work.Unit = unit
			require.NoError(t, adviceReadAgain(Advice(work, found.Requirement), work, found.Requirement))
			require.NoError(t, surenessReadAgain(Sureness(work, found), found))
			found.Range.Low = found.Range.High
			require.NoError(t, surenessReadAgain(Sureness(work, found), found))
			found.Range.Doubts = nil
			require.NoError(t, surenessReadAgain(Sureness(work, found), found))
		}
	}
	work, found := laidBothWays(100)
	advice := Advice(work, found.Requirement)
	require.Contains(t, advice, "Buy 1.00 m (1 1/8 yd) and lay it open. Opening the cloth saves 20 cm of length")
	for _, change := range [][2]string{{"1.00 m", "0.90 m"}, {"1 1/8", "1"}, {"lay it open", "lay it folded"},
		{"saves 20 cm", "saves 24 cm"}, {"folding it.", "folding it, too little to buy less."},
		{"saves 20 cm of length against folding it.", "saves nothing; folded there is half the chalking and cutting."}} {
		require.Contains(t, advice, change[0])
		assert.Error(t, adviceReadAgain(strings.Replace(advice, change[0], change[1], 1), work, found.Requirement), change[1])
	}
	need := found.Requirement
	need.Lays = need.Lays[1:]
	need.Chosen = 0
	assert.Error(t, adviceReadAgain(advice, work, need), "nothing is saved where one alone is laid")

	sure := Sureness(work, found)
	require.Contains(t, sure, "0.95 to 1.10 m, say 1.00 m: ")
	for _, change := range [][2]string{{"0.95 to", "1.00 to"}, {"1.10 m", "1.00 m"}, {"say 1.00 m", "say 0.90 m"},
		{"0.95 to 1.10 m, say 1.00 m: ", "1.00 m are sure: "}, {"0.95 to 1.10 m, say 1.00 m: ", "It stays 1.00 m though "}} {
		assert.Error(t, surenessReadAgain(strings.Replace(sure, change[0], change[1], 1), found), change[1])
	}
	const matched = "Matched: a.\nMatching takes 9 cm more than plain cloth (0.91 m), 1.1 repeats; the rule of thumb, " +
		"one repeat more than plain, comes to 0.99 m."
	require.NoError(t, matchingReadAgain(matched, work, found.Requirement))
	for _, change := range [][2]string{{"9 cm more", "8 cm more"}, {"9 cm more", "no more"}, {"0.91 m", "0.95 m"},
		{"0.99 m", "1.07 m"}} {
		assert.Error(t, matchingReadAgain(strings.Replace(matched, change[0], change[1], 1), work, found.Requirement),
			change[1])
	}
}

// So is what a piece of cloth may prove to take, and what is said of a plan.
func TestWrongFiguresOfRemnantsAndPlansAreRefused(t *testing.T) {
	for _, unit := range []measure.Unit{measure.Centimetre, measure.Inch} {
		work, found := laidBothWays(100)
		work.Unit = unit
		a := app.RemnantAnswer{PieceOfCloth: app.PieceOfCloth{Cloth: found.Cloth, Length: 2000}, Range: found.Range}
		require.NoError(t, ProvenRemnant(work, a))
		require.NoError(t, ProvenPlans(work, []app.Planned{{Plan: found.Lays[0]}}))
	}
	work, found := laidBothWays(100)
	a := app.RemnantAnswer{PieceOfCloth: app.PieceOfCloth{Cloth: found.Cloth, Length: 2000}, Range: found.Range}
	for _, text := range []string{"it takes", "With the cut ends it takes 0.90 to 1.10 m of the 2.00 m: ",
		"With the cut ends it takes 0.95 to 1.15 m of the 2.00 m: ",
		"With the cut ends it takes 0.95 to 1.10 m of the 2.10 m: "} {
		assert.Error(t, takesReadAgain(text, work, a), text)
	}
	good := ShownOf(work, found.Lays[0])
	for _, said := range []Shown{{"141 cm", good.Length, good.Buy}, {good.Width, "1.22 m", good.Buy},
		{good.Width, good.Length, "1.10 m (1 3/8 yd)"}, {good.Width, good.Length, "1.20 m (1 yd)"}} {
		assert.Error(t, shownReadAgain(said, work, found.Lays[0]), "%v", said)
	}
}
