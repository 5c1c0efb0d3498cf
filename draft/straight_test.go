package draft

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/draft/straightcut"
)

func straightCutOf(body Body, options straightcut.Options) Request {
	return Request{Garment: "straight cut", Cloth: "shell", Body: body, StraightCut: &options}
}

func TestEverySizeOfStraightCutIsSound(t *testing.T) {
	for _, table := range Tables() {
		for _, name := range Sizes(table) {
			for shape := straightcut.Kaftan; shape <= straightcut.Bag; shape++ {
				result, err := Draft(straightCutOf(size(t, table, name), straightcut.Options{Shape: shape}))
				require.NoError(t, err, "%s %s %d", table, name, shape)
				checkTrue(t, result)
			}
		}
	}
}

func TestRandomBodiesInStraightCut(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		body := lowerBodies(t)
		body[BustGirth] = rapid.Float64Range(700, 1600).Draw(t, "bust")
		trueOrRefused(t, straightCutOf(body, straightcut.Options{Shape: straightcut.Shape(rapid.IntRange(0, 4).Draw(t,
			"shape"))}))
	})
}

// A bag needs no body.
func TestBagNeedsNoBody(t *testing.T) {
	result, err := Draft(straightCutOf(nil, straightcut.Options{Shape: straightcut.Bag}))
	require.NoError(t, err)
	assert.Len(t, result.Pieces, 2)
	assert.Empty(t, result.Derived)
}
