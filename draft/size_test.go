package draft

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Values of the tables (their sources are in the tables' heads).
func TestSizesOfThePublishedTables(t *testing.T) {
	for _, c := range []struct {
		table, size string
		name        Measurement
		mm          float64
	}{
		{"women", "6", BustGirth, 800},
		{"women", "12", AcrossBackWidth, 354},
		{"women", "24", HipGirth, 1320},
		{"women", "18", WristGirth, 170},
		{"misses", "00", BustGirth, 31.125 * 25.4},
		{"misses", "8", NeckBaseGirth, 14.625 * 25.4},
		// Values that the tables' heads mark as from memory.
		{"men", "100", NeckBaseGirth, 395},
		{"men", "96", BackNeckPointToWaist, 442},
		{"children", "116", BustGirth, 610},
		{"children", "140", BackNeckPointToWaist, 322},
		{"misses", "20", WaistGirth, 40.5 * 25.4},
	} {
		body, err := Size(c.table, c.size)
		require.NoError(t, err)
		value, ok := body.Get(c.name)
		assert.True(t, ok)
		assert.InDelta(t, c.mm, value, 1e-9, "%s %s %s", c.table, c.size, c.name)
	}
}

func TestTablesAreWhole(t *testing.T) {
	for name, rows := range map[string]int{"women": 15, "misses": 3, "men": 15, "children": 16} {
		table := tables()[name]
		assert.Len(t, table.rows, rows, name)
		for measurement, values := range table.rows {
			assert.Contains(t, Measurements(), measurement)
			assert.Len(t, values, len(table.sizes))
			assert.IsIncreasing(t, values, "%s: %s", name, measurement)
		}
		for _, size := range table.sizes {
			body, err := Size(name, size)
			require.NoError(t, err)
			assert.NoError(t, body.Check())
		}
	}
}

func TestUnknownSize(t *testing.T) {
	_, err := Size("women", "11")
	assert.EqualError(t, err, `the table "women" has no size "11"; its sizes are 6, 8, 10, 12, 14, 16, 18, 20, 22, 24`)
	_, err = Size("dolls", "40")
	assert.EqualError(t, err, `there is no size table "dolls"; use one of: women, misses, men, children`)
}

func TestParseMeasurement(t *testing.T) {
	for _, text := range []string{"bust girth", "bust_girth", " Bust-Girth "} {
		name, err := ParseMeasurement(text)
		assert.NoError(t, err)
		assert.Equal(t, BustGirth, name)
	}
	_, err := ParseMeasurement("bust")
	assert.ErrorContains(t, err, "use one of: height, bust girth, waist girth")
}

// Between sizes in proportion, beyond the first at the pace to the second, beyond the
// last at the pace up to it: a girth wholly, the frame half as fast, but with the height.
func TestBetweenSizes(t *testing.T) {
	some := table{rows: map[Measurement][]float64{
		BustGirth: {800, 840, 900}, Height: {800, 840, 900},
		HipGirth: {100, 200, 260}, AcrossBackWidth: {100, 200, 260},
	}}
	for _, tt := range []struct {
		name, by    Measurement
		known, want float64
	}{
		{HipGirth, BustGirth, 820, 150},
		{HipGirth, BustGirth, 780, 50},
		{HipGirth, BustGirth, 840, 200},
		{HipGirth, BustGirth, 870, 230},
		{HipGirth, BustGirth, 920, 280},
		{AcrossBackWidth, BustGirth, 780, 50},
		{AcrossBackWidth, BustGirth, 920, 270},
		{AcrossBackWidth, Height, 920, 280},
	} {
		got, ok := some.at(tt.name, tt.by, tt.known)
		assert.True(t, ok)
		assert.InDelta(t, tt.want, got, 1e-9, "%s for %s %g", tt.name, tt.by, tt.known)
	}
	_, ok := some.at(WristGirth, BustGirth, 820)
	assert.False(t, ok, "no such row")
}
