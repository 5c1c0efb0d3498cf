package desk

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestJobInOtherUnits(t *testing.T) {
	const metric = "job: a # first\nunits: cm\nbody: {bust_girth: 94, waist_girth: 29 in}\nallowances:\n  seams: 1.5\n" +
		"garments:\n  - name: blouse\n    bodice: {}\n    pieces:\n" +
		"      - name: tab\n        width: \"10\" # wide\n        height: 12,5\n" +
		"        allowance: {side: add 1, seams: 1.5}\n" +
		"cloths:\n  - name: shell\n    widths: [115, 140]\n    hand_laying: 3 %\n" +
		"    safety: 10\n    price: 18.50\n" +
		"    flaws:\n      - {name: stain, at: [40, 30], radius: 3}\ncurrency: EUR\n"
	const imperial = "job: a # first\nunits: in\nbody: {bust_girth: 37, waist_girth: 29 in}\nallowances:\n  seams: " +
		"9/16\n" +
		"garments:\n  - name: blouse\n    bodice: {}\n    pieces:\n" +
		"      - name: tab\n        width: 3 15/16 # wide\n        height: 4 7/8\n" +
		"        allowance: {side: add 3/8, seams: 9/16}\n" +
		"cloths:\n  - name: shell\n    widths: [45 1/4, 55 1/8]\n    hand_laying: 3 %\n" +
		"    safety: 3 15/16\n    price: 18.50 per m\n" +
		"    flaws:\n      - {name: stain, at: [15 3/4, 11 3/4], radius: 1 3/16}\ncurrency: EUR\n"
	got, err := InUnits(metric, "in")
	require.NoError(t, err)
	assert.Equal(t, imperial, got)
	back, err := InUnits(imperial, "cm")
	require.NoError(t, err)
	assert.Contains(t, back, "bust_girth: 94,")
	assert.Contains(t, back, "price: 18.50 per m\n")
	_, err = InUnits(metric, "yd")
	assert.Error(t, err)
}

// Where a hand has laid a piece, and how far a selvedge is folded in there, is not rounded.
func TestHandLaidIsNotRoundedInOtherUnits(t *testing.T) {
	const metric = "job: a\nunits: cm\ncloths:\n  - name: shell\n    width: 140\n    laid_by_hand:\n" +
		"      - {width: 140, lay: one selvedge folded in, folded_in: 36.0525, pieces: " +
		"[{piece: a, at: [5.123, 100], on_open: yes}]}\n"
	got, err := InUnits(metric, "in")
	require.NoError(t, err)
	assert.Contains(t, got, "folded_in: 36.0525 cm")
	assert.Contains(t, got, "on_open: yes")
}
