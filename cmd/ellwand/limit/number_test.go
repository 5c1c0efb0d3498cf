package limit

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/testdata/sample"
)

func TestNumber(t *testing.T) {
	var workers int
	for text, want := range map[string]string{
		"-1": "cannot be negative", "x": "write a whole number", "1.5": "write a whole number", "": "write a whole number",
		"1000000": "must be at most 256", "99999999999999999999": "must be at most 256", "-99999999999999999999": "negative",
	} {
		assert.ErrorContains(t, NumberOf(&workers, Workers).Set(text), want, text)
	}
	require.NoError(t, NumberOf(&workers, Workers).Set("12"))
	assert.Equal(t, 12, workers)
}

func TestSeed(t *testing.T) {
	var seed Seed
	for text, want := range map[string]string{
		"-1": "a seed cannot be negative", "x": "write a whole number", "0x1": "write a whole number",
		"":                     "write a whole number",
		"99999999999999999999": "too large for a seed",
	} {
		assert.ErrorContains(t, seed.Set(text), want, text)
	}
	require.NoError(t, seed.Set("18446744073709551615"))
	assert.Equal(t, Seed(1<<64-1), seed)
}

func FuzzSeed(f *testing.F) {
	sample.MinimizeBriefly()
	f.Add("-1")
	f.Add("7")
	f.Fuzz(func(t *testing.T, text string) {
		var seed Seed
		if err := seed.Set(text); err != nil {
			assert.NotContains(t, err.Error(), "strconv")
			return
		}
		var again Seed
		require.NoError(t, again.Set(seed.String()))
		assert.Equal(t, seed, again)
	})
}
