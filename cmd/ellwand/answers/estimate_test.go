package answers

import (
	"encoding/json"
	"maps"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/testdata/program"
)

// keysOf returns the keys of a JSON object, sorted.
func keysOf(t *testing.T, object any) []string {
	t.Helper()
	fields, ok := object.(map[string]any)
	require.True(t, ok, "%v is no object", object)
	return slices.Sorted(maps.Keys(fields))
}

// The field names are a contract with other programs.
func TestEstimateJSON(t *testing.T) {
	t.Parallel()
	var got map[string]any
	text := program.Output(t, "estimate", "../../../testdata/blouse.yaml", "--passes", "2", "--json",
		"--widths", "115cm,140cm")
	require.NoError(t, json.Unmarshal([]byte(text), &got))
	assert.Equal(t, []string{"cloths", "document", "format_version", "job"}, keysOf(t, got))
	cloths := got["cloths"].([]any)
	require.Len(t, cloths, 4, "one entry a cloth and width")
	for _, entry := range cloths {
		cloth := entry.(map[string]any)
		assert.Equal(t, []string{"buy_m", "buy_mm", "buy_yd", "chosen", "lays", "length_mm", "name", "nap", "parts", "range",
			"rests_on", "usable_mm", "width_mm"}, keysOf(t, cloth))
		sum := 0.0
		for _, entry := range cloth["parts"].([]any) {
			part := entry.(map[string]any)
			assert.NotEmpty(t, part["why"])
			assert.Equal(t, part["part"] == "the lay", part["key"] == nil, "%v has a key that changes it", part["part"])
			sum += part["length_mm"].(float64)
		}
		assert.InDelta(t, cloth["buy_mm"], sum, 1e-2, "the parts are what is bought")
		between := cloth["range"].(map[string]any)
		assert.LessOrEqual(t, between["low_mm"], cloth["buy_mm"])
		assert.GreaterOrEqual(t, between["high_mm"], cloth["buy_mm"])
		assert.GreaterOrEqual(t, len(between["doubts"].([]any)), 2, "the scye depth, the width, and of most lays the search")
		assert.InDelta(t, cloth["width_mm"].(float64)-20, cloth["usable_mm"], 1e-9)
		assert.GreaterOrEqual(t, cloth["buy_mm"], cloth["length_mm"])
		assert.GreaterOrEqual(t, cloth["buy_yd"].(float64)*914.4, cloth["length_mm"], "1 yd is 914.4 mm (agreement of 1959)")
		for _, lay := range cloth["lays"].([]any) {
			assert.Equal(t, []string{"bound_mm", "cuts", "density", "lay", "length_mm", "plies"}, keysOf(t, lay))
			l := lay.(map[string]any)
			assert.LessOrEqual(t, l["bound_mm"], l["length_mm"])
			assert.Greater(t, l["density"], 10.0, "in percent")
			assert.Less(t, l["density"], 100.0)
		}
	}
}
