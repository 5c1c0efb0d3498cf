package words

import (
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

// estimatedOn is a lay of 1.234 m on a cloth with every addition; a shop cuts it to the
// millimetre.
func estimatedOn(kind lay.Kind, c cloth.Cloth) app.Estimated {
	found := lay.Plan{Cloth: c, Lay: kind, Plies: 1, Taken: 1234, Bound: 1100, Density: 0.8123}
	out := app.Estimated{Amount: quote.AmountOf(quote.Offer{Cloth: c},
		quote.Found{Lay: kind.String(), Taken: 1234, Bound: 1100, Density: 0.8123})}
	found.Need, found.Buy = out.Amount.Need(), out.Amount.Buy
	out.Requirement = plan.Requirement{Cloth: c, Lays: []lay.Plan{found}}
	return out
}

// Each figure of a lay, and of the parts of what is bought, is refused when it alone is
// wrong; in each system and with each step of a shop all are right.
func TestWrongFiguresOfAnEstimateAreRefused(t *testing.T) {
	c := cloth.Cloth{Name: "shell", Width: 1400, PurchaseStep: 1, Straighten: 30, Minimum: 1500,
		HandLaying: cloth.Addition{Share: 0.02, Length: 5}, Safety: cloth.Addition{Share: 0.05},
		Shrinkage: cloth.Shrinkage{Warp: 0.03}}
	for _, unit := range []measure.Unit{measure.Centimetre, measure.Inch} {
		for _, step := range []float64{1, 25, 100, eighth, 4 * eighth} {
			c.PurchaseStep = step
			work := &job.Work{Unit: unit}
			require.NoError(t, Proven(work, []app.Estimated{estimatedOn(lay.Open, c)}), "%s, %.0f mm", unit, step)
		}
	}
	work := &job.Work{Unit: measure.Centimetre}
	c.PurchaseStep = 100
	found := estimatedOn(lay.Open, c)
	good := LayOf(work, c, found.Lays[0])
	for name, spoil := range map[string]func(*Lay){
		"length":      func(l *Lay) { l.Length = "1.22 m" },
		"efficiency":  func(l *Lay) { l.Efficiency = "81.4 %" },
		"never below": func(l *Lay) { l.Never = "1.11 m" },
		"not proven":  func(l *Lay) { l.Never = notProven },
		"to buy":      func(l *Lay) { l.Buy = "1.40 m (1 3/4 yd)" },
		"in yards":    func(l *Lay) { l.Buy = "1.50 m (1 1/2 yd)" },
		"in store":    func(l *Lay) { l.InStore = "1.49 m" },
	} {
		said := good
		spoil(&said)
		assert.Error(t, layReadAgain(said, work, c, found.Lays[0]), name)
	}
	lines := Parts(work, found)
	require.Greater(t, len(lines), 5)
	for i := range lines {
		wrong := Parts(work, found)
		wrong[i][0] = "7.7 cm"
		assert.Error(t, partsReadAgain(wrong, work, found), "%s", lines[i])
		assert.Error(t, partsReadAgain(append(Parts(work, found)[:i], lines[i+1:]...), work, found), "without %s", lines[i])
	}
	assert.Error(t, partsReadAgain(append(lines, lines[1]), work, found), "twice")
	for _, text := range []string{"the lay: open; no lay takes less than 1.11 m",
		"rounding: up to the shop's step of 11 cm (step)", "the shop's minimum: the shop cuts no less than 15 cm (minimum)"} {
		assert.Error(t, reasonReadAgain(text, work, found), text)
	}
}
