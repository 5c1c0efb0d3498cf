package instance

import (
	"encoding/json"
)

// file is an instance as written. Its "height" is the width of the strip.
type file struct {
	Name  string
	Items []fileItem
	Strip struct{ Height float64 }
}

type fileItem struct {
	Demand              int
	AllowedOrientations []float64
	Shape               struct {
		Type string
		Data json.RawMessage
	}
}
