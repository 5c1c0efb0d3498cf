package instance

import (
	"encoding/json"
	"io"
	"math"

	"github.com/paulmach/orb/planar"

	"ellwand/nest/layout"
)

// layoutFile is the benchmark layout as written: the item's ring as in the file,
// mirrored in x if asked, turned counter-clockwise by the rotation (degrees)
// about (0, 0), then moved by (x, y).
type layoutFile struct {
	Name       string      `json:"name"`
	Length     float64     `json:"length"`
	Placements []placement `json:"placements"`
}

type placement struct {
	Item     int     `json:"item"`
	Copy     int     `json:"copy"`
	Rotation float64 `json:"rotation"`
	Mirrored bool    `json:"mirrored"`
	X        float64 `json:"x"`
	Y        float64 `json:"y"`
}

// WriteLayout writes a layout of the instance as JSON.
func (in Instance) WriteLayout(w io.Writer, laid layout.Layout) error {
	out := layoutFile{Name: in.Name, Length: laid.Length, Placements: []placement{}}
	for _, p := range laid.Placements {
		turn := in.Problem.Items[p.Item].Turns[p.Turn]
		out.Placements = append(out.Placements, placement{
			Item: p.Item, Copy: p.Copy,
			Rotation: turn.Degrees + p.Tilt, Mirrored: turn.Mirrored,
			X: p.X, Y: p.Y,
		})
	}
	encoder := json.NewEncoder(w)
	encoder.SetIndent("", " ")
	return encoder.Encode(out)
}

// Density is the area of the outlines over width times length, in percent.
func (in Instance) Density(length float64) float64 {
	if length <= 0 {
		return 0
	}
	area := 0.0
	for _, item := range in.Problem.Items {
		area += float64(item.Copies) * math.Abs(planar.Area(item.Outline))
	}
	return 100 * area / (in.Problem.Width * length)
}
