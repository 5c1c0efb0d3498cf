package marker

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	proof "ellwand/fabric/check"
	"ellwand/fabric/lay"
	"ellwand/pieces/measure"
)

// A piece that is written to lie elsewhere, or the other way round, is refused.
func TestWrongPlacesAreRefused(t *testing.T) {
	plan := required(t)
	require.NoError(t, Proven(plan, Options{}))
	for name, spoil := range map[string]func(*lay.Laid){
		"along":  func(l *lay.Laid) { l.Grain[0][0], l.Grain[1][0] = l.Grain[0][0]+20, l.Grain[1][0]+20 },
		"across": func(l *lay.Laid) { l.Grain[0][1], l.Grain[1][1] = l.Grain[0][1]+20, l.Grain[1][1]+20 },
		"turned": func(l *lay.Laid) { l.Grain[0], l.Grain[1] = l.Grain[1], l.Grain[0] },
	} {
		t.Run(name, func(t *testing.T) {
			wrong := plan
			wrong.Pieces = append([]lay.Laid{}, plan.Pieces...)
			spoil(&wrong.Pieces[0])
			assert.ErrorContains(t, Proven(wrong, Options{}), "is written to lie elsewhere")
		})
	}
	row := Rows(plan, Options{})[0]
	said := proof.Chalked{Along: row[6], Near: row[7], Far: row[8], Arrow: row[9], Unit: measure.Centimetre}
	require.NoError(t, proof.Chalk(plan, plan.Pieces[0], said))
	said.Far = "7" + said.Far
	assert.Error(t, proof.Chalk(plan, plan.Pieces[0], said))
}

// A fact that is not that of the plan is refused.
func TestWrongFactsAreRefused(t *testing.T) {
	plan := required(t)
	s := sheets{plan: plan, denominator: 1}
	tried := 0
	for _, f := range s.facts() {
		require.NoError(t, s.options.factReadAgain(plan, f), f.name())
		if f.of != ofNap && f.of != ofScale {
			f.value = "7" + f.value
			assert.Error(t, s.options.factReadAgain(plan, f), f.name())
			tried++
		}
	}
	assert.Equal(t, 7, tried)
}
