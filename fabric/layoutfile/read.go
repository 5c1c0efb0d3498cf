package layoutfile

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"

	"ellwand/fabric/lay"
)

// farthest that a piece may lie from the corner of a lay, mm: a hundred bolts
// [source.OwnChoice].
const farthest = 1e7

// Read reads where each piece lies in a layout; nothing else of it is believed. Cloth
// has the name of the cloth alone. Whether it is a layout of some pieces is not known
// before they have been laid so and verified. Errors: no layout, one of another form, or
// numbers that none can have.
func Read(r io.Reader) (lay.Plan, error) {
	var in File
	decoder := json.NewDecoder(r)
	if err := decoder.Decode(&in); err != nil {
		return lay.Plan{}, errors.New("this is no layout, as --layout writes it")
	}
	if in.Version != Version {
		return lay.Plan{}, fmt.Errorf("the form of this layout is %d, and %d is the one that can be read", in.Version,
			Version)
	}
	out := lay.Plan{FoldedIn: in.FoldedIn}
	out.Cloth.Name = in.Cloth
	for _, kind := range lay.Kinds() {
		if kind.String() == in.Lay {
			out.Lay = kind
		}
	}
	if out.Lay.String() != in.Lay {
		return lay.Plan{}, fmt.Errorf("%q is no way to lay cloth", in.Lay)
	}
	for _, p := range in.Pieces {
		if !isNear(p.X) || !isNear(p.Y) || !(math.Abs(p.Turn) <= 360) || p.Part < 0 || p.Part > 1 {
			return lay.Plan{}, fmt.Errorf("%s does not lie on the cloth in this layout", p.Name)
		}
		out.Pieces = append(out.Pieces, lay.Laid{
			Name: p.Name, Garment: p.Garment, Size: p.Size, OnFold: p.OnFold, Bed: p.Part, Mirrored: p.Mirrored,
			Turn: p.Turn, X: p.X, Y: p.Y,
		})
	}
	if len(out.Pieces) == 0 {
		return lay.Plan{}, errors.New("there is no piece in this layout")
	}
	return out, nil
}

func isNear(mm float64) bool { return math.Abs(mm) < farthest }
