package fabric

import (
	"encoding/json"
	"fmt"
	"io"

	"github.com/paulmach/orb"
)

// layoutFile is the layout as it is written; lengths in mm in the cloth
// frame.
type layoutFile struct {
	Cloth        string       `json:"cloth"`
	Lay          string       `json:"lay"`
	Plies        int          `json:"plies"`
	Width        float64      `json:"width_mm"`
	Length       float64      `json:"length_mm"`
	Bound        float64      `json:"bound_mm"`
	ClothOutline orb.Ring     `json:"cloth_outline"`
	Flaws        []orb.Ring   `json:"flaws"`
	Pieces       []layoutItem `json:"pieces"`
}

type layoutItem struct {
	Name     string   `json:"name"`
	Garment  string   `json:"garment"`
	Size     string   `json:"size"`
	Copy     int      `json:"copy"`
	Mirrored bool     `json:"mirrored"`
	Turn     float64  `json:"turn_deg"`
	OnFold   bool     `json:"on_fold"`
	X        float64  `json:"x_mm"`
	Y        float64  `json:"y_mm"`
	Outline  orb.Ring `json:"outline"`
}

// WriteJSON writes the layout: the cloth, the lay, its usable width, length
// and bound, and the cutting outline of every piece in the cloth frame. It
// refuses a plan that is not possible.
func (p LayPlan) WriteJSON(w io.Writer) error {
	if !p.Possible() {
		return fmt.Errorf("the %s lay of %s has no layout: %s", p.Lay, p.Cloth, p.Impossible)
	}
	file := layoutFile{
		Cloth: p.Cloth.Name, Lay: p.Lay.String(), Plies: p.Plies,
		Width: p.Width, Length: p.Length, Bound: p.Bound,
		Flaws: append([]orb.Ring{}, p.Zones...), Pieces: []layoutItem{},
	}
	for _, l := range p.Pieces {
		file.Pieces = append(file.Pieces, layoutItem{
			Name: l.Name, Garment: l.Garment, Size: l.Size, Copy: l.Copy, Mirrored: l.Mirrored,
			Turn: l.Turn, OnFold: l.OnFold, X: l.X, Y: l.Y, Outline: l.Outline,
		})
	}
	encoder := json.NewEncoder(w)
	encoder.SetIndent("", " ")
	return encoder.Encode(file)
}
