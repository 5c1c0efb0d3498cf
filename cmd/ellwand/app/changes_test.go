package app

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/remnant"
	"ellwand/pieces/measure"
)

// What may be given up is even in the units of the job.
func TestUsualLimitsAreEven(t *testing.T) {
	assert.Equal(t, Limits{Limits: remnant.Limits{SeamAllowance: 10, Hem: 20, Step: 5}, Shorten: 100},
		UsualLimits(&job.Work{Unit: measure.Centimetre}))
	assert.Equal(t, Limits{Limits: remnant.Limits{SeamAllowance: 9.525, Hem: 19.05, Step: 6.35}, Shorten: 101.6},
		UsualLimits(&job.Work{Unit: measure.Inch}))
}
