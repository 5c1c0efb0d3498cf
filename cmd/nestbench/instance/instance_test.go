package instance

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/nest/layout"
	"ellwand/testdata/bench"
	"ellwand/testdata/sample"
)

const square = `{"Name": "two squares", "Strip": {"Height": 2}, "Items": [
 {"Demand": 2, "AllowedOrientations": [0, 180],
  "Shape": {"Type": "SimplePolygon", "Data": [[0,0],[1,0],[1,1],[0,1]]}}]}`

func TestParseClosesTheRing(t *testing.T) {
	in, err := Parse([]byte(square))
	require.NoError(t, err)
	assert.Equal(t, "two squares", in.Name)
	assert.Equal(t, 2, in.Pieces())
	assert.Len(t, in.Problem.Items[0].Outline, 5)
	assert.Equal(t, []layout.Turn{{}, {Degrees: 180}}, in.Problem.Items[0].Turns)
	assert.InDelta(t, 100, in.Density(1), 1e-9, "two unit squares fill a strip of 2 by 1")
}

func TestParseRefuses(t *testing.T) {
	tests := []struct{ name, text, want string }{
		{"not JSON", "job: blouse", "line 1: this is not JSON"},
		{"broken on line 2", "{\n \"Name\": }", "line 2"},
		{"no width", `{"Items": [{}]}`, "Strip.Height"},
		{"nothing to lay", `{"Strip": {"Height": 3}}`, "no Items"},
		{"no demand", `{"Strip": {"Height": 3}, "Items": [{"Shape": {"Data": [[0,0],[1,0],[1,1]]}}]}`, "Demand is 0"},
		{"two points", `{"Strip": {"Height": 3}, "Items": [{"Demand": 1, "Shape": {"Data": [[0,0],[1,0]]}}]}`, "3 or more"},
		{
			"a point in space",
			`{"Strip": {"Height": 3}, "Items": [{"Demand": 1, "Shape": {"Data": [[0,0,0],[1,0,0],[1,1,0]]}}]}`,
			"3 numbers",
		},
		{
			"another shape",
			`{"Strip": {"Height": 3}, "Items": [{"Demand": 1, "Shape": {"Type": "Circle"}}]}`,
			"SimplePolygon",
		},
		{"wrong type", `{"Strip": {"Height": "3"}}`, "Strip.Height holds a string"},
		{"a strip beyond measure", `{"Strip": {"Height": 1e308}, "Items": [{}]}`, "the strip is 1e+308 wide"},
		{"a point beyond measure", oneItem(`1`, `[0,0],[1e308,0],[1,1]`), "out of all proportion"},
		{"a sliver", oneItem(`1`, `[0,0],[1,0],[1,1e-9]`), "item 0: its outline is a sliver"},
		{"a sliver aslant", oneItem(`1`, `[0,0],[1,1],[1,1.000000001]`), "item 0: its outline is a sliver"},
		{"no number", oneItem(`1`, `[0,0],[NaN,0],[1,1]`), "this is not JSON"},
		{"too many", oneItem(`10001`, `[0,0],[1,0],[1,1]`), "Demand must be at most 10000"},
		{"too many points", oneItem(`1`, strings.Repeat(`[0,0],`, 10_001)+`[1,1]`), "more than 10000 points"},
		{"too many points in all", oneItem(`10000`, strings.Repeat(`[0,0],[1,0],`, 500)+`[1,1]`), "2000000 points in all"},
		{
			"too many items",
			`{"Strip": {"Height": 3}, "Items": [` + strings.Repeat(`{},`, 2000) + `{}]}`, "Items are more than 2000",
		},
		{
			"too many turns",
			`{"Strip": {"Height": 3}, "Items": [{"Demand": 1, "AllowedOrientations": [` + strings.Repeat(`1,`, 360) + `1]}]}`,
			"AllowedOrientations are more than 360",
		},
		{
			"a turn beyond measure",
			`{"Strip": {"Height": 3}, "Items": [{"Demand": 1, "AllowedOrientations": [1e308]}]}`, "an orientation of 1e+308",
		},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Parse([]byte(tt.text))
			assert.ErrorContains(t, err, tt.want)
		})
	}
}

// oneItem is an instance of a demand for one outline.
func oneItem(demand, points string) string {
	return `{"Strip": {"Height": 3}, "Items": [{"Demand": ` + demand + `, "Shape": {"Data": [` + points + `]}}]}`
}

func TestReadEnds(t *testing.T) {
	if _, err := os.Stat("/dev/zero"); err != nil {
		t.Skip("there is no /dev/zero here")
	}
	_, err := Read("/dev/zero")
	assert.ErrorContains(t, err, "is too large for an instance")
}

// The counts are those of the collection's own table (README beside the data).
func TestReadOpenData(t *testing.T) {
	tests := []struct {
		name          string
		items, pieces int
		width         float64
	}{
		{"albano", 8, 24, 4900},
		{"shirts", 8, 99, 40},
		{"swim", 10, 48, 5752},
		{"trousers", 17, 64, 79},
	}
	folder := bench.Folder(t)
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			in, err := Read(filepath.Join(folder, tt.name+".json"))
			require.NoError(t, err)
			assert.Len(t, in.Problem.Items, tt.items)
			assert.Equal(t, tt.pieces, in.Pieces())
			assert.Equal(t, tt.width, in.Problem.Width)
		})
	}
}

func TestWriteLayout(t *testing.T) {
	in, err := Parse([]byte(square))
	require.NoError(t, err)
	var b bytes.Buffer
	laid := layout.Layout{Length: 1, Placements: []layout.Placement{{Turn: 1, X: 1, Y: 1}, {Copy: 1, Y: 1}}}
	require.NoError(t, in.WriteLayout(&b, laid))
	var got layoutFile
	require.NoError(t, json.Unmarshal(b.Bytes(), &got))
	assert.Equal(t, layoutFile{Name: "two squares", Length: 1, Placements: []placement{
		{Rotation: 180, X: 1, Y: 1}, {Copy: 1, Y: 1},
	}}, got)
}

// An instance that is written is read as it was.
func TestWrite(t *testing.T) {
	in, err := Parse([]byte(square))
	require.NoError(t, err)
	var b bytes.Buffer
	require.NoError(t, in.Write(&b))
	again, err := Parse(b.Bytes())
	require.NoError(t, err)
	assert.Equal(t, in, again)
}

func FuzzParse(f *testing.F) {
	sample.MinimizeBriefly()
	f.Add([]byte(square))
	f.Add([]byte(`{"Items": [null]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		in, err := Parse(data)
		if err == nil && (in.Pieces() < 1 || in.Problem.Width <= 0) {
			t.Fatalf("accepted an instance with %d pieces on a width of %g", in.Pieces(), in.Problem.Width)
		}
	})
}
