package instance

import (
	"encoding/json"
	"io"
)

// Write writes the instance as JSON, in the form that Read reads. Tilt, groups
// and mirrored turns have no place in it.
func (in Instance) Write(w io.Writer) error {
	out := file{Name: in.Name}
	out.Strip.Height = in.Problem.Width
	for _, item := range in.Problem.Items {
		ring, err := json.Marshal(item.Outline)
		if err != nil {
			return err
		}
		one := fileItem{Demand: item.Copies}
		for _, turn := range item.Turns {
			one.AllowedOrientations = append(one.AllowedOrientations, turn.Degrees)
		}
		one.Shape.Type, one.Shape.Data = "SimplePolygon", ring
		out.Items = append(out.Items, one)
	}
	encoder := json.NewEncoder(w)
	encoder.SetIndent("", " ")
	return encoder.Encode(out)
}
